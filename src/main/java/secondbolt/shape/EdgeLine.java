package secondbolt.shape;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * One edge of a piece: straight and curved steps from a start, in millimetres. It never changes.
 *
 * @param start where it begins
 * @param steps in order, at least one, each straight or curved
 */
public record EdgeLine(Point start, List<Path.Step> steps) {
    /** An edge that strays no farther than this from the line between its ends is straight. */
    private static final double STRAIGHT_TOLERANCE_MM = 0.01;

    /** Shorter bits come from the last bits of a double. */
    private static final double DUST_MM = 1e-9;

    /**
     * Copies the steps and checks them.
     *
     * @throws IllegalArgumentException if there is no step, or one is neither straight nor curved
     */
    public EdgeLine {
        steps = List.copyOf(steps);
        if (steps.isEmpty()) {
            throw new IllegalArgumentException("an edge needs one step or more");
        }
        Stretch.along(start, steps);
    }

    /** A straight edge. */
    public static EdgeLine straight(Point from, Point to) {
        return new EdgeLine(from, List.of(new Path.Straight(to)));
    }

    /**
     * A smooth curve through every point, one cubic from each to the next; through two points it is
     * straight.
     *
     * <p>Where three neighbouring points lie on a circle the curve follows that circle, so it never
     * turns back and forth between points that lie on a plain curve; next to a run of points in one
     * line it keeps to that line. The method stands with {@link SmoothCurve}.
     *
     * @param points two or more, no two neighbours at the same place
     * @throws IllegalArgumentException if there are fewer, or two neighbours coincide
     */
    public static EdgeLine through(List<Point> points) {
        return points.size() == 2 && points.get(0).distanceMm(points.get(1)) > DUST_MM
                ? straight(points.get(0), points.get(1))
                : of(SmoothCurve.through(points));
    }

    /**
     * An arc of a circle, as cubics of at most 22.5 degrees each.
     *
     * <p>Source: control arms of 4/3 tan(angle/4) of the radius put the middle of each cubic on the
     * circle (Goldapp, Approximation of circular arcs by cubic polynomials, Computer Aided
     * Geometric Design 8, 1991; from memory); at 22.5 degrees it strays by less than a
     * ten-millionth of the radius.
     *
     * @param centre of the circle
     * @param radiusMm above zero
     * @param fromRadians where it begins, from the right, turning right towards down
     * @param sweepRadians how far it turns, the same way; negative turns back; not zero
     * @throws IllegalArgumentException if the radius or the sweep is out of range
     */
    public static EdgeLine arc(
            Point centre, double radiusMm, double fromRadians, double sweepRadians) {
        return of(Arc.of(centre, radiusMm, fromRadians, sweepRadians));
    }

    private static EdgeLine of(List<Stretch> stretches) {
        return new EdgeLine(
                stretches.get(0).from(), stretches.stream().map(Stretch::step).toList());
    }

    /** Its steps in order, each with its beginning. */
    public List<Stretch> stretches() {
        return Stretch.along(start, steps);
    }

    /** Where it ends. */
    public Point end() {
        List<Stretch> all = stretches();
        return all.get(all.size() - 1).to();
    }

    /** The start and the end of each step. */
    public List<Point> knots() {
        List<Point> knots = new ArrayList<>();
        knots.add(start);
        stretches().forEach(stretch -> knots.add(stretch.to()));
        return List.copyOf(knots);
    }

    /**
     * Whether all its knots lie in one line, and no curve leaves it, within a hundredth of a
     * millimetre.
     */
    public boolean isStraight() {
        Stretch line = Stretch.straight(start, end());
        return stretches().stream()
                .flatMap(stretch -> stretch.controls().stream())
                .allMatch(point -> line.nearest(point).distanceMm() <= STRAIGHT_TOLERANCE_MM);
    }

    /** Its length, within a thousandth of a millimetre. */
    public double lengthMm() {
        return stretches().stream().mapToDouble(Stretch::lengthMm).sum();
    }

    /**
     * The point so far along it.
     *
     * @param alongMm from the start; before it counts as the start, past the end as the end
     */
    public Point at(double alongMm) {
        Spot spot = spot(alongMm);
        return spot.stretch().at(spot.share());
    }

    /**
     * Where it leads, so far along it, as an arrow of length one; at a knot, where the next step
     * leads.
     *
     * @param alongMm from the start; before it counts as the start, past the end as the end
     */
    public Point directionAt(double alongMm) {
        Spot spot = spot(alongMm);
        return spot.stretch().directionAt(spot.share());
    }

    /** A place on one step: which, and the share of it that lies behind. */
    private record Spot(Stretch stretch, double share) {}

    private Spot spot(double alongMm) {
        double left = Math.max(0, alongMm);
        List<Stretch> all = stretches();
        for (Stretch stretch : all) {
            double length = stretch.lengthMm();
            if (left < length - DUST_MM) {
                return new Spot(stretch, stretch.shareAt(left));
            }
            left = Math.max(0, left - length);
        }
        return new Spot(all.get(all.size() - 1), 1);
    }

