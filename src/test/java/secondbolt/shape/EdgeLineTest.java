package secondbolt.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Edges, held against java.awt.geom and the formulas of the circle. */
class EdgeLineTest {
    private static final List<Point> ARMHOLE =
            List.of(
                    new Point(190, 40),
                    new Point(185, 130),
                    new Point(215, 200),
                    new Point(290, 240));

    private static Path2D awt(EdgeLine edge) {
        Path2D path = new Path2D.Double();
        path.moveTo(edge.start().xMm(), edge.start().yMm());
        for (Path.Step step : edge.steps()) {
            step.accept(new ToAwt(path));
        }
        return path;
    }

    private record ToAwt(Path2D path) implements Path.Visitor<Integer> {
        @Override
        public Integer move(Path.Move move) {
            throw new AssertionError();
        }

        @Override
        public Integer straight(Path.Straight straight) {
            path.lineTo(straight.to().xMm(), straight.to().yMm());
            return 0;
        }

        @Override
        public Integer curve(Path.Curve c) {
            path.curveTo(
                    c.leave().xMm(),
                    c.leave().yMm(),
                    c.arrive().xMm(),
                    c.arrive().yMm(),
                    c.to().xMm(),
                    c.to().yMm());
            return 0;
        }

        @Override
        public Integer close(Path.Close close) {
            throw new AssertionError();
        }
    }

    private static double awtLengthMm(EdgeLine edge) {
        PathIterator flat = new FlatteningPathIterator(awt(edge).getPathIterator(null), 1e-7, 18);
        double[] c = new double[6];
        double length = 0;
        Point last = edge.start();
        for (; !flat.isDone(); flat.next()) {
            flat.currentSegment(c);
            Point next = new Point(c[0], c[1]);
            length += last.distanceMm(next);
            last = next;
        }
        return length;
    }

