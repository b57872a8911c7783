package secondbolt.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * One step of an edge with its beginning: a cubic, of which a straight line is the case with its
 * control points a third and two thirds along.
 *
 * @param from where it begins
 * @param leave the control point of the beginning
 * @param arrive the control point of the end
 * @param to where it ends
 * @param curved whether it is written as a curve
 */
public record Stretch(Point from, Point leave, Point arrive, Point to, boolean curved) {
    /** Two control points nearer than this show no direction. */
    private static final double NO_LENGTH_MM = 1e-9;

    /** A straight stretch. */
    public static Stretch straight(Point from, Point to) {
        return new Stretch(from, mix(from, to, 1.0 / 3), mix(from, to, 2.0 / 3), to, false);
    }

    /** A curve between two points, with the control point of each. */
    public static Stretch curve(Point from, Point leave, Point arrive, Point to) {
        return new Stretch(from, leave, arrive, to, true);
    }

    /** The steps of an edge, each with its beginning. */
    static List<Stretch> along(Point start, List<Path.Step> steps) {
        List<Stretch> stretches = new ArrayList<>();
        Point from = start;
        for (Path.Step step : steps) {
            Stretch stretch = step.accept(new Begun(from));
            stretches.add(stretch);
            from = stretch.to();
        }
        return stretches;
    }

    /** Gives a step its beginning. */
    private record Begun(Point from) implements Path.Visitor<Stretch> {
        @Override
        public Stretch move(Path.Move move) {
            throw new IllegalArgumentException("an edge may not leave off, was " + move);
        }

        @Override
        public Stretch straight(Path.Straight straight) {
            return Stretch.straight(from, straight.to());
        }

        @Override
        public Stretch curve(Path.Curve curve) {
            return Stretch.curve(from, curve.leave(), curve.arrive(), curve.to());
        }

        @Override
        public Stretch close(Path.Close close) {
            throw new IllegalArgumentException("an edge may not close");
        }
    }

    Path.Step step() {
        return curved ? new Path.Curve(leave, arrive, to) : new Path.Straight(to);
    }

    List<Point> controls() {
        return List.of(from, leave, arrive, to);
    }

    /** The point that lies such a share of the way from one to another, 0 to 1. */
    public static Point mix(Point a, Point b, double share) {
        return new Point(
                a.xMm() + (b.xMm() - a.xMm()) * share, a.yMm() + (b.yMm() - a.yMm()) * share);
    }

    /** The point at a share of the cubic's parameter, 0 to 1. */
    public Point at(double share) {
        return share <= 0 ? from : share >= 1 ? to : before(share).to();
    }

    /** How the point moves as the share grows, in millimetres for the whole. */
    private Point speedAt(double t) {
        double s = 1 - t;
        double a = 3 * s * s;
        double b = 6 * s * t;
        double c = 3 * t * t;
        return new Point(
                a * (leave.xMm() - from.xMm())
                        + b * (arrive.xMm() - leave.xMm())
                        + c * (to.xMm() - arrive.xMm()),
                a * (leave.yMm() - from.yMm())
                        + b * (arrive.yMm() - leave.yMm())
                        + c * (to.yMm() - arrive.yMm()));
    }

    /**
     * Where it leads at a share, as an arrow of length one; right where a control arm is missing.
     */
    public Point directionAt(double share) {
        if (share <= 0) {
            return arrow(from, List.of(leave, arrive, to), 1);
        }
        if (share >= 1) {
            return arrow(to, List.of(arrive, leave, from), -1);
        }
        Point speed = speedAt(share);
        double size = Math.hypot(speed.xMm(), speed.yMm());
        return size > NO_LENGTH_MM
                ? new Point(speed.xMm() / size, speed.yMm() / size)
                : after(share).directionAt(0);
    }

    private static Point arrow(Point origin, List<Point> towards, int way) {
        for (Point point : towards) {
            double size = origin.distanceMm(point);
            if (size > NO_LENGTH_MM) {
                return new Point(
                        way * (point.xMm() - origin.xMm()) / size,
                        way * (point.yMm() - origin.yMm()) / size);
            }
        }
        return new Point(1, 0);
    }

    /** Its length, within a millionth of a millimetre unless it has a cusp. */
    public double lengthMm() {
        return curved
                ? GaussLegendre.integral(t -> speedAt(t).distanceMm(Point.ORIGIN), 0, 1, 1e-7)
                : from.distanceMm(to);
    }

    /** The share at which so much of its length lies behind; a halving search. */
    double shareAt(double alongMm) {
        if (!curved) {
            return Math.min(1, Math.max(0, alongMm / lengthMm()));
        }
        double low = 0;
        double high = 1;
        double share = Math.min(1, Math.max(0, alongMm / lengthMm()));
        for (int i = 0; i < 60 && high - low > 1e-13; i++) {
            double over = before(share).lengthMm() - alongMm;
            if (over > 0) {
                high = share;
            } else {
                low = share;
            }
            // Newton's step, if it stays between the bounds; else the middle.
            Point speed = speedAt(share);
            double next = share - over / Math.hypot(speed.xMm(), speed.yMm());
            if (Math.abs(next - share) < 1e-13) {
                return share;
            }
            share = next > low && next < high ? next : (low + high) / 2;
        }
        return share;
    }

    /** The part up to a share; de Casteljau's division, which changes nothing of the line. */
    public Stretch before(double t) {
        Point a = mix(from, leave, t);
        Point b = mix(leave, arrive, t);
        Point c = mix(arrive, to, t);
        Point ab = mix(a, b, t);
        return new Stretch(from, a, ab, mix(ab, mix(b, c, t), t), curved);
    }

