package secondbolt.lay.giving;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.task.Given;
import secondbolt.task.Hazard;
import secondbolt.task.WorkStep;

/** Printing, cutting and marking as steps; what is looked at before the cut is common practice. */
class LayGivingTest {
    private static final String TUCH =
            """
            cloth:
              Tuch:
                size: [150, 120]
                prewash: done
                nap: one-way
                flaws:
                  - {what: Rotweinfleck, at: [140, 110], round: 4}
                  - {what: dünn, at: [10, 110], size: [10, 10], hidden use: yes}
            pattern:
              seam allowance: {of: 1, included: false}
              pieces:
                Vorderteil: {cut: pair, rectangle: [30, 40], notches: [{edge: left, at: 10}]}
                Rückenteil: {cut: {main: 1, interfacing: 1}, rectangle: [40, 40]}
            """;

    @Test
    void cutsAfterAllThatChangesTheSizeOfWhatIsCut() {
        Given given = Given.of("units: cm", TUCH);
        assertTrue(
                given.before("cut")
                        .containsAll(
                                List.of(
                                        "survey",
                                        "press",
                                        "alter the paper",
                                        "check the print",
                                        "choose the buttons")));
        assertEquals(List.of("print"), given.before("check the print"));
        assertEquals(List.of("cut"), given.before("mark"));
        assertTrue(given.step("cut").hazards().contains(Hazard.BLADE));
        assertTrue(given.step("check the print").text().contains("both ways, 100 mm each"));
    }

    /** A pair, one, and one of interfacing: four. */
    @Test
    void countsThePiecesAndNamesTheFlawsBeforeTheCut() {
        WorkStep cut = Given.of("units: cm", TUCH).step("cut");
        assertTrue(cut.text().contains("3 of the main cloth, 1 of interfacing"), cut.text());
        String checks = String.join(" ", cut.checks());
        assertTrue(checks.contains("count 4 copies"), checks);
        assertTrue(checks.contains("pattern face down: Vorderteil."), checks);
        assertTrue(checks.contains("points the same way on Tuch"), checks);
        assertTrue(
                checks.contains(
                        "On Tuch outside every piece: Rotweinfleck; only under pieces that are"
                                + " hidden in wear: dünn."),
                checks);
        assertFalse(cut.isDone());
    }

    @Test
    void saysWhatIsCutAlreadyAndWhenAllIs() {
        String noInterfacing = TUCH.replace("{main: 1, interfacing: 1}", "1");
        String front =
                "cut so far: [{piece: Vorderteil, cloth: Tuch, at: [0, 0]}, {piece: Vorderteil,"
                        + " cloth: Tuch, at: [40, 0], mirrored: yes}";
        WorkStep some = Given.of("units: cm", noInterfacing + front + "]").step("cut");
        assertTrue(some.text().contains("2 of 3 are cut already"), some.text());
        assertFalse(some.isDone());
        WorkStep all =
                Given.of(
                                "units: cm",
                                noInterfacing
                                        + front
                                        + ", {piece: Rückenteil, cloth: Tuch, at: [80, 0]}]")
                        .step("cut");
        assertTrue(all.isDone(), all.text());
        assertEquals(List.of(), all.checks());
    }

    @Test
    void doesNotCutWhatHasNoPlace() {
        WorkStep cut =
                Given.of(
                                "units: cm",
                                TUCH.replace("size: [150, 120]", "size: [150, 45]")
                                        .replaceAll("(?s)    flaws:.*?pattern:", "pattern:"))
                        .step("cut");
        assertFalse(
                cut.checks().stream().anyMatch(c -> c.contains("do not cut yet")), "it still fits");
        WorkStep none =
                Given.of(
                                "units: cm",
                                TUCH.replace("size: [150, 120]", "size: [60, 45]")
                                        .replaceAll("(?s)    flaws:.*?pattern:", "pattern:"))
                        .step("cut");
        assertTrue(none.checks().stream().anyMatch(c -> c.contains("do not cut yet")));
    }

    @Test
    void printsNothingOfPiecesKnownByTape() {
        Given given =
                Given.of(
                        "units: in",
                        "pattern: {pieces: {panel: {cut: 2, box: [20, 30], edges: {side: 30, top: 20}}}}");
        assertFalse(given.names().contains("print"));
        assertTrue(given.names().contains("cut"));
    }

    @Test
    void namesEachWordOnce() {
        List<String> words = Given.of("units: cm", TUCH).words();
        assertEquals(List.copyOf(new LinkedHashSet<>(words)), words);
    }
}