    private static EdgeLine randomCurve(SplittableRandom random) {
        List<Point> p = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            p.add(new Point(random.nextDouble(600), random.nextDouble(900)));
        }
        return new EdgeLine(p.get(0), List.of(new Path.Curve(p.get(1), p.get(2), p.get(3))));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void measuresCurvesAsAwtDoes(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 10; i++) {
            EdgeLine edge = randomCurve(random);
            assertEquals(awtLengthMm(edge), edge.lengthMm(), 0.001);
            Rectangle2D box = awt(edge).getBounds2D();
            double slack = 1e-9;
            assertTrue(box.getMinX() <= edge.box().leftMm() + slack);
            double left =
                    edge.flattened(0.001).stream().mapToDouble(Point::xMm).min().orElseThrow();
            double low = edge.flattened(0.001).stream().mapToDouble(Point::yMm).max().orElseThrow();
            assertEquals(left, edge.box().leftMm(), 0.001);
            assertEquals(low, edge.box().bottomMm(), 0.001);
        }
    }

    /** A cusp: both arms cross, and the curve turns back on itself. */
    @Test
    void measuresACusp() {
        EdgeLine cusp =
                new EdgeLine(
                        Point.ORIGIN,
                        List.of(
                                new Path.Curve(
                                        new Point(100, 100),
                                        new Point(0, 100),
                                        new Point(100, 0))));
        assertEquals(awtLengthMm(cusp), cusp.lengthMm(), 0.001);
    }

    /** Length of an arc, r times the angle; distance of its points from the centre, r. */
    @ParameterizedTest(name = "radius {0} mm, {1} to {2} degrees")
    @CsvSource({"124, 0, 180", "770, 90, -180", "40, 10, 360", "1000, -30, 7"})
    void followsACircle(double radiusMm, double fromDegrees, double sweepDegrees) {
        Point centre = new Point(12, -7);
        double sweep = Math.toRadians(sweepDegrees);
        EdgeLine arc = EdgeLine.arc(centre, radiusMm, Math.toRadians(fromDegrees), sweep);
        assertEquals(radiusMm * Math.abs(sweep), arc.lengthMm(), 1e-4);
        assertEquals(Math.ceil(Math.abs(sweepDegrees) / 22.5), arc.steps().size());
        for (Point point : arc.flattened(0.01)) {
            assertEquals(radiusMm, centre.distanceMm(point), radiusMm * 1e-7);
        }
        double half = Math.toRadians(fromDegrees + sweepDegrees / 2);
        Point middle = centre.moved(radiusMm * Math.cos(half), radiusMm * Math.sin(half));
        assertEquals(0, middle.distanceMm(arc.at(arc.lengthMm() / 2)), 1e-4);
    }

    @Test
    void runsClockwiseOnPaperAsAnglesGrow() {
        EdgeLine quarter = EdgeLine.arc(Point.ORIGIN, 10, 0, Math.PI / 2);
        assertEquals(0, new Point(10, 0).distanceMm(quarter.start()), 1e-12);
        assertEquals(0, new Point(0, 10).distanceMm(quarter.end()), 1e-12);
        assertEquals(0, new Point(0, 1).distanceMm(quarter.directionAt(0)), 1e-12);
        assertEquals(0, new Point(-1, 0).distanceMm(quarter.directionAt(99)), 1e-12);
    }

    /** Points read off a circle at uneven distances give the circle's length, r times the angle. */
    @ParameterizedTest(name = "every few of {0} degrees")
    @CsvSource({"12, 0.01", "20, 0.05", "30, 0.1"})
    void findsTheCircleThroughUnevenPoints(double stepDegrees, double toleranceMm) {
        List<Point> points = new ArrayList<>();
        double[] uneven = {0, 1, 1.4, 2.4, 2.8, 3.8, 4.8, 5.2};
        for (double place : uneven) {
            double turn = Math.toRadians(place * stepDegrees);
            points.add(new Point(200 * Math.cos(turn), 200 * Math.sin(turn)));
        }
        EdgeLine curve = EdgeLine.through(points);
        assertEquals(points, curve.knots());
        assertEquals(200 * Math.toRadians(5.2 * stepDegrees), curve.lengthMm(), toleranceMm);
        for (Point point : curve.flattened(0.01)) {
            assertEquals(200, point.distanceMm(Point.ORIGIN), 0.12);
        }
    }

    /** Quarter of an ellipse read every few centimetres; its length by summing small chords. */
    @Test
    void findsTheLengthOfAnArmholeLikeEllipse() {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= 6; i++) {
            double turn = Math.PI / 2 * i / 6;
            points.add(new Point(110 * Math.cos(turn), 200 * Math.sin(turn)));
        }
        double length = 0;
        Point last = points.get(0);
        for (int i = 1; i <= 100_000; i++) {
            double turn = Math.PI / 2 * i / 100_000;
            Point next = new Point(110 * Math.cos(turn), 200 * Math.sin(turn));
            length += last.distanceMm(next);
            last = next;
        }
        assertEquals(length, EdgeLine.through(points).lengthMm(), 0.1);
    }

    @Test
    void keepsToTheLineNextToAStraightRun() {
        EdgeLine edge =
                EdgeLine.through(
                        List.of(
                                new Point(0, 0),
                                new Point(0, 100),
                                new Point(0, 200),
                                new Point(20, 260),
                                new Point(80, 300)));
        assertTrue(edge.part(0, 200).isStraight());
        assertFalse(edge.isStraight());
    }

    @Test
    void neverTurnsBackOnACurveThatBendsOneWay() {
        EdgeLine edge = EdgeLine.through(ARMHOLE);
        List<Point> corners = edge.flattened(0.001);
        for (int i = 2; i < corners.size(); i++) {
            Point a = corners.get(i - 2);
            Point b = corners.get(i - 1);
            Point c = corners.get(i);
            double cross =
                    (b.xMm() - a.xMm()) * (c.yMm() - b.yMm())
                            - (b.yMm() - a.yMm()) * (c.xMm() - b.xMm());
            assertTrue(cross <= 1e-9, "turns back at " + b);
        }
    }

    @Test
    void joinsItsCubicsWithoutACorner() {
        EdgeLine edge = EdgeLine.through(ARMHOLE);
        double along = 0;
        for (Path.Step step : edge.steps().subList(0, 2)) {
            along = edge.alongMm(((Path.Curve) step).to());
            Point before = edge.directionAt(along - 1e-6);
            assertEquals(0, before.distanceMm(edge.directionAt(along + 1e-6)), 1e-4);
        }
    }

    @Test
    void staysStraightThroughPointsInALine() {
        EdgeLine edge =
                EdgeLine.through(List.of(new Point(0, 0), new Point(30, 40), new Point(60, 80)));
        assertTrue(edge.isStraight());
        assertEquals(100, edge.lengthMm(), 1e-9);
        assertEquals(
                EdgeLine.straight(Point.ORIGIN, new Point(3, 4)),
                EdgeLine.through(List.of(Point.ORIGIN, new Point(3, 4))));
        assertThrows(
                IllegalArgumentException.class,
                () -> EdgeLine.through(List.of(Point.ORIGIN, Point.ORIGIN, new Point(1, 1))));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {11, 12, 13, 14})
    void takesPartsThatAddUp(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        EdgeLine curve = randomCurve(random);
        List<Path.Step> steps = new ArrayList<>(curve.steps());
        steps.add(new Path.Straight(curve.end().moved(50, 20)));
        EdgeLine edge = new EdgeLine(curve.start(), steps);
        double whole = edge.lengthMm();
        double cut = random.nextDouble(whole);
        EdgeLine head = edge.part(0, cut);
        EdgeLine tail = edge.part(cut, whole);
        assertEquals(cut, head.lengthMm(), 1e-4);
        assertEquals(whole, head.lengthMm() + tail.lengthMm(), 1e-6);
        assertEquals(0, head.end().distanceMm(tail.start()), 1e-9);
        assertEquals(edge, edge.part(-1, whole + 1));
        for (Point point : head.flattened(0.5)) {
            assertEquals(0, edge.distanceMm(point), 1e-5);
        }
        assertEquals(cut, edge.alongMm(edge.at(cut)), 1e-3);
        assertEquals(edge, edge.reversed().reversed());
        assertEquals(0, edge.at(cut).distanceMm(edge.reversed().at(whole - cut)), 1e-4);
        assertThrows(IllegalArgumentException.class, () -> edge.part(cut, cut));
    }

    @Test
    void keepsItsArmsWhenShiftedAndScalesThemWithTheChord() {
        EdgeLine edge = EdgeLine.through(ARMHOLE);
        EdgeLine shifted = edge.moved(p -> p.moved(16, 32));
        assertEquals(edge.lengthMm(), shifted.lengthMm(), 1e-9);
        for (int i = 0; i <= 10; i++) {
            double along = edge.lengthMm() * i / 10;
            assertEquals(0, edge.at(along).moved(16, 32).distanceMm(shifted.at(along)), 1e-9);
        }
        EdgeLine doubled = edge.moved(p -> new Point(2 * p.xMm(), 2 * p.yMm()));
        assertEquals(2 * edge.lengthMm(), doubled.lengthMm(), 1e-6);
        EdgeLine line = EdgeLine.straight(Point.ORIGIN, new Point(0, 100));
        assertTrue(line.moved(p -> p.moved(p.yMm() / 10, 0)).isStraight());
    }

    @Test
    void keepsItsLengthTurnedAndMirrored() {
        EdgeLine edge = EdgeLine.through(ARMHOLE);
        EdgeLine turned = edge.turned(Math.PI / 2, new Point(190, 40));
        assertEquals(edge.lengthMm(), turned.lengthMm(), 1e-9);
        assertEquals(0, turned.at(0).distanceMm(edge.start()), 1e-9);
        assertEquals(190 - 200, turned.end().xMm(), 1e-9);
        EdgeLine mirrored = edge.mirrored(100);
        assertEquals(-90, mirrored.end().xMm(), 1e-9);
        assertEquals(edge, mirrored.mirrored(100));
    }

    @Test
    void refusesStepsThatLeaveOff() {
        assertThrows(IllegalArgumentException.class, () -> new EdgeLine(Point.ORIGIN, List.of()));
        assertThrows(
                IllegalArgumentException.class,
                () -> new EdgeLine(Point.ORIGIN, List.of(new Path.Close())));
    }
}
