package secondbolt.tools;

import java.util.List;
import secondbolt.shape.Point;

/**
 * How a printed line runs near its end: the parabola that lies nearest to what was met of it, seen
 * from where the end ought to be.
 *
 * @param from where the end ought to be, and which way the line leads there
 * @param aMm how far the parabola lies to the left at the end
 * @param b its slope there
 * @param c its curve, per millimetre
 */
public record Bend(Course.Station from, double aMm, double b, double c) {
    /** So many points it takes at least. */
    static final int POINTS = 3;

    private static final int STEPS = 6;

    /**
     * Through three points or more.
     *
     * @throws IllegalArgumentException if there are fewer
     */
    static Bend through(List<Point> points, Course.Station from) {
        if (points.size() < POINTS) {
            throw new IllegalArgumentException("points must be three or more, were " + points);
        }
        double[] powers = new double[5];
        double[] right = new double[3];
        for (Point point : points) {
            double power = 1;
            for (int i = 0; i < powers.length; i++) {
                powers[i] += power;
                if (i < right.length) {
                    right[i] += power * left(from, point);
                }
                power *= on(from, point);
            }
        }
        double[] first = {powers[0], powers[1], powers[2]};
        double[] second = {powers[1], powers[2], powers[3]};
        double[] third = {powers[2], powers[3], powers[4]};
        double whole = determinant(first, second, third);
        return new Bend(
                from,
                determinant(right, second, third) / whole,
                determinant(first, right, third) / whole,
                determinant(first, second, right) / whole);
    }

    private static double determinant(double[] a, double[] b, double[] c) {
        return a[0] * (b[1] * c[2] - b[2] * c[1])
                - b[0] * (a[1] * c[2] - a[2] * c[1])
                + c[0] * (a[1] * b[2] - a[2] * b[1]);
    }

    private static double on(Course.Station from, Point point) {
        return (point.xMm() - from.at().xMm()) * from.across()
                + (point.yMm() - from.at().yMm()) * from.along();
    }

    private static double left(Course.Station from, Point point) {
        return (point.xMm() - from.at().xMm()) * from.along()
                - (point.yMm() - from.at().yMm()) * from.across();
    }

    /** Where two lines meet, by Newton's way. */
    public Point meeting(Bend other) {
        Point at = from.at();
        for (int i = 0; i < STEPS; i++) {
            double[] mine = slope(at);
            double[] theirs = other.slope(at);
            double whole = mine[0] * theirs[1] - mine[1] * theirs[0];
            double off = off(at);
            double otherOff = other.off(at);
            at =
                    at.moved(
                            (otherOff * mine[1] - off * theirs[1]) / whole,
                            (off * theirs[0] - otherOff * mine[0]) / whole);
        }
        return at;
    }

    /** The point of this line beside the place where its end ought to be. */
    public Point foot() {
        return from.leftMm(aMm);
    }

    private double off(Point at) {
        double on = on(from, at);
        return left(from, at) - aMm - b * on - c * on * on;
    }

    /** By how much {@link #off} grows with a millimetre across, and with one along. */
    private double[] slope(Point at) {
        double lean = b + 2 * c * on(from, at);
        return new double[] {
            from.along() - lean * from.across(), -from.across() - lean * from.along()
        };
    }
}
