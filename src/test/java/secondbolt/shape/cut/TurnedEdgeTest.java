package secondbolt.shape.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.buffer.OffsetCurve;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Path;
import secondbolt.shape.Point;

/**
 * Held against JTS, which moves the flattened edge aside, and against the cutting line, which finds
 * the mirrored ends in another way.
 */
class TurnedEdgeTest {
    /** JTS first drops bends of less than a hundredth of the distance. */
    private static final double JTS_MM = 0.2;

    private static final double CHORDS_MM = 0.05;

    /**
     * The cutting line mirrors at straight lines that stray up to 0.02 mm from the curve, and so by
     * half a turn from one to the next: on a radius of 45 cm, at 35 mm, a third of a millimetre.
     */
    private static final double CUTTING_LINE_MM = 0.4;

    /** A piece with a bulging or hollow hem of random shape below, its sides leaning. */
    private static List<EdgeLine> piece(SplittableRandom random, boolean leaning) {
        double bow = random.nextDouble(-25, 40);
        double wide = random.nextDouble(220, 420);
        List<Point> hem = new ArrayList<>();
        hem.add(new Point(wide, 500));
        hem.add(
                new Point(
                        wide * random.nextDouble(0.6, 0.7), 500 + bow * random.nextDouble(0.8, 1)));
        hem.add(
                new Point(
                        wide * random.nextDouble(0.3, 0.4), 500 + bow * random.nextDouble(0.8, 1)));
        hem.add(new Point(0, 500));
        EdgeLine fold = EdgeLine.through(hem);
        double left = leaning ? random.nextDouble(-60, 60) : 0;
        double right = leaning ? random.nextDouble(-60, 60) : 0;
        Point topLeft = new Point(left, 0);
        Point topRight = new Point(wide + right, 0);
        return List.of(
                EdgeLine.straight(topLeft, topRight),
                EdgeLine.straight(topRight, hem.get(0)),
                fold,
                EdgeLine.straight(hem.get(3), topLeft));
    }

