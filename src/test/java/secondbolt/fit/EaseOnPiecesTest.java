package secondbolt.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.fit.made.MadeMeasures;
import secondbolt.fit.size.SizeResult;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.project.WrittenProject;

/** The finished measures are those of the pieces, where none are told and as the pieces are cut. */
class EaseOnPiecesTest {
    private static final String WEARER =
            "wearer: {age: adult, measurements: {bust: 92, waist: 76, hip: 98}}\n";

    /** 25 at the underarm and 26 half way down at the hip, twice on the fold: 100 and 104. */
    private static final String PATTERN =
            """
            cloth: {sheet: {size: [200, 200], prewash: done}}
            pattern:
              FINISHED
              seam allowance: {of: 0, included: true}
              pieces:
                vorn: {cut: 1, fold: Mitte, lines: {hip: 47},
                  outline: [{start: [0, 8]}, {edge: neckline, to: [7, 0]}, {edge: shoulder, to: [19, 4]}, {edge: armhole, to: [25, 24]}, {edge: Naht, to: [27, 70]}, {edge: hem, to: [0, 70]}, {edge: Mitte, to: start}]}
                hinten: {cut: 1, fold: Mitte, lines: {hip: 47},
                  outline: [{start: [0, 8]}, {edge: neckline, to: [7, 0]}, {edge: shoulder, to: [19, 4]}, {edge: armhole, to: [25, 24]}, {edge: Naht, to: [27, 70]}, {edge: hem, to: [0, 70]}, {edge: Mitte, to: start}]}
              seams: [[vorn.Naht, hinten.Naht]]
              meaning: {Naht: side}
            alterations: [{widen: Naht, by: 4}]
            """;

    private static WrittenPattern written(String finished, String more) {
        return WrittenPattern.cm(WEARER + PATTERN.replace("FINISHED", finished) + more);
    }

    private static List<String> finished(String finished, String more) {
        String text =
                "title: Test\nunits: cm\n" + WEARER + PATTERN.replace("FINISHED", finished) + more;
        Mistakes mistakes = new Mistakes();
        WrittenProject project =
                WrittenProject.read(SourceFile.of("test.yaml", text), mistakes)
                        .orElseThrow(() -> new AssertionError(mistakes.inOrder().toString()));
        WrittenPattern pattern = written(finished, more);
        SizeResult size =
                FitSize.of(
                        pattern.sound(),
                        MadeMeasures.of(pattern.sound()),
                        project.wearer(),
                        Tape.CENTIMETRE);
        return size.measurements().stream()
                .filter(m -> m.finished().isPresent())
                .map(
                        m ->
                                m.name().word()
                                        + " "
                                        + print(m.finished())
                                        + " ease "
                                        + print(m.ease())
                                        + (m.onPieces() ? " on the pieces" : ""))
                .toList();
    }

    private static String print(Optional<Length> length) {
        return length.map(Tape.CENTIMETRE::print).orElse("open");
    }

    /** 100 and 104 as drawn, 4 wider: 104 - 92 and 108 - 98. */
    @Test
    void whatThePiecesMeasureIsTheFinishedGarment() {
        assertEquals(
                List.of(
                        "bust 104 cm ease 12 cm on the pieces",
                        "hip 108 cm ease 10 cm on the pieces"),
                finished("rights: mine", ""));
    }

    /** 110 as told, 4 wider, are 114: it goes before the 104 of the pieces, and differs. */
    @Test
    void whatIsToldGoesBeforeThePieces() {
        assertEquals(
                List.of("bust 104 cm ease 12 cm on the pieces", "hip 114 cm ease 16 cm"),
                finished("finished: {hip: 110}", ""));
        String differs = written("finished: {hip: 110}", "").coded("finished-differs").get(0);
        assertTrue(differs.contains("the hip is 110 cm"), differs);
        assertTrue(differs.contains("the pieces as drawn measure 104 cm"), differs);
    }

    /** The front was cut before: only the back is wider, by its half of 4. */
    @Test
    void aPieceThatWasCutCountsAsItIs() {
        String cut = "cut so far: [{piece: vorn, cloth: sheet, at: [0, 0], altered: none}]\n";
        assertEquals(
                List.of("bust 102 cm ease 10 cm on the pieces", "hip 112 cm ease 14 cm"),
                finished("finished: {hip: 110}", cut));
    }

    /** It was cut when 2 were written: its half of 2, and the back's half of 4. */
    @Test
    void aPieceCutWithAnotherAmountCountsWithThat() {
        String cut =
                "cut so far: [{piece: vorn, cloth: sheet, at: [0, 0], altered: [{widen: Naht, by:"
                        + " 2}]}]\n";
        assertEquals(
                List.of("bust 103 cm ease 11 cm on the pieces", "hip 113 cm ease 15 cm"),
                finished("finished: {hip: 110}", cut));
    }

    /** A band is sewn to the fronts: what it adds all round, the pieces do not tell. */
    @Test
    void whereABandLiesBetweenThePiecesNothingIsFilledIn() {
        WrittenPattern shirt =
                WrittenPattern.cm(
                        """
                        pattern:
                          finished: {bust: 108}
                          pieces:
                            front: {cut: pair, outline: [{start: [0, 8]}, {edge: neckline, to: [7, 0]}, {edge: shoulder, to: [19, 4]}, {edge: armhole, to: [25, 24]}, {edge: side, to: [25, 70]}, {edge: hem, to: [0, 70]}, {edge: centre front, to: start}]}
                            back: {cut: 1, fold: centre back, outline: [{start: [0, 8]}, {edge: neckline, to: [7, 0]}, {edge: shoulder, to: [19, 4]}, {edge: armhole, to: [25, 24]}, {edge: side, to: [25, 70]}, {edge: hem, to: [0, 70]}, {edge: centre back, to: start}]}
                            band: {cut: 2, rectangle: [4, 62]}
                          seams: [[front.side, back.side], [front.centre front, band.left]]
                        """);
        MadeMeasures made = MadeMeasures.of(shirt.sound());
        assertEquals(0, made.girthsOfTheBody().size(), "" + made.girths());
        assertTrue(
                made.girths()
                        .get(0)
                        .what()
                        .endsWith(", without what lies beyond the centre front of the front"),
                "" + made.girths());
        assertEquals(List.of(), shirt.coded("finished-differs"));
    }
}