    /**
     * How far along it the point of it lies that is nearest to another.
     *
     * @param near anywhere
     */
    public double alongMm(Point near) {
        double behind = 0;
        double best = Double.POSITIVE_INFINITY;
        double along = 0;
        for (Stretch stretch : stretches()) {
            Stretch.Nearest nearest = stretch.nearest(near);
            if (nearest.distanceMm() < best) {
                best = nearest.distanceMm();
                along = behind + stretch.before(nearest.share()).lengthMm();
            }
            behind += stretch.lengthMm();
        }
        return along;
    }

    /** How far it is from a point to the nearest point of the edge. */
    public double distanceMm(Point point) {
        return stretches().stream()
                .mapToDouble(stretch -> stretch.nearest(point).distanceMm())
                .min()
                .orElseThrow();
    }

    /**
     * The part between two places, cut out without any change of its line.
     *
     * @param fromMm along, from the start; before it counts as the start
     * @param toMm along, past {@code fromMm}; past the end counts as the end
     * @throws IllegalArgumentException if nothing lies between
     */
    public EdgeLine part(double fromMm, double toMm) {
        List<Stretch> kept = new ArrayList<>();
        double behind = 0;
        for (Stretch stretch : stretches()) {
            double length = stretch.lengthMm();
            double from = Math.max(0, fromMm - behind);
            double to = Math.min(length, toMm - behind);
            if (to - from > DUST_MM) {
                kept.add(stretch.between(share(stretch, from), share(stretch, to)));
            }
            behind += length;
        }
        if (kept.isEmpty()) {
            throw new IllegalArgumentException(
                    "nothing lies between " + fromMm + " and " + toMm + " of " + behind + " mm");
        }
        return of(kept);
    }

    /** Whole steps are kept to the last bit. */
    private static double share(Stretch stretch, double alongMm) {
        return alongMm <= DUST_MM
                ? 0
                : alongMm >= stretch.lengthMm() - DUST_MM ? 1 : stretch.shareAt(alongMm);
    }

    /** The same line from its end to its start. */
    public EdgeLine reversed() {
        List<Stretch> back = new ArrayList<>();
        stretches().forEach(stretch -> back.add(stretch.reversed()));
        Collections.reverse(back);
        return of(back);
    }

    /**
     * This with its knots put elsewhere. A straight step stays straight; the control arms of a
     * curve keep their direction and grow or shrink as the distance between its two knots does.
     * Where both knots move alike the curve stays as it is.
     *
     * @param move where each knot goes
     */
    public EdgeLine moved(UnaryOperator<Point> move) {
        List<Stretch> moved = new ArrayList<>();
        for (Stretch stretch : stretches()) {
            Point from = moved.isEmpty() ? move.apply(start) : moved.get(moved.size() - 1).to();
            moved.add(stretch.between(from, move.apply(stretch.to())));
        }
        return of(moved);
    }

    /**
     * This turned.
     *
     * @param radians from the right towards down
     * @param about the point that stays
     */
    public EdgeLine turned(double radians, Point about) {
        double cos = StrictMath.cos(radians);
        double sin = StrictMath.sin(radians);
        return mapped(
                point -> {
                    double x = point.xMm() - about.xMm();
                    double y = point.yMm() - about.yMm();
                    return about.moved(x * cos - y * sin, x * sin + y * cos);
                });
    }

    /**
     * This mirrored at an upright line.
     *
     * @param axisXMm where the line stands
     */
    public EdgeLine mirrored(double axisXMm) {
        return mapped(point -> new Point(2 * axisXMm - point.xMm(), point.yMm()));
    }

    /**
     * Knots and control points alike put elsewhere; right only for moves that keep lines straight.
     */
    private EdgeLine mapped(UnaryOperator<Point> move) {
        return of(stretches().stream().map(stretch -> stretch.mapped(move)).toList());
    }

    /**
     * The corners of straight lines that nowhere leave it by more than the tolerance; they lie on
     * it, and all its knots are among them.
     *
     * @param toleranceMm above zero
     * @throws IllegalArgumentException if the tolerance is not above zero
     */
    public List<Point> flattened(double toleranceMm) {
        if (!(toleranceMm > 0)) {
            throw new IllegalArgumentException("toleranceMm must be above 0, was " + toleranceMm);
        }
        List<Point> corners = new ArrayList<>();
        corners.add(start);
        for (Stretch stretch : stretches()) {
            int parts = stretch.partsWithin(toleranceMm);
            for (int i = 1; i < parts; i++) {
                corners.add(stretch.at((double) i / parts));
            }
            corners.add(stretch.to());
        }
        return List.copyOf(corners);
    }

    /** The smallest box round it. */
    public Box box() {
        Box box = Box.between(start, start);
        for (Stretch stretch : stretches()) {
            for (Point point : stretch.extremes()) {
                box = box.with(Box.between(point, point));
            }
        }
        return box;
    }

    /** Its line, for drawing. */
    public Path path() {
        List<Path.Step> all = new ArrayList<>();
        all.add(new Path.Move(start));
        all.addAll(steps);
        return new Path(all);
    }
}
