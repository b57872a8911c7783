package secondbolt.file.svg;

import java.util.ArrayList;
import java.util.List;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Path;
import secondbolt.shape.Point;

/**
 * An arc of an ellipse given by its ends.
 *
 * <p>Source: SVG 1.1 (Second Edition), appendix F.6.5 and F.6.6.
 */
final class EllipseArc {
    private EllipseArc() {}

    /** A radius so many times the distance of the ends is a straight line to a hair. */
    private static final double FLAT = 1e7;

    /**
     * Its steps.
     *
     * @param across the one radius, above zero
     * @param along the other one, above zero
     * @return nothing if the arc cannot be told in millimetres
     */
    static List<Path.Step> of(
            Point from,
            Point to,
            double across,
            double along,
            double degrees,
            boolean large,
            boolean sweep) {
        // In the frame of the ellipse both ends lie on a unit circle, opposite about their middle.
        Affine turn = Affine.turned(degrees);
        Point half =
                Affine.turned(-degrees)
                        .of(new Point((from.xMm() - to.xMm()) / 2, (from.yMm() - to.yMm()) / 2));
        double chord = from.distanceMm(to);
        if (!large && Math.min(across, along) > FLAT * chord) {
            return List.of(new Path.Straight(to));
        }
        double size = Math.hypot(half.xMm() / across, half.yMm() / along);
        // Radii too small to reach are enlarged (F.6.6).
        double grown = Math.max(1, size);
        double rx = across * grown;
        double ry = along * grown;
        double ux = half.xMm() / rx;
        double uy = half.yMm() / ry;
        double square = ux * ux + uy * uy;
        double root = Math.sqrt(Math.max(0, (1 - square) / square));
        double way = large == sweep ? -root : root;
        double cx = way * uy;
        double cy = -way * ux;
        double begin = StrictMath.atan2(uy - cy, ux - cx);
        double end = StrictMath.atan2(-uy - cy, -ux - cx);
        double angle = end - begin;
        if (sweep && angle < 0) {
            angle += 2 * Math.PI;
        } else if (!sweep && angle > 0) {
            angle -= 2 * Math.PI;
        }
        if (!Double.isFinite(angle) || angle == 0 || Math.max(rx, ry) > Bounds.LARGEST_NUMBER) {
            return List.of();
        }
        Affine back =
                Affine.moved((from.xMm() + to.xMm()) / 2, (from.yMm() + to.yMm()) / 2)
                        .times(turn)
                        .times(new Affine(rx, 0, 0, ry, 0, 0));
        EdgeLine circle = EdgeLine.arc(new Point(cx, cy), 1, begin, angle);
        return endingAt(back.of(circle).steps(), to);
    }

    /** The last step ends where the drawing says, not a last bit beside it. */
    private static List<Path.Step> endingAt(List<Path.Step> steps, Point to) {
        List<Path.Step> exact = new ArrayList<>(steps);
        if (exact.get(exact.size() - 1) instanceof Path.Curve last) {
            exact.set(exact.size() - 1, new Path.Curve(last.leave(), last.arrive(), to));
        }
        return exact;
    }
}