    /** The part from a share on. */
    Stretch after(double t) {
        return reversed().before(1 - t).reversed();
    }

    /** The part between two shares, the first below the second. */
    Stretch between(double first, double second) {
        Stretch head = second >= 1 ? this : before(second);
        return first <= 0 ? head : head.after(first / second);
    }

    /** The same between other ends: arms keep their direction and are scaled as the chord is. */
    Stretch between(Point newFrom, Point newTo) {
        if (!curved) {
            return straight(newFrom, newTo);
        }
        double chord = from.distanceMm(to);
        boolean shift =
                newTo.xMm() - newFrom.xMm() == to.xMm() - from.xMm()
                        && newTo.yMm() - newFrom.yMm() == to.yMm() - from.yMm();
        double scale = shift || chord < NO_LENGTH_MM ? 1 : newFrom.distanceMm(newTo) / chord;
        return curve(
                newFrom, arm(newFrom, from, leave, scale), arm(newTo, to, arrive, scale), newTo);
    }

    private static Point arm(Point at, Point oldAt, Point control, double scale) {
        return at.moved(
                (control.xMm() - oldAt.xMm()) * scale, (control.yMm() - oldAt.yMm()) * scale);
    }

    Stretch reversed() {
        return new Stretch(to, arrive, leave, from, curved);
    }

    Stretch mapped(UnaryOperator<Point> move) {
        return new Stretch(
                move.apply(from), move.apply(leave), move.apply(arrive), move.apply(to), curved);
    }

    /**
     * The place of a stretch nearest to a point.
     *
     * @param share of the parameter
     * @param distanceMm from there to the point
     */
    public record Nearest(double share, double distanceMm) {}

    /** Where it comes nearest to a point. */
    public Nearest nearest(Point point) {
        int samples = curved ? 24 : 1;
        int best = 0;
        for (int i = 0; i <= samples; i++) {
            if (at((double) i / samples).distanceMm(point)
                    < at((double) best / samples).distanceMm(point)) {
                best = i;
            }
        }
        double low = Math.max(0, (best - 1.0) / samples);
        double high = Math.min(1, (best + 1.0) / samples);
        return curved ? refined(point, low, high) : foot(point);
    }

    private Nearest foot(Point point) {
        double x = to.xMm() - from.xMm();
        double y = to.yMm() - from.yMm();
        double square = x * x + y * y;
        double share = (point.xMm() - from.xMm()) * x + (point.yMm() - from.yMm()) * y;
        double clamped = square > 0 ? Math.min(1, Math.max(0, share / square)) : 0;
        return new Nearest(clamped, mix(from, to, clamped).distanceMm(point));
    }

    /** Narrows down by thirds; the distance has one lowest place between so near bounds. */
    private Nearest refined(Point point, double low, double high) {
        double from = low;
        double to = high;
        while (to - from > 1e-10) {
            double first = from + (to - from) / 3;
            double second = to - (to - from) / 3;
            if (at(first).distanceMm(point) <= at(second).distanceMm(point)) {
                to = second;
            } else {
                from = first;
            }
        }
        // The ends of the bounds themselves, so that a knot is met exactly.
        Nearest best = new Nearest((from + to) / 2, at((from + to) / 2).distanceMm(point));
        for (double end : new double[] {low, high}) {
            double distance = at(end).distanceMm(point);
            if (distance <= best.distanceMm()) {
                best = new Nearest(end, distance);
            }
        }
        return best;
    }

    /**
     * How many equal shares keep the straight lines between them within a tolerance.
     *
     * <p>Source: Wang's bound for Bézier curves, as in Farin, Curves and Surfaces for CAGD (from
     * memory): n² ≥ 3·2/8 of the largest second difference of the control points over the
     * tolerance.
     */
    public int partsWithin(double toleranceMm) {
        if (!curved) {
            return 1;
        }
        double bend =
                Math.max(
                        secondDifference(from, leave, arrive), secondDifference(leave, arrive, to));
        return (int) Math.max(1, Math.ceil(Math.sqrt(0.75 * bend / toleranceMm)));
    }

    private static double secondDifference(Point a, Point b, Point c) {
        return Math.hypot(a.xMm() - 2 * b.xMm() + c.xMm(), a.yMm() - 2 * b.yMm() + c.yMm());
    }

    /** Its ends, and where it runs upright or level. */
    List<Point> extremes() {
        List<Point> points = new ArrayList<>(List.of(from, to));
        for (double share : turns(from.xMm(), leave.xMm(), arrive.xMm(), to.xMm())) {
            points.add(at(share));
        }
        for (double share : turns(from.yMm(), leave.yMm(), arrive.yMm(), to.yMm())) {
            points.add(at(share));
        }
        return points;
    }

    /** Where one coordinate of the cubic stands still, if between its ends. */
    private static List<Double> turns(double p0, double p1, double p2, double p3) {
        double a = p3 - 3 * p2 + 3 * p1 - p0;
        double b = 2 * (p2 - 2 * p1 + p0);
        double c = p1 - p0;
        List<Double> shares = new ArrayList<>();
        double root = Math.sqrt(Math.max(0, b * b - 4 * a * c));
        // This form of the two roots divides by the larger number, and so bears a or c of zero.
        double q = -(b + Math.copySign(root, b)) / 2;
        for (double share : new double[] {q / a, c / q}) {
            if (share > 0 && share < 1) {
                shares.add(share);
            }
        }
        return shares;
    }
}
