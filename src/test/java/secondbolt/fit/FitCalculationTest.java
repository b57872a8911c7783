package secondbolt.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import secondbolt.fit.alter.Altered;
import secondbolt.fit.result.FitCalculation;
import secondbolt.fit.result.FitResult;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Tape;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.NamedEdge;
import secondbolt.pattern.piece.Piece;
import secondbolt.pattern.piece.PieceShape;
import secondbolt.pattern.piece.ShapeKeys;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Point;

/**
 * Alterations against the worked rules of the costume text of Central Washington University,
 * chapter 17, and values derived from them.
 */
class FitCalculationTest {
    private static final double EXACT_MM = 0.001;

    private static String body(String alterations) {
        return """
        pattern:
          pieces:
            front:
              cut: pair
              lines: {body: 42}
              outline:
                - {start: [0, 9]}
                - {edge: neckline, to: [7.5, 0], through: [[3, 8.4], [6, 4.6]]}
                - {edge: shoulder, to: [19, 4]}
                - {edge: armhole, to: [29, 24], through: [[18.5, 13], [21.5, 20]]}
                - {edge: side, to: [30, 70]}
                - {edge: hem, to: [0, 74], through: [[16, 73.4]]}
                - {edge: centre front, to: start}
              notches: [{edge: side, at: 10}, {edge: side, at: 10, from: hem}]
              marks: [{what: bust point, at: [10, 27]}, {what: pocket, at: [8, 50]}]
              darts: [{edge: side, at: 6, takes: 3, long: 11}]
            back: {cut: 1, fold: left, lines: {body: 40}, rectangle: [28, 66]}
        """
                + "alterations: ["
                + alterations
                + "]\n";
    }

    private static EdgeLine edge(Piece piece, String name) {
        return piece.shape().asDrawn().orElseThrow().find(name).orElseThrow();
    }

    private static Piece front(WrittenPattern pattern) {
        return pattern.sound().find("front").orElseThrow();
    }

    @Test
    void lengthenThenShortenByTheSameIsTheIdentity() {
        Random random = new Random(20260501);
        for (int i = 0; i < 40; i++) {
            int mm = 1 + random.nextInt(60);
            WrittenPattern there = WrittenPattern.cm(body("{lengthen: body, by: " + mm + " mm}"));
            Piece longer = front(there);
            List<Alteration> back =
                    WrittenPattern.cm(body("{shorten: body, by: " + mm + " mm}"))
                            .sound()
                            .alterations();
            Pattern altered =
                    new Pattern(
                            Pattern.Rights.MINE,
                            there.sound().pattern().sizes(),
                            there.sound().pattern().allowance(),
                            List.of(longer),
                            List.of(),
                            List.of(),
                            there.sound().pattern().meanings());
            Piece again = FitCalculation.work(altered, back, Tape.CENTIMETRE).pieces().get(0);
            Piece first = there.sound().pattern().find("front").orElseThrow();
            for (NamedEdge edge : first.shape().asDrawn().orElseThrow().edges()) {
                EdgeLine now = edge(again, edge.name());
                assertEquals(edge.line().lengthMm(), now.lengthMm(), EXACT_MM);
                for (Point knot : edge.line().knots()) {
                    assertEquals(0, now.distanceMm(knot), EXACT_MM);
                }
            }
            assertEquals(42 * 10, again.lines().get("body").millimetres(), EXACT_MM);
        }
    }

    /** Cut apart and spread by the whole amount. */
    @Test
    void lengtheningSpreadsByTheWholeAmount() {
        WrittenPattern longer = WrittenPattern.cm(body("{lengthen: body, by: 1 1/2 in}"));
        assertEquals(
                38.1, longer.afterMm("back", "left") - longer.beforeMm("back", "left"), EXACT_MM);
        assertEquals(38.1, edge(front(longer), "centre front").lengthMm() - 650, EXACT_MM);
    }

    /** A fold of half the amount takes up the whole. */
    @Test
    void shorteningFoldsTheWholeAmountAway() {
        WrittenPattern shorter = WrittenPattern.cm(body("{shorten: body, by: 2 in}"));
        assertEquals(
                -50.8,
                shorter.afterMm("back", "left") - shorter.beforeMm("back", "left"),
                EXACT_MM);
    }

    /** The amount over the seams, half of it on each side of a seam. */
    @Test
    void widthIsSharedOverAllCutEdges() {
        WrittenPattern six =
                WrittenPattern.cm(
                        """
                        pattern: {pieces: {gore: {cut: 6, panel: {top: 14, bottom: 22, along: 60}}}}
                        alterations: [{widen: [left, right], by: 3}]
                        """);
        assertEquals(
                2 * 2.5, six.afterMm("gore", "waist") - six.beforeMm("gore", "waist"), EXACT_MM);
        WrittenPattern two =
                WrittenPattern.inches(
                        """
                        pattern:
                          pieces:
                            front: {cut: 1, fold: left, rectangle: [11, 30]}
                            back: {cut: 1, fold: left, rectangle: [11, 30]}
                          seams: [[front.right, back.right]]
                        alterations: [{widen: right, by: 4}]
                        """);
        assertEquals(25.4, two.afterMm("front", "top") - two.beforeMm("front", "top"), EXACT_MM);
    }

