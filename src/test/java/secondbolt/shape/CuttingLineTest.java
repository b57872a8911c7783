package secondbolt.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import secondbolt.shape.cut.Allowance;
import secondbolt.shape.cut.CuttingLine;

/** Allowances, held against geometry by hand and against the mitred buffer of JTS. */
class CuttingLineTest {
    private static final Allowance SEAM = Allowance.plain(15);

    private static List<EdgeLine> polygon(Point... corners) {
        List<EdgeLine> edges = new ArrayList<>();
        for (int i = 0; i < corners.length; i++) {
            edges.add(EdgeLine.straight(corners[i], corners[(i + 1) % corners.length]));
        }
        return edges;
    }

    private static List<EdgeLine> rectangle(double width, double height) {
        return polygon(
                Point.ORIGIN, new Point(width, 0), new Point(width, height), new Point(0, height));
    }

    private static List<EdgeLine> otherWayRound(List<EdgeLine> edges) {
        List<EdgeLine> back = new ArrayList<>();
        edges.forEach(edge -> back.add(edge.reversed()));
        Collections.reverse(back);
        return back;
    }

    private static CuttingLine uniform(List<EdgeLine> edges, double widthMm) {
        return CuttingLine.of(edges, Collections.nCopies(edges.size(), Allowance.plain(widthMm)));
    }

    private static double nearestMm(CuttingLine line, Point point) {
        return line.outline().corners().stream()
                .mapToDouble(corner -> corner.distanceMm(point))
                .min()
                .orElseThrow();
    }

    @Test
    void growsARectangleByTheWidthOfEachSide() {
        List<Allowance> widths =
                List.of(
                        Allowance.plain(10),
                        Allowance.plain(15),
                        Allowance.plain(20),
                        Allowance.plain(6));
        CuttingLine line = CuttingLine.of(rectangle(300, 200), widths);
        assertEquals(4, line.outline().corners().size());
        Box box = line.outline().box();
        assertEquals(-6, box.leftMm(), 1e-9);
        assertEquals(-10, box.topMm(), 1e-9);
        assertEquals(315, box.rightMm(), 1e-9);
        assertEquals(220, box.bottomMm(), 1e-9);
        assertTrue(line.crossing().isEmpty());
        assertEquals(0, line.outward(0, 7).distanceMm(new Point(0, -1)), 1e-12);
    }

    @Test
    void findsTheSameEitherWayRound() {
        List<EdgeLine> back = otherWayRound(rectangle(300, 200));
        CuttingLine line = uniform(back, 15);
        assertEquals(330 * 230, line.outline().areaMm2(), 1e-6);
        assertEquals(0, line.outward(0, 7).distanceMm(new Point(-1, 0)), 1e-12);
    }

    private static double differenceMm2(Geometry expected, CuttingLine line) {
        return expected.symDifference(Region.polygon(line.outline())).getArea();
    }