    private static double besideMm(EdgeLine fold, double leftMm) {
        Coordinate[] line =
                fold.flattened(0.001).stream()
                        .map(p -> new Coordinate(p.xMm(), p.yMm()))
                        .toArray(Coordinate[]::new);
        Geometry geometry = new GeometryFactory().createLineString(line);
        return OffsetCurve.getCurve(
                        geometry,
                        leftMm,
                        200,
                        BufferParameters.JOIN_ROUND,
                        BufferParameters.DEFAULT_MITRE_LIMIT)
                .getLength();
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void agreesWithJtsWhereTheSidesStandSquare(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        EdgeLine fold = piece(random, false).get(2);
        double depth = random.nextDouble(5, 40);
        TurnedEdge turned = TurnedEdge.square(fold, 1, depth);
        // JTS counts y upward, so which side is left differs; the longer one is on the bulge.
        double one = besideMm(fold, depth);
        double other = besideMm(fold, -depth);
        boolean bulges = turned.surplusMm() > 0;
        assertEquals(
                bulges ? Math.max(one, other) : Math.min(one, other), turned.outerMm(), JTS_MM);
        assertEquals(
                bulges ? Math.min(one, other) : Math.max(one, other), turned.landingMm(), JTS_MM);
        assertEquals(2 * depth * turned.turnsRadians(), turned.surplusMm(), 1e-6);
    }

    /** Each of many short chords moved aside by itself, and the gaps between them measured. */
    private static double movedChordsMm(EdgeLine fold, double leftMm) {
        List<Point> points = fold.flattened(0.00005);
        List<Point> moved = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            double x = (b.xMm() - a.xMm()) / a.distanceMm(b);
            double y = (b.yMm() - a.yMm()) / a.distanceMm(b);
            moved.add(a.moved(y * leftMm, -x * leftMm));
            moved.add(b.moved(y * leftMm, -x * leftMm));
        }
        double length = 0;
        for (int i = 1; i < moved.size(); i++) {
            // Where the line is hollow on that side the chords overlap, and count back.
            double step = moved.get(i - 1).distanceMm(moved.get(i));
            boolean isChord = i % 2 == 1;
            Point in = isChord ? moved.get(i) : moved.get(i - 1);
            Point from = isChord ? moved.get(i - 1) : moved.get(i - 2);
            double along =
                    (in.xMm() - from.xMm()) * (moved.get(i).xMm() - moved.get(i - 1).xMm())
                            + (in.yMm() - from.yMm())
                                    * (moved.get(i).yMm() - moved.get(i - 1).yMm());
            length += Math.copySign(step, along);
        }
        return length;
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void agreesWithChordsMovedAside(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        EdgeLine fold = piece(random, false).get(2);
        double depth = random.nextDouble(5, 40);
        TurnedEdge turned = TurnedEdge.square(fold, 1, depth);
        // Below a piece the edge runs to the left, so outside lies to its left on paper.
        assertEquals(movedChordsMm(fold, depth), turned.outerMm(), CHORDS_MM);
        assertEquals(movedChordsMm(fold, -depth), turned.landingMm(), CHORDS_MM);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void endsWhereTheCuttingLineMirrorsTheSides(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<EdgeLine> edges = piece(random, true);
        double depth = random.nextDouble(10, 45);
        TurnedEdge turned = TurnedEdge.of(edges, 2, List.of(0.0, 0.0, depth, 0.0));
        Allowance none = Allowance.plain(0);
        List<Point> cut =
                CuttingLine.of(edges, List.of(none, none, Allowance.hem(depth), none))
                        .outline()
                        .corners();
        List<Point> outer = turned.outer().get(0);
        double along = 0;
        Point last = null;
        for (Point corner : cut) {
            // The line outside is all that lies a full depth from the fold, below it.
            boolean isDeep =
                    Math.abs(edges.get(2).distanceMm(corner) - depth) < 0.05 && corner.yMm() > 470;
            boolean isEnd =
                    corner.distanceMm(outer.get(0)) < CUTTING_LINE_MM
                            || corner.distanceMm(outer.get(outer.size() - 1)) < CUTTING_LINE_MM;
            boolean isOuter = isDeep || isEnd;
            if (isOuter && last != null) {
                along += corner.distanceMm(last);
            }
            last = isOuter ? corner : null;
        }
        for (Point end : List.of(outer.get(0), outer.get(outer.size() - 1))) {
            double off = cut.stream().mapToDouble(end::distanceMm).min().orElseThrow();
            assertTrue(off < CUTTING_LINE_MM, "seed " + seed + ": off by " + off);
        }
        assertEquals(along, turned.outerMm(), 2 * CUTTING_LINE_MM);
    }

    /**
     * A panel of 300 by 400 with a hem of 30 below and one of 10 at its left: they cross at 10 from
     * the left and 30 from below, whichever way it is drawn. So the hem below is sewn down along
     * 300 - 10, the one at the left along 400 - 30; of two as deep, each ends so far in.
     */
    @ParameterizedTest(name = "{0} and {1} deep")
    @CsvSource({"30, 10, 290, 370", "10, 30, 270, 390", "20, 20, 280, 380"})
    void endsAMitreWhereTheHemsCross(
            double below, double left, double alongBelow, double alongLeft) {
        List<EdgeLine> edges =
                List.of(
                        EdgeLine.straight(new Point(0, 0), new Point(300, 0)),
                        EdgeLine.straight(new Point(300, 0), new Point(300, 400)),
                        EdgeLine.straight(new Point(300, 400), new Point(0, 400)),
                        EdgeLine.straight(new Point(0, 400), new Point(0, 0)));
        List<Double> depths = List.of(0.0, 0.0, below, left);
        TurnedEdge hem = TurnedEdge.of(edges, 2, depths);
        assertEquals(alongBelow, hem.landingMm(), 1e-6);
        assertEquals(alongBelow, hem.outerMm(), 1e-6);
        assertEquals(alongLeft, TurnedEdge.of(edges, 3, depths).landingMm(), 1e-6);
        List<EdgeLine> back = new ArrayList<>(edges.stream().map(EdgeLine::reversed).toList());
        Collections.reverse(back);
        List<Double> backDepths = List.of(left, below, 0.0, 0.0);
        assertEquals(alongBelow, TurnedEdge.of(back, 1, backDepths).landingMm(), 1e-6);
        assertEquals(alongLeft, TurnedEdge.of(back, 0, backDepths).outerMm(), 1e-6);
    }

    /** A circle of radius R, a quarter: outside it is longer by d π/2, inside shorter. */
    @Test
    void knowsAnArc() {
        EdgeLine arc = EdgeLine.arc(Point.ORIGIN, 300, 0, Math.PI / 2);
        TurnedEdge turned = TurnedEdge.square(arc, 1, 20);
        assertEquals(300, turned.radiusMm().orElseThrow(), 1e-4);
        assertEquals(320 * Math.PI / 2, turned.outerMm(), 1e-4);
        assertEquals(280 * Math.PI / 2, turned.landingMm(), 1e-4);
        TurnedEdge other = TurnedEdge.square(arc, -1, 20);
        assertEquals(280 * Math.PI / 2, other.outerMm(), 1e-4);
    }

    @Test
    void seesThatACurveIsNoArc() {
        EdgeLine curve =
                EdgeLine.through(
                        List.of(
                                new Point(0, 0),
                                new Point(100, 20),
                                new Point(200, 20),
                                new Point(300, -10)));
        assertTrue(TurnedEdge.square(curve, 1, 20).radiusMm().isEmpty());
    }

    @Test
    void seesThatItBendsMoreSharplyThanItIsDeep() {
        EdgeLine arc = EdgeLine.arc(Point.ORIGIN, 30, 0, 1);
        assertTrue(TurnedEdge.square(arc, 1, 31).isTooTight());
        assertTrue(!TurnedEdge.square(arc, 1, 29).isTooTight());
    }

    /**
     * An apron of 130 by 210: where its hem of 50 meets the hem of 12 at its side, each lands short
     * of the corner by the other's depth, 130 − 12 and 210 − 50.
     */
    @Test
    void meetsADeeperHemAtItsCornerWhereBothLand() {
        List<Point> at =
                List.of(
                        new Point(0, 0),
                        new Point(130, 0),
                        new Point(130, 210),
                        new Point(0, 210),
                        new Point(0, 0));
        List<EdgeLine> apron = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            apron.add(EdgeLine.straight(at.get(i), at.get(i + 1)));
        }
        List<Double> depths = List.of(0.0, 12.0, 50.0, 0.0);
        assertEquals(118, TurnedEdge.of(apron, 2, depths).landingMm(), 1e-6);
        assertEquals(160, TurnedEdge.of(apron, 1, depths).landingMm(), 1e-6);
        assertEquals(0, TurnedEdge.of(apron, 2, depths).surplusMm(), 1e-6);
    }

    /** A square corner within the edge: both lines end on the mitre, and nothing is eased. */
    @Test
    void endsItsPartsOnTheMitreOfACorner() {
        EdgeLine bent =
                new EdgeLine(
                        new Point(0, 0),
                        List.of(
                                new Path.Straight(new Point(100, 0)),
                                new Path.Straight(new Point(100, 100))));
        TurnedEdge turned = TurnedEdge.square(bent, 1, 20);
        assertEquals(160, turned.landingMm(), 1e-4);
        assertEquals(160, turned.outerMm(), 1e-4);
        assertEquals(1, turned.corners().size());
        assertEquals(Math.PI / 2, turned.corners().get(0).turnsRadians(), 1e-9);
    }

    /**
     * A flap 3 cm high with a hem of 1 cm, beside a hem of 8 cm: a mitre to where they cross, 8 cm
     * up, would take more than the edge has, 3 − 8. So there is none: both end at the corner, 3 cm
     * and 30 cm long.
     */
    @Test
    void leavesOutAMitreThatWouldTakeAllOfAShortEdgeBesideADeepHem() {
        List<EdgeLine> flap = rectangle(300, 30);
        List<Double> depths = List.of(0.0, 10.0, 80.0, 0.0);
        TurnedEdge side = TurnedEdge.of(flap, 1, depths);
        assertEquals(30, side.landingMm(), 1e-6);
        assertEquals(30, side.outerMm(), 1e-6);
        assertTrue(!side.isMitredAtEnd());
        TurnedEdge deep = TurnedEdge.of(flap, 2, depths);
        assertEquals(300, deep.landingMm(), 1e-6);
        assertTrue(!deep.isMitredAtStart());
    }

    /** Of 3 cm between two hems of 2 cm, two mitres would leave 3 − 2 − 2; of 1 cm, 3 − 1 − 1. */
    @ParameterizedTest(name = "beside two hems of {0}")
    @CsvSource({"20, 30", "10, 10"})
    void leavesOutBothMitresThatWouldTakeAllOfAnEdgeTogether(double depth, double lands) {
        List<EdgeLine> tab = rectangle(300, 30);
        List<Double> depths = List.of(depth, 10.0, depth, 0.0);
        assertEquals(lands, TurnedEdge.of(tab, 1, depths).landingMm(), 1e-6);
    }

    /**
     * A corner of two hems as deep, at 60 degrees: each lands short by the depth / tan 30°, and at
     * a side that is not turned by the depth / tan 60°.
     */
    @Test
    void countsWhatAMitreTakesAtASharpCorner() {
        Point a = new Point(0, 0);
        Point b = new Point(40, 0);
        Point c = new Point(20, 20 * Math.sqrt(3));
        List<EdgeLine> all =
                List.of(EdgeLine.straight(a, b), EdgeLine.straight(b, c), EdgeLine.straight(c, a));
        double takes = 10 / Math.tan(Math.toRadians(30));
        assertEquals(
                40 - takes - 10 / Math.tan(Math.toRadians(60)),
                TurnedEdge.of(all, 0, List.of(10.0, 10.0, 0.0)).landingMm(),
                1e-6);
        // Two of them take 34.6 of 40; twelve deep they would take 41.6, so the ends stay square.
        assertEquals(
                40 - 2 * takes, TurnedEdge.of(all, 0, List.of(10.0, 10.0, 10.0)).landingMm(), 1e-6);
        assertTrue(!TurnedEdge.of(all, 0, List.of(12.0, 12.0, 12.0)).isMitredAtStart());
    }

    private static List<EdgeLine> rectangle(double wide, double high) {
        List<Point> at =
                List.of(
                        new Point(0, 0),
                        new Point(wide, 0),
                        new Point(wide, high),
                        new Point(0, high),
                        new Point(0, 0));
        List<EdgeLine> edges = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            edges.add(EdgeLine.straight(at.get(i), at.get(i + 1)));
        }
        return edges;
    }
}