    /** A lining goes round the body once more; it does not take a part of the share. */
    @Test
    void aLiningGrowsAsMuchAsItsOutside() {
        WrittenPattern lined =
                WrittenPattern.inches(
                        """
                        pattern:
                          pieces:
                            front: {cut: pair, rectangle: [11, 30]}
                            back: {cut: pair, rectangle: [11, 30]}
                            front lining: {cut: {lining: pair}, rectangle: [11, 30]}
                            back lining: {cut: {lining: pair}, rectangle: [11, 30]}
                          seams:
                            - [front.right, back.right]
                            - [front lining.right, back lining.right]
                        alterations: [{widen: right, by: 4}]
                        """);
        assertEquals(
                25.4, lined.afterMm("front", "top") - lined.beforeMm("front", "top"), EXACT_MM);
        assertEquals(
                25.4,
                lined.afterMm("back lining", "top") - lined.beforeMm("back lining", "top"),
                EXACT_MM);
    }

    /** 0.2 in on twenty edges: 16 × 3/16 + 4 × 1/4 = 4 in. */
    @Test
    void aShareOffTheTapeIsSpreadSoThatTheTotalIsRight() {
        for (String verb : List.of("widen", "narrow")) {
            WrittenPattern ten =
                    WrittenPattern.inches(
                            "pattern: {pieces: {panel: {cut: 10, rectangle: [6, 30]}}}\n"
                                    + "alterations: [{"
                                    + verb
                                    + ": [left, right], by: 4}]\n");
            String note = String.join("\n", ten.coded("alteration-share-off-the-tape"));
            assertTrue(note.contains("20 cut edges"), note);
            assertTrue(note.contains("16 edges at ³⁄₁₆ in and 4 at ¼ in"), note);
        }
    }

    /** 13.2 mm lies between two marks of half a millimetre; 13 is the nearer. */
    @Test
    void aShareOnOneEdgeIsToldOfOneEdge() {
        String note =
                String.join(
                        "\n",
                        WrittenPattern.cm(
                                        """
                                        pattern: {pieces: {panel: {cut: 1, rectangle: [60, 30]}}}
                                        alterations: [{widen: right, by: 13.2 mm}]
                                        """)
                                .coded("alteration-share-off-the-tape"));
        assertTrue(note.contains("Shared over 1 cut edge (panel)"), note);
        assertTrue(note.contains("By tape take 1 edge at 13 mm."), note);
    }

    /** The same twice is two alterations, each with what it changed. */
    @Test
    void eachOfTwoEqualAlterationsChangesWhatItChanges() {
        FitResult twice =
                WrittenPattern.cm(body("{lengthen: body, by: 1}, {lengthen: body, by: 1}")).sound();
        for (int i = 0; i < 2; i++) {
            List<Altered.Change> left =
                    twice.altered().get(i).changes().stream()
                            .filter(change -> change.edge().equals(new PieceEdge("back", "left")))
                            .toList();
            assertEquals(1, left.size());
            assertEquals(660 + 10 * i, left.get(0).before().millimetres(), EXACT_MM);
            assertEquals(670 + 10 * i, left.get(0).after().millimetres(), EXACT_MM);
        }
    }

    /** A change of length after one of width changes the piece as if it had come first. */
    @Test
    void aPieceIsAlteredTheSameInWhicheverOrderItIsAsked() {
        Piece one = front(WrittenPattern.cm(body("{widen: side, by: 2}, {lengthen: body, by: 3}")));
        Piece other =
                front(WrittenPattern.cm(body("{lengthen: body, by: 3}, {widen: side, by: 2}")));
        assertEquals(other, one);
    }

    @Test
    void aTaperLeavesAboveAndTakesAllBelow() {
        Piece before =
                WrittenPattern.cm(body("").replace("alterations: []\n", ""))
                        .sound()
                        .find("front")
                        .orElseThrow();
        Piece after = front(WrittenPattern.cm(body("{widen: side, by: 4, from: 35, to: 60}")));
        EdgeLine side = edge(after, "side");
        for (double y = 245; y < 350; y += 10) {
            assertEquals(0, side.distanceMm(on(before, y)), 0.01);
        }
        for (double y = 605; y < 700; y += 10) {
            assertEquals(0, side.distanceMm(on(before, y).moved(20, 0)), 0.01);
        }
        assertEquals(
                edge(before, "armhole").lengthMm(), edge(after, "armhole").lengthMm(), EXACT_MM);
    }

