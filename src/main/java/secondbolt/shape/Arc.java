package secondbolt.shape;

import java.util.ArrayList;
import java.util.List;

/** Arcs of circles as cubics. */
final class Arc {
    private static final double WIDEST_RADIANS = Math.PI / 8;

    private Arc() {}

    static List<Stretch> of(Point centre, double radiusMm, double from, double sweep) {
        if (!(radiusMm > 0)) {
            throw new IllegalArgumentException("radiusMm must be above 0, was " + radiusMm);
        }
        if (sweep == 0 || !Double.isFinite(sweep)) {
            throw new IllegalArgumentException("sweepRadians must not be 0, was " + sweep);
        }
        int parts = (int) Math.max(1, Math.ceil(Math.abs(sweep) / WIDEST_RADIANS - 1e-9));
        double arm = 4.0 / 3.0 * StrictMath.tan(sweep / parts / 4);
        List<Stretch> stretches = new ArrayList<>();
        for (int i = 0; i < parts; i++) {
            stretches.add(
                    cubic(
                            centre,
                            ray(radiusMm, from + sweep * i / parts),
                            ray(radiusMm, from + sweep * (i + 1) / parts),
                            arm));
        }
        return stretches;
    }

    /** From the centre to a point of the circle. */
    private static Point ray(double radiusMm, double radians) {
        return new Point(radiusMm * StrictMath.cos(radians), radiusMm * StrictMath.sin(radians));
    }

    /** A quarter turn of a ray points along the circle. */
    private static Stretch cubic(Point centre, Point first, Point last, double arm) {
        Point from = centre.moved(first.xMm(), first.yMm());
        Point to = centre.moved(last.xMm(), last.yMm());
        return Stretch.curve(
                from,
                from.moved(-first.yMm() * arm, first.xMm() * arm),
                to.moved(last.yMm() * arm, -last.xMm() * arm),
                to);
    }
}
