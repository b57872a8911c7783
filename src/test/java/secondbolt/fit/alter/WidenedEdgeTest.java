package secondbolt.fit.alter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import secondbolt.fit.WrittenPattern;
import secondbolt.pattern.piece.Piece;
import secondbolt.pattern.piece.PieceShape;
import secondbolt.shape.EdgeLine;

/**
 * Width added to sides that slant: what goes round the body must grow by the whole amount.
 *
 * <p>The amount over the cut edges, added at the outside edges: Central Washington University
 * costume text, chapter 17. That waist and hem each take it whole is derived.
 */
class WidenedEdgeTest {
    private static final double EXACT_MM = 0.01;

    private static EdgeLine edge(WrittenPattern pattern, String piece, String name) {
        PieceShape shape = pattern.sound().find(piece).orElseThrow().shape();
        return shape.asDrawn().orElseThrow().find(name).orElseThrow();
    }

    private static double gainMm(WrittenPattern pattern, String edge) {
        return pattern.afterMm("skirt", edge) - pattern.beforeMm("skirt", edge);
    }

    @ParameterizedTest
    @CsvSource({
        "180, 2, 4, 20",
        "180, 2, 20, 100",
        "180, 2, -4, -20",
        "180, 2, -20, -100",
        "90, 4, 4, 10",
        "90, 2, 4, 20",
        "60, 6, 3, 5",
        "40, 9, 3, 3.3333",
        "20, 18, 4, 2.2222"
    })
    void theSideOfARingMovesSquareToItself(int turn, int cut, int by, double gainMm) {
        String verb = by > 0 ? "widen" : "narrow";
        WrittenPattern skirt =
                WrittenPattern.cm(
                        "pattern: {pieces: {skirt: {cut: "
                                + cut
                                + ", ring: {inner: 12, outer: 80, turn: "
                                + turn
                                + "}}}}\nalterations: [{"
                                + verb
                                + ": [left, right], by: "
                                + Math.abs(by)
                                + "}]\n");
        assertEquals(gainMm, gainMm(skirt, "waist"), EXACT_MM);
        assertEquals(gainMm, gainMm(skirt, "hem"), EXACT_MM);
        // Cut off, a side ends on the curves and gets a little longer; both sides alike.
        assertEquals(0, gainMm(skirt, "left"), by > 0 ? EXACT_MM : 10);
        assertEquals(gainMm(skirt, "left"), gainMm(skirt, "right"), EXACT_MM);
    }

    /** A gore with a straight top moves across; one cut to a curve moves square to its sides. */
    @Test
    void aStraightToppedGoreMovesAcross() {
        WrittenPattern gore =
                WrittenPattern.cm(
                        """
                        pattern: {pieces: {skirt: {cut: 4, panel: {top: 10, bottom: 54, along: 60}}}}
                        alterations: [{widen: [left, right], by: 4}]
                        """);
        assertEquals(10, gainMm(gore, "waist"), EXACT_MM);
        assertEquals(10, gainMm(gore, "hem"), EXACT_MM);
        assertEquals(0, gainMm(gore, "left"), EXACT_MM);
    }

    /** A line stays on its place of the cloth when the top of the piece has moved. */
    @Test
    void aLineStaysWhereItWas() {
        String text =
                "pattern: {pieces: {skirt: {cut: 2, lines: {hip: 30},"
                        + " ring: {inner: 12, outer: 80, turn: 180}}}}\n";
        WrittenPattern before = WrittenPattern.cm(text);
        WrittenPattern after =
                WrittenPattern.cm(text + "alterations: [{widen: [left, right], by: 4}]\n");
        assertEquals(lineMm(before), lineMm(after), EXACT_MM);
    }

    private static double lineMm(WrittenPattern pattern) {
        Piece piece = pattern.sound().find("skirt").orElseThrow();
        return PieceAlteration.topMm(piece) + piece.lines().get("hip").millimetres();
    }

    @Test
    void theSidesStayStraight() {
        WrittenPattern skirt =
                WrittenPattern.cm(
                        """
                        pattern: {pieces: {skirt: {cut: 2, ring: {inner: 12, outer: 80, turn: 180}}}}
                        alterations: [{widen: [left, right], by: 4}]
                        """);
        assertTrue(edge(skirt, "skirt", "left").isStraight());
        assertTrue(edge(skirt, "skirt", "right").isStraight());
    }

    @Test
    void aTaperNeedsAnEdgeThatRunsDownThePiece() {
        WrittenPattern skirt =
                WrittenPattern.cm(
                        """
                        pattern: {pieces: {skirt: {cut: 2, ring: {inner: 12, outer: 80, turn: 180}}}}
                        alterations: [{widen: left, by: 4, from: 5, to: 20}]
                        """);
        assertTrue(skirt.mistakes().get(0).contains("a taper on skirt.left"), skirt.toString());
    }

    /**
     * An underarm seam that leans 6 cm in 38 (9 degrees), whose cap comes down to it: 4 cm over two
     * sleeves of two edges are 1 cm an edge, so a wrist gains 2 and both 4, not 3.95.
     */
    @Test
    void aLeaningUnderarmTakesTheWholeAmount() {
        WrittenPattern sleeve =
                WrittenPattern.cm(SLEEVE + "  - {widen: [front seam, back seam], by: 4}\n");
        assertEquals(
                20,
                sleeve.afterMm("sleeve", "wrist") - sleeve.beforeMm("sleeve", "wrist"),
                EXACT_MM);
    }

    /** The same seam takes a taper: nothing above the elbow, all at the wrist. */
    @Test
    void aLeaningUnderarmTakesATaper() {
        WrittenPattern sleeve =
                WrittenPattern.cm(
                        SLEEVE + "  - {widen: [front seam, back seam], by: 4, from: 25, to: 45}\n");
        assertEquals(List.of(), sleeve.mistakes());
        assertEquals(
                20,
                sleeve.afterMm("sleeve", "wrist") - sleeve.beforeMm("sleeve", "wrist"),
                EXACT_MM);
        assertEquals(sleeve.beforeMm("sleeve", "cap"), sleeve.afterMm("sleeve", "cap"), EXACT_MM);
    }

    private static final String SLEEVE =
            """
            pattern:
              pieces:
                sleeve:
                  cut: pair
                  outline:
                    - {start: [0, 13]}
                    - {edge: cap, to: [42, 13], through: [[6, 9.6], [12, 3.4], [21, 0], [30, 2.9], [36, 9.6]]}
                    - {edge: front seam, to: [36, 51]}
                    - {edge: wrist, to: [6, 51]}
                    - {edge: back seam, to: start}
              seams: [[sleeve.front seam, sleeve.back seam]]
            alterations:
            """;
}