    private static Point on(Piece piece, double yMm) {
        EdgeLine side = edge(piece, "side");
        return side.at((yMm - 240) / 460 * side.lengthMm());
    }

    @Test
    void aTaperWithOneEndIsAMistake() {
        assertFalse(WrittenPattern.cm(body("{widen: side, by: 4, from: 35}")).mistakes().isEmpty());
    }

    @Test
    void notchesAndMarksAreCarriedAlong() {
        Piece longer = front(WrittenPattern.cm(body("{lengthen: body, by: 3}")));
        assertEquals(100, longer.features().notches().get(0).at().millimetres(), 0.1);
        assertEquals(100, longer.features().notches().get(1).at().millimetres(), 0.1);
        assertEquals(270, longer.features().marks().get(0).at().yMm(), EXACT_MM);
        assertEquals(530, longer.features().marks().get(1).at().yMm(), EXACT_MM);
    }

    @Test
    void straightEdgesStayStraight() {
        Piece longer =
                front(WrittenPattern.cm(body("{lengthen: body, by: 3}, {widen: side, by: 2}")));
        for (String name : List.of("side", "shoulder", "centre front")) {
            assertTrue(edge(longer, name).isStraight(), name);
        }
    }

    @Test
    void theEdgesTogetherAreThePerimeter() {
        Piece longer =
                front(WrittenPattern.cm(body("{lengthen: body, by: 3}, {widen: side, by: 2}")));
        PieceShape.Drawn drawn = longer.shape().asDrawn().orElseThrow();
        List<Point> corners = ShapeKeys.points(drawn);
        double round = 0;
        for (int i = 0; i < corners.size(); i++) {
            round += corners.get(i).distanceMm(corners.get((i + 1) % corners.size()));
        }
        double sum = drawn.edges().stream().mapToDouble(e -> e.line().lengthMm()).sum();
        assertEquals(round, sum, 0.5);
    }

    @Test
    void aFoldThatSwallowsSomethingIsAMistakeWithItsPlace() {
        for (String[] each :
                new String[][] {
                    {"body: 34.5", "the notch on side"},
                    {"body: 24.5", "the corner where side begins"},
                    {"body: 30", "the dart on side"},
                    {"body: 49", "the mark pocket"}
                }) {
            WrittenPattern found =
                    WrittenPattern.cm(body("{shorten: body, by: 3}").replace("body: 42", each[0]));
            assertTrue(
                    found.mistakes().stream()
                            .anyMatch(m -> m.contains(each[1]) && m.startsWith("20 ")),
                    each[1] + ": " + found.mistakes());
        }
    }

    /** Circle formulas; a waist of 70 cm is a radius of 22.282 cm for half a circle. */
    @Test
    void aRingFollowsTheCircleSkirtTables() {
        WrittenPattern ring =
                WrittenPattern.cm(
                        "pattern: {pieces: {skirt: {cut: 1, ring: {inner: 22.282, outer: 82.282,"
                                + " turn: 180}}}}\n");
        assertEquals(700, ring.beforeMm("skirt", "waist"), 0.1);
        assertEquals(Math.PI * 822.82, ring.beforeMm("skirt", "hem"), 0.1);
        assertEquals(600, ring.beforeMm("skirt", "left"), EXACT_MM);
    }

    /** Two halves have the waist and the hem of the whole circle: 2 pi r. */
    @Test
    void aFullCircleIsRefusedWithHowItIsCut() {
        String skirt =
                "pattern: {pieces: {skirt: {cut: 2, ring: {inner: 11, outer: 71, turn: %s}}}}";
        WrittenPattern full = WrittenPattern.cm(String.format(skirt, "360") + "\n");
        assertEquals(1, full.mistakes().size());
        assertTrue(
                full.mistakes().get(0).contains("two halves, `cut: 2` with `turn: 180`"),
                full.mistakes().toString());
        WrittenPattern half = WrittenPattern.cm(String.format(skirt, "180") + "\n");
        assertEquals(2 * Math.PI * 110, 2 * half.beforeMm("skirt", "waist"), 0.1);
        assertEquals(2 * Math.PI * 710, 2 * half.beforeMm("skirt", "hem"), 0.1);
    }

    @Test
    void aPanelsSidesAreItsSlant() {
        WrittenPattern panel =
                WrittenPattern.cm(
                        "pattern: {pieces: {gore: {cut: 6, panel: {top: 30, bottom: 44, along:"
                                + " 24}}}}\n");
        // 7, 24, 25: a right triangle in whole numbers.
        assertEquals(250, panel.beforeMm("gore", "left"), EXACT_MM);
        assertEquals(250, panel.beforeMm("gore", "right"), EXACT_MM);
        assertEquals(440, panel.beforeMm("gore", "hem"), EXACT_MM);
    }
}