    /**
     * Polygons about a middle with outer and hollow corners; JTS with the same limit of 4. Where
     * the line hardly turns JTS rounds the corner by a sliver of some square millimetres' tenths.
     */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {21, 22, 23, 24, 25, 26})
    void agreesWithTheMitredBuffer(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            double turn = 2 * Math.PI * i / 9;
            double reach = 250 + random.nextDouble(150);
            corners.add(new Point(reach * Math.cos(turn), reach * Math.sin(turn)));
        }
        List<EdgeLine> edges = polygon(corners.toArray(new Point[0]));
        BufferParameters mitred =
                new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 4);
        mitred.setSimplifyFactor(0);
        Geometry buffer = BufferOp.bufferOp(Region.polygon(new Outline(corners)), 15, mitred);
        assertEquals(0, differenceMm2(buffer, uniform(edges, 15)), 2);
        assertEquals(0, differenceMm2(buffer, uniform(otherWayRound(edges), 15)), 2);
    }

    /** A bodice front with hollow neckline and armhole, its curves finely flattened for JTS. */
    @Test
    void agreesWithTheBufferOnABodice() {
        List<EdgeLine> front = bodice();
        List<Point> corners = new ArrayList<>();
        for (EdgeLine edge : front) {
            List<Point> flat = edge.flattened(0.0005);
            corners.addAll(flat.subList(0, flat.size() - 1));
        }
        CuttingLine line = uniform(front, 15);
        assertTrue(line.crossing().isEmpty());
        double around = front.stream().mapToDouble(EdgeLine::lengthMm).sum();
        BufferParameters mitred =
                new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 5);
        mitred.setSimplifyFactor(0);
        Geometry buffer = BufferOp.bufferOp(Region.polygon(new Outline(corners)), 15, mitred);
        assertEquals(0, differenceMm2(buffer, line), 0.02 * around);
    }

    private static List<EdgeLine> bodice() {
        return List.of(
                EdgeLine.through(
                        List.of(
                                new Point(0, 90),
                                new Point(30, 84),
                                new Point(60, 46),
                                new Point(75, 0))),
                EdgeLine.straight(new Point(75, 0), new Point(190, 40)),
                EdgeLine.through(
                        List.of(
                                new Point(190, 40),
                                new Point(185, 130),
                                new Point(215, 200),
                                new Point(290, 240))),
                EdgeLine.straight(new Point(290, 240), new Point(300, 700)),
                EdgeLine.through(
                        List.of(new Point(300, 700), new Point(160, 734), new Point(0, 740))),
                EdgeLine.straight(new Point(0, 740), new Point(0, 90)));
    }

    @Test
    void cutsAlongTheFoldItself() {
        List<Allowance> widths = new ArrayList<>(Collections.nCopies(5, SEAM));
        widths.add(Allowance.fold());
        CuttingLine line = CuttingLine.of(bodice(), widths);
        assertTrue(line.crossing().isEmpty());
        // The hem meets the fold a little off square, and both lines run on to x = 0.
        assertEquals(0, line.outline().box().leftMm(), 1e-9);
        List<Point> onFold =
                line.outline().corners().stream().filter(p -> Math.abs(p.xMm()) < 1e-6).toList();
        assertEquals(2, onFold.size());
    }

    /** Steiner's formula for a convex outline: area + perimeter × width + at least π width². */
    @ParameterizedTest(name = "{0} mm")
    @CsvSource({"6", "15", "25"})
    void addsAnAreaBetweenItsBounds(double widthMm) {
        List<EdgeLine> panel =
                polygon(
                        new Point(70, 0),
                        new Point(370, 0),
                        new Point(440, 600),
                        new Point(0, 600));
        double around = panel.stream().mapToDouble(EdgeLine::lengthMm).sum();
        double added = uniform(panel, widthMm).outline().areaMm2() - 370.0 * 600;
        assertTrue(added >= around * widthMm + Math.PI * widthMm * widthMm);
        assertTrue(added <= around * widthMm + 4.2 * widthMm * widthMm);
    }

    /** A closed circle: the cutting line is the larger circle, π (r + w)². */
    @Test
    void growsACircle() {
        EdgeLine circle = EdgeLine.arc(new Point(50, 50), 120, 0, 2 * Math.PI);
        CuttingLine line = uniform(List.of(circle), 10);
        assertEquals(Math.PI * 130 * 130, line.outline().areaMm2(), 0.02 * 2 * Math.PI * 130);
        for (Point corner : line.outline().corners()) {
            assertEquals(130, corner.distanceMm(new Point(50, 50)), 1e-4);
        }
    }

    @Test
    void stepsSquarelyBetweenWidthsInOneDirection() {
        List<EdgeLine> edges =
                polygon(
                        Point.ORIGIN,
                        new Point(100, 0),
                        new Point(200, 0),
                        new Point(200, 100),
                        new Point(0, 100));
        List<Allowance> widths =
                List.of(Allowance.plain(10), Allowance.plain(25), SEAM, SEAM, SEAM);
        CuttingLine line = CuttingLine.of(edges, widths);
        assertEquals(0, nearestMm(line, new Point(100, -10)), 1e-9);
        assertEquals(0, nearestMm(line, new Point(100, -25)), 1e-9);
        double rows = 115 * 10 + 115 * 25 + 230 * 15 + 100 * 15 * 2;
        assertEquals(100 * 200 + rows, line.outline().areaMm2(), 1e-6);
    }

    /**
     * A turn of a few degrees: the wide allowance keeps its square end, the narrow runs up to it.
     */
    @ParameterizedTest(name = "{0} degrees")
    @ValueSource(doubles = {5, -5, 20, -20})
    void stepsWhereTheDirectionHardlyChanges(double degrees) {
        double turn = Math.toRadians(degrees);
        Point corner = new Point(200, 0);
        Point far = corner.moved(200 * Math.cos(turn), 200 * Math.sin(turn));
        List<EdgeLine> edges = polygon(Point.ORIGIN, corner, far, new Point(200, 400));
        List<Allowance> widths = List.of(Allowance.plain(6), Allowance.plain(25), SEAM, SEAM);
        CuttingLine line = CuttingLine.of(edges, widths);
        assertTrue(line.crossing().isEmpty());
        Point wide = corner.moved(25 * Math.sin(turn), -25 * Math.cos(turn));
        assertEquals(0, nearestMm(line, wide), 1e-9);
        double up = 6 / Math.cos(turn);
        Point narrow = corner.moved(up * Math.sin(turn), -up * Math.cos(turn));
        assertEquals(0, nearestMm(line, narrow), 1e-9);
    }

    /** By hand: a tip of 20 degrees has its mitre 15 / sin 10° = 86.4 mm out; it is cut at 60. */
    @Test
    void cutsASharpPointOffSquarely() {
        double half = Math.toRadians(10);
        double wide = 300 * Math.tan(half);
        List<EdgeLine> edges = polygon(Point.ORIGIN, new Point(wide, 300), new Point(-wide, 300));
        CuttingLine line = uniform(edges, 15);
        assertTrue(line.crossing().isEmpty());
        assertEquals(-60, line.outline().box().topMm(), 1e-9);
        double across = 15 / Math.cos(half) - 60 * Math.tan(half);
        assertEquals(0, nearestMm(line, new Point(across, -60)), 1e-9);
        assertEquals(0, nearestMm(line, new Point(-across, -60)), 1e-9);
    }

    /**
     * By hand: a panel that widens by 70 mm each side in 600; with 15 mm side allowances the cut
     * edges lie 440 + 2 × 15 / cos apart at the hem, and as far apart 40 mm below it as 40 mm
     * above.
     */
    @ParameterizedTest(name = "{0} mm wider on each side")
    @ValueSource(doubles = {70, 0, -50})
    void mirrorsTheSidesInAHem(double flare) {
        List<EdgeLine> edges =
                polygon(
                        new Point(-150, 0),
                        new Point(150, 0),
                        new Point(150 + flare, 600),
                        new Point(-150 - flare, 600));
        List<Allowance> widths = List.of(SEAM, SEAM, Allowance.hem(40), SEAM);
        double slope = flare / 600;
        double aside = 15 * Math.hypot(1, slope);
        double atHem = 150 + flare + aside;
        for (boolean back : new boolean[] {false, true}) {
            List<Allowance> order = new ArrayList<>(widths);
            Collections.reverse(order);
            CuttingLine line =
                    back
                            ? CuttingLine.of(otherWayRound(edges), order)
                            : CuttingLine.of(edges, widths);
            assertTrue(line.crossing().isEmpty());
            assertEquals(640, line.outline().box().bottomMm(), 1e-9);
            for (int side : new int[] {-1, 1}) {
                if (flare != 0) {
                    assertEquals(0, nearestMm(line, new Point(side * atHem, 600)), 1e-6);
                }
                double atEnd = side * (atHem - 40 * slope);
                assertEquals(0, nearestMm(line, new Point(atEnd, 640)), 1e-6);
            }
        }
    }

    /** A curved hem folded at each place lands on the piece: mirrored cut corners lie within. */
    @Test
    void mirrorsTheSidesInACurvedHem() {
        EdgeLine hem = EdgeLine.arc(Point.ORIGIN, 800, Math.toRadians(80), Math.toRadians(20));
        EdgeLine waist = EdgeLine.arc(Point.ORIGIN, 200, Math.toRadians(100), Math.toRadians(-20));
        List<EdgeLine> gore =
                List.of(
                        hem,
                        EdgeLine.straight(hem.end(), waist.start()),
                        waist,
                        EdgeLine.straight(waist.end(), hem.start()));
        CuttingLine line = CuttingLine.of(gore, List.of(Allowance.hem(50), SEAM, SEAM, SEAM));
        assertTrue(line.crossing().isEmpty());
        int checked = 0;
        for (Point corner : line.outline().corners()) {
            double radius = corner.distanceMm(Point.ORIGIN);
            if (radius > 801 + 15) {
                // The mirror image at the circle of the hem lies as far inside it.
                double share = (1600 - radius) / radius;
                double x = Math.abs(corner.xMm() * share);
                double y = corner.yMm() * share;
                double fromSide =
                        x * Math.cos(Math.toRadians(10)) - y * Math.sin(Math.toRadians(10));
                assertTrue(fromSide <= 15.05, "lies out at " + corner);
                checked++;
            }
        }
        assertTrue(checked > 30);
        // Its outer corner by hand: the cut side 50 mm up, mirrored at the tangent of the hem's
        // end.
        double turn = Math.toRadians(80);
        Point end =
                hem.start()
                        .moved(50 * Math.cos(turn), 50 * Math.sin(turn))
                        .moved(15 * Math.sin(turn), -15 * Math.cos(turn));
        assertEquals(0, nearestMm(line, end), 0.02);
    }

    @Test
    void runsAFoldStraightThroughAHem() {
        List<Allowance> widths = List.of(SEAM, SEAM, Allowance.hem(40), Allowance.fold());
        CuttingLine line = CuttingLine.of(rectangle(200, 300), widths);
        assertEquals(0, line.outline().box().leftMm(), 1e-9);
        assertEquals(340, line.outline().box().bottomMm(), 1e-9);
        assertEquals(215 * 355, line.outline().areaMm2(), 1e-6);
    }

    @Test
    void mitresTwoHemsAtACorner() {
        List<Allowance> hems = Collections.nCopies(4, Allowance.hem(20));
        assertEquals(
                440 * 440, CuttingLine.of(rectangle(400, 400), hems).outline().areaMm2(), 1e-6);
    }

    /** A slot 20 mm wide has no room for two allowances of 15. */
    @Test
    void tellsWhereAllowancesHaveNoRoom() {
        List<EdgeLine> edges =
                polygon(
                        Point.ORIGIN,
                        new Point(100, 0),
                        new Point(100, 150),
                        new Point(120, 150),
                        new Point(120, 0),
                        new Point(220, 0),
                        new Point(220, 200),
                        new Point(0, 200));
        Point place = uniform(edges, 15).crossing().orElseThrow();
        assertTrue(place.distanceMm(new Point(110, 140)) < 15, "told " + place);
        assertTrue(uniform(edges, 9).crossing().isEmpty());
    }

    @Test
    void refusesEdgesThatDoNotClose() {
        List<EdgeLine> open = rectangle(100, 100).subList(0, 3);
        assertThrows(IllegalArgumentException.class, () -> uniform(open, 10));
        assertThrows(
                IllegalArgumentException.class,
                () -> CuttingLine.of(rectangle(100, 100), List.of(SEAM)));
        assertThrows(IllegalArgumentException.class, () -> Allowance.plain(-1));
    }
}
