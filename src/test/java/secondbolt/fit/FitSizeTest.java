package secondbolt.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.fit.made.MadeMeasures;
import secondbolt.fit.result.FitCalculation;
import secondbolt.fit.result.FitResult;
import secondbolt.fit.size.SizeChoice;
import secondbolt.fit.size.SizePage;
import secondbolt.fit.size.SizeResult;
import secondbolt.measure.Tape;
import secondbolt.project.WrittenProject;

/**
 * What marks on the pieces tell of where the body is altered. Amounts derived by hand from the
 * chart in the test; that width is shared at the side seams: Central Washington University costume
 * text, chapter 17.
 */
class FitSizeTest {
    private static List<String> suggested(String marks, String alterations) {
        String text =
                """
                title: Shirt
                units: cm
                wearer: {age: adult, measurements: {bust: 94, waist: 76, hip: 106}}
                pattern:
                  rights: mine
                  sizes: {size: [14], bust: [94], waist: [76], hip: [102]}
                  size: 14
                  pieces:
                    front: {cut: pair, lines: {body: 40}, marks: [%s],
                      outline: [{start: [0, 0]}, {edge: top, to: [28, 0]}, {edge: side, to: [28, 70]},
                        {edge: hem, to: [0, 70]}, {edge: centre front, to: start}]}
                alterations: [%s]
                """
                        .formatted(marks, alterations);
        Mistakes mistakes = new Mistakes();
        WrittenProject project =
                WrittenProject.read(SourceFile.of("test.yaml", text), mistakes)
                        .orElseThrow(() -> new AssertionError(mistakes.inOrder().toString()));
        FitResult fit =
                FitCalculation.work(
                        project.pattern().orElseThrow(), project.alterations(), Tape.CENTIMETRE);
        return FitSize.of(fit, MadeMeasures.of(fit), project.wearer(), Tape.CENTIMETRE)
                .suggestions()
                .stream()
                .map(SizeResult.Suggestion::yaml)
                .flatMap(Optional::stream)
                .toList();
    }

    private static final String LEVELS =
            "{what: bust point, at: [10, 26]}, {what: waist, at: [10, 43]}, {what: hip line, at:"
                    + " [10, 63]}";

    @Test
    void widensTheWholeSideWhereNothingTellsTheLevels() {
        assertEquals(List.of("- {widen: side, by: 4 cm}"), suggested("", ""));
    }

    @Test
    void tapersFromTheWaistToTheHipWhereMarksTellThem() {
        assertEquals(
                List.of("- {widen: side, by: 4 cm, from: 43 cm, to: 63 cm}"),
                suggested(LEVELS, ""));
    }

    /** The body line lies above waist and hip: 2 cm more, and both lie 2 cm further down. */
    @Test
    void countsTheLevelsOnTheLengthenedPiece() {
        assertEquals(
                List.of("- {widen: side, by: 4 cm, from: 45 cm, to: 65 cm}"),
                suggested(LEVELS, "{lengthen: body, by: 2}"));
    }

    /** Halfway down the taper the hip has half of 4 cm, so half is still wanted. */
    @Test
    void countsWhatATaperGivesAtEachLevel() {
        assertEquals(
                List.of("- {widen: side, by: 2 cm, from: 43 cm, to: 63 cm}"),
                suggested(LEVELS, "{widen: side, by: 4, from: 53, to: 73}"));
    }

    /**
     * 4 cm at the inside leg of two legs are 2 round each; 1.5 cm more between waist and crotch are
     * 3 along the whole crotch, in front and at the back.
     */
    @Test
    void countsForEachLimbWhatItGets() {
        String text =
                """
                title: Trousers
                units: cm
                pattern:
                  finished: {thigh: 64, ankle: 40, crotch length: 70, crotch depth: 28, outside leg: 104}
                  pieces:
                    front: {cut: pair, lines: {rise: 15}, rectangle: [30, 104]}
                    back: {cut: pair, lines: {rise: 15}, rectangle: [34, 104]}
                  seams: [[front.right, back.left], [front.left, back.right]]
                  meaning: {right: inseam, left: outseam}
                alterations: [{widen: [right, left], by: 4}, {lengthen: rise, by: 1.5}]
                """;
        WrittenPattern pattern = WrittenPattern.of(text);
        SizeResult size =
                FitSize.of(
                        pattern.sound(),
                        MadeMeasures.of(pattern.sound()),
                        Optional.empty(),
                        Tape.CENTIMETRE);
        List<String> finished =
                size.measurements().stream()
                        .map(
                                m ->
                                        m.name().word()
                                                + " "
                                                + Tape.CENTIMETRE.print(m.finished().orElseThrow()))
                        .toList();
        assertEquals(
                List.of(
                        "thigh 66 cm",
                        "ankle 42 cm",
                        "crotch depth 29.5 cm",
                        "crotch length 73 cm",
                        "outside leg 105.5 cm"),
                finished);
    }

