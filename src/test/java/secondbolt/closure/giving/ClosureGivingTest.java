package secondbolt.closure.giving;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.task.Given;
import secondbolt.task.Hazard;
import secondbolt.task.WorkStep;

/**
 * What closures contribute. Orders: interfacing before the hole, holes worked and checked before
 * they are cut open and the buttons sewn on (Machine Buttonholes Made Easy, Guide C-231, New Mexico
 * State University: a trial on the same layers); the size of the button before the extension is cut
 * (Buttons and Buttonholes, Extension Bulletin 576, 1965).
 */
class ClosureGivingTest {
    private static final String BUTTONED =
            "closures: {Verschluss: {length: 64, buttons: 7, first: 2, last: 2, extension: 2, holes:"
                    + " upright, laps: right over left, button: {across: 15 mm, thick: 3 mm}}}";

    @Test
    void worksHolesThenOpensThemThenSewsButtonsOn() {
        Given given = Given.of("units: cm", BUTTONED);
        assertEquals(
                List.of("choose the buttons", "buttonholes", "open buttonholes", "buttons"),
                given.names().subList(0, 4));
        assertTrue(given.before("buttonholes").containsAll(List.of("fuse", "assemble", "band")));
        assertEquals(List.of("buttonholes"), given.before("open buttonholes"));
        assertEquals(List.of("open buttonholes", "dry"), given.before("buttons"));
        assertTrue(given.step("open buttonholes").hazards().contains(Hazard.BLADE));
    }

    /** 7 buttons over 60 cm: 10 cm apart (derived); flat, d 15 mm, t 3 mm: 18 mm (Bulletin 576). */
    @Test
    void readsTheRowAgainBeforeItIsCutOpen() {
        Given given = Given.of("units: cm", BUTTONED);
        assertTrue(given.step("buttonholes").text().contains("7 holes 18 mm long, upright"));
        WorkStep open = given.step("open buttonholes");
        assertTrue(
                open.checks()
                        .contains(
                                "Verschluss: count 7 holes and read them again, from the top 2 cm,"
                                        + " 12 cm … 62 cm; 10 cm apart on average."),
                open.checks().toString());
    }

    @Test
    void countsBothRowsAndNeverTheOneToSpare() {
        Given given =
                Given.of(
                        "units: cm",
                        BUTTONED.replace("buttons: 7", "rows apart: 12 cm, buttons: 4")
                                .replace("extension: 2", "extension: 8"));
        assertEquals(
                List.of(
                        "8 buttons 15 mm across | Verschluss, two rows of 4; one to spare is not"
                                + " counted (common practice, no source)"),
                given.needs());
        assertTrue(given.step("buttons").text().contains("8 buttons, 4 of them beside the holes"));
    }

    @Test
    void saysThatACuffIsOneOfTwo() {
        Given given =
                Given.of("units: cm", BUTTONED.replace("extension: 2", "extension: 2, worn: cuff"));
        assertTrue(
                given.needs().get(0).contains("one cuff: double it for two"),
                given.needs()::toString);
    }

    @Test
    void namesAButtonAsAShopDoesOnEitherTape() {
        assertEquals(
                List.of(
                        "5 domed buttons ⅞ in across | waistcoat front; one to spare is not counted"
                                + " (common practice, no source)"),
                Given.demo("blanket-waistcoat").needs());
        assertTrue(
                Given.demo("porch-shirt").needs().get(0).startsWith("7 buttons 11.5 mm across |"));
        assertEquals(
                "pockets",
                Given.of(
                                "units: in",
                                BUTTONED.replace("64", "25")
                                        .replace("Verschluss", "pockets")
                                        .replace("thick: 3 mm", "thick: 3 mm, attached: shank"))
                        .needs()
                        .get(0)
                        .replaceAll("7 shank buttons .* across \\| (\\w+);.*", "$1"));
    }

    @Test
    void buysButtonsOnlyBesideTheDyedCloth() {
        Given given = Given.of("units: cm", BUTTONED);
        assertEquals("dry", given.all().needs().get(0).buyAfter().orElseThrow().step());
        assertEquals(List.of(), given.before("choose the buttons"));
    }

    @Test
    void sewsHooksWhereTheFinishedBandCloses() {
        Given given = Given.demo("gore-skirt");
        assertTrue(given.names().containsAll(List.of("snaps", "hooks")));
        assertFalse(given.names().contains("buttonholes"));
        assertTrue(given.before("hooks").contains("band"));
        assertEquals(
                List.of("4 snaps 9 mm wide", "2 hooks and eyes"),
                given.needs().stream().map(n -> n.split(" \\|", 2)[0]).toList());
    }

    /** As of boys' trousers: the holes of a fly are worked before its piece is set in. */
    @Test
    void worksHiddenHolesBeforeTheirLayerIsSewnIn() {
        Given given =
                Given.of(
                        "units: cm", BUTTONED.replace("extension: 2", "extension: 2, hidden: yes"));
        assertFalse(given.before("buttonholes").contains("assemble"));
        assertTrue(given.step("buttonholes").text().contains("before it is sewn in"));
    }

    /** Nothing is counted that the largest gap may change. */
    @Test
    void toldWithoutALengthGivesNoCountThatMayChange() {
        String unknown = BUTTONED.replace("length: 64", "length: unknown");
        assertEquals(1, Given.of("units: cm", unknown).all().needs().size());
        Given open =
                Given.of("units: cm", unknown.replace("buttons: 7", "buttons: 7, largest gap: 9"));
        assertEquals(List.of(), open.needs());
        assertTrue(open.step("buttonholes").text().contains("holes 18 mm long"));
    }

    @Test
    void givesNothingWithoutAClosure() {
        assertEquals(
                List.of(),
                Given.of("units: cm").names().stream().filter(n -> n.contains("button")).toList());
    }
}
