package secondbolt.shape;

import java.util.ArrayList;
import java.util.List;

/**
 * A smooth run of cubics through measured points.
 *
 * <p>Derived: the tangent at each inner point is that of the circle through it and its two
 * neighbours. By the theorem of the tangent and the chord (Euclid, Elements III.32) it leaves the
 * chord to the one neighbour by the angle of the triangle at the other, so the turn at the point is
 * shared out as the chords are, and the shorter chord is followed more closely. The ends carry on
 * the circle of the first and the last three points. The control arm for a tangent that leaves its
 * chord by an angle is 2/3 of the chord over 1 + cos(angle), which is the arm of the circular arc
 * with that chord; it is at most two thirds of the chord, so a curve cannot run past its points in
 * a loop.
 *
 * <p>Points in one line stay in one line: where the polygon hardly turns at the neighbour, the
 * chord to that neighbour takes the smaller part of the turn, and none when it does not turn there
 * at all (the idea of Akima, A new method of interpolation and smooth curve fitting based on local
 * procedures, Journal of the ACM 17, 1970; from memory). A point where the polygon turns from one
 * side to the other is no straight run and keeps the circle.
 */
final class SmoothCurve {
    private static final double DUST_MM = 1e-9;

    /** A neighbour that turns by less than this share of the own turn begins a straight run. */
    private static final double STRAIGHT_RUN_SHARE = 0.25;

    private final List<Point> points;
    private final double[] turns;

    /** By how much the tangent of each point leaves the chord before and after it. */
    private final double[] afterChord;

    private final double[] beforeChord;

    private SmoothCurve(List<Point> points) {
        this.points = points;
        int count = points.size();
        turns = new double[count];
        afterChord = new double[count];
        beforeChord = new double[count];
        for (int i = 1; i < count - 1; i++) {
            turns[i] = angle(points.get(i - 1), points.get(i), points.get(i), points.get(i + 1));
        }
        for (int i = 1; i < count - 1; i++) {
            share(i);
        }
        beforeChord[0] = afterChord[1];
        afterChord[count - 1] = beforeChord[count - 2];
    }

    static List<Stretch> through(List<Point> points) {
        if (points.size() < 2) {
            throw new IllegalArgumentException("a curve needs two points, was " + points.size());
        }
        for (int i = 1; i < points.size(); i++) {
            if (!(points.get(i).distanceMm(points.get(i - 1)) > DUST_MM)) {
                throw new IllegalArgumentException("two neighbours coincide: " + points.get(i));
            }
        }
        return new SmoothCurve(List.copyOf(points)).stretches();
    }

    /** From one arrow to another, from half a turn back to half a turn on. */
    private static double angle(Point a, Point b, Point c, Point d) {
        double x = b.xMm() - a.xMm();
        double y = b.yMm() - a.yMm();
        double u = d.xMm() - c.xMm();
        double v = d.yMm() - c.yMm();
        return StrictMath.atan2(x * v - y * u, x * u + y * v);
    }

    /** Shares the turn at a point between the chord before and the chord after it. */
    private void share(int i) {
        Point before = points.get(i - 1);
        Point at = points.get(i);
        Point after = points.get(i + 1);
        double first = Math.abs(angle(after, before, after, at));
        double second = Math.abs(angle(before, at, before, after));
        double firstBent = first * bent(i, -1);
        double secondBent = second * bent(i, 1);
        boolean corner = firstBent + secondBent <= 0;
        double part =
                corner
                        ? first / Math.max(first + second, Double.MIN_NORMAL)
                        : firstBent / (firstBent + secondBent);
        afterChord[i] = turns[i] * part;
        beforeChord[i] = turns[i] - afterChord[i];
    }

    /** From 0, a straight run on that side, to 1, a curve. */
    private double bent(int i, int side) {
        int next = i + side;
        if (next <= 0 || next >= points.size() - 1 || turns[i] == 0) {
            return 1;
        }
        int farther = next + side;
        boolean windsOver =
                farther > 0 && farther < points.size() - 1 && turns[farther] * turns[i] < 0;
        double least = STRAIGHT_RUN_SHARE * Math.abs(turns[i]);
        return windsOver ? 1 : Math.min(1, Math.abs(turns[next]) / least);
    }

    private List<Stretch> stretches() {
        List<Stretch> stretches = new ArrayList<>();
        for (int i = 0; i < points.size() - 1; i++) {
            Point from = points.get(i);
            Point to = points.get(i + 1);
            stretches.add(
                    Stretch.curve(
                            from,
                            arm(from, to, -beforeChord[i]),
                            arm(to, from, afterChord[i + 1]),
                            to));
        }
        return stretches;
    }

    /** The end of the arm at a point, turned so far from the chord to the other. */
    private static Point arm(Point at, Point other, double turn) {
        double size = 2.0 / 3 / (1 + Math.max(0, StrictMath.cos(turn)));
        double x = (other.xMm() - at.xMm()) * size;
        double y = (other.yMm() - at.yMm()) * size;
        double cos = StrictMath.cos(turn);
        double sin = StrictMath.sin(turn);
        return at.moved(x * cos - y * sin, x * sin + y * cos);
    }
}