    /**
     * One chart of a whole range, with a row for the bust. Bust 92 is size 14 of it, hip 106 size
     * 18: skirts and trousers go by the hip (The New Dressmaker, 1921; State College of Washington,
     * bulletin 78, 1922).
     */
    @ParameterizedTest
    @CsvSource({
        "shoulder, side, 14 by bust",
        "waist, side, 18 by hip",
        "waist, inseam, 18 by hip",
        "top, side, 14 by bust"
    })
    void startsFromTheHipWhateverElseTheChartHasWherePiecesHangFromTheWaist(
            String top, String side, String starts) {
        assertEquals(starts, started("bust: 92, waist: 80, hip: 106", top, side));
    }

    /** No hip told: waist 80 is size 16; the bust of 92 would say 14. */
    @Test
    void startsASkirtFromTheWaistWhereTheHipIsNotTold() {
        assertEquals("16 by waist", started("bust: 92, waist: 80", "waist", "side"));
    }

    /** A bodice with a waist seam, its shoulders unnamed: the finished bust says what it is. */
    @Test
    void startsFromTheBustWhereAFinishedBustIsTold() {
        assertEquals(
                "14 by bust",
                started("bust: 92, waist: 80, hip: 106", "waist", "side", "finished: {bust: 98}"));
    }

    private static String started(String body, String top, String side) {
        return started(body, top, side, "");
    }

    private static String started(String body, String top, String side, String finished) {
        String text =
                """
                title: Of one range
                units: cm
                wearer: {age: adult, measurements: {%s}}
                pattern:
                  rights: mine
                  sizes: {size: [14, 16, 18], bust: [92, 96, 100], waist: [76, 80, 84], hip: [98, 102, 106]}
                  %s
                  pieces:
                    front: {cut: pair, outline: [{start: [0, 0]}, {edge: %s, to: [28, 0]},
                      {edge: %s, to: [28, 70]}, {edge: hem, to: [0, 70]}, {edge: middle, to: start}]}
                """
                        .formatted(body, finished, top, side);
        FitResult fit = WrittenPattern.of(text).sound();
        WrittenProject project =
                WrittenProject.read(SourceFile.of("test.yaml", text), new Mistakes()).orElseThrow();
        return FitSize.of(fit, MadeMeasures.of(fit), project.wearer(), Tape.CENTIMETRE)
                .choice()
                .flatMap(SizeChoice::start)
                .map(start -> start.size() + " by " + start.by().word())
                .orElse("nothing");
    }

    private static String page(String side) {
        String text =
                """
                title: Shirt
                units: cm
                wearer: {age: adult, measurements: {bust: 94, waist: 76, hip: 106}}
                pattern:
                  sizes: {size: [14], bust: [94], waist: [76], hip: [102]}
                  size: 14
                  pieces:
                    front: {cut: pair, outline: [{start: [0, 0]}, {edge: top, to: [28, 0]},
                      {edge: %s, to: [28, 70]}, {edge: hem, to: [0, 70]}, {edge: middle, to: start}]}
                """
                        .formatted(side);
        FitResult fit = WrittenPattern.of(text).sound();
        WrittenProject project =
                WrittenProject.read(SourceFile.of("test.yaml", text), new Mistakes()).orElseThrow();
        SizeResult size = FitSize.of(fit, MadeMeasures.of(fit), project.wearer(), Tape.CENTIMETRE);
        return SizePage.blocks(size, Tape.CENTIMETRE).toString();
    }

    /** A hip of 106 for 102 asks for 4 more; while no side is known, no line stands there. */
    @Test
    void speaksOfALineToPasteOnlyWhereOneStands() {
        assertTrue(page("side").contains("A line to paste goes under"), page("side"));
        assertTrue(page("side").contains("it can be tapered"));
        String unknown = page("Naht");
        assertTrue(unknown.contains("What could be altered"), unknown);
        assertFalse(unknown.contains("A line to paste goes under"), unknown);
        assertFalse(unknown.contains("it can be tapered"), unknown);
    }
}
