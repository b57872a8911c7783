package secondbolt.shape.cut;

import java.util.ArrayList;
import java.util.List;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Point;
import secondbolt.shape.Stretch;

/**
 * One smooth part of a sewing line with its allowance, and the two lines of it.
 *
 * @param allowance along it
 * @param sewn the sewing line, flattened
 * @param cut the line so far outside
 */
record CutEdge(Allowance allowance, Run sewn, Run cut) {
    /** How far straight lines may stray from the curve they stand for. */
    static final double TOLERANCE_MM = 0.02;

    /** An edge is parted where it turns by more than this; less is a slip of drawing. */
    private static final double CORNER_RADIANS = Math.toRadians(0.5);

    /**
     * The smooth parts of an edge.
     *
     * @param way 1 if the outline runs clockwise on paper, -1 if against it
     */
    static List<CutEdge> partsOf(EdgeLine edge, Allowance allowance, int way) {
        List<CutEdge> parts = new ArrayList<>();
        List<Stretch> smooth = new ArrayList<>();
        for (Stretch stretch : edge.stretches()) {
            if (stretch.lengthMm() <= 1e-9) {
                continue;
            }
            if (!smooth.isEmpty() && turns(smooth.get(smooth.size() - 1), stretch)) {
                parts.add(of(smooth, allowance, way));
                smooth = new ArrayList<>();
            }
            smooth.add(stretch);
        }
        if (!smooth.isEmpty()) {
            parts.add(of(smooth, allowance, way));
        }
        return parts;
    }

    private static boolean turns(Stretch before, Stretch after) {
        Point in = before.directionAt(1);
        Point out = after.directionAt(0);
        return in.distanceMm(out) > CORNER_RADIANS;
    }

    private static CutEdge of(List<Stretch> stretches, Allowance allowance, int way) {
        double out = way * allowance.widthMm();
        return new CutEdge(allowance, run(stretches, 0), run(stretches, out));
    }

    private static Run run(List<Stretch> stretches, double out) {
        List<Point> points = new ArrayList<>();
        for (Stretch stretch : stretches) {
            int parts = parts(stretch, out);
            for (int i = points.isEmpty() ? 0 : 1; i <= parts; i++) {
                points.add(beside(stretch, (double) i / parts, out));
            }
        }
        return new Run(
                points,
                stretches.get(0).directionAt(0),
                stretches.get(stretches.size() - 1).directionAt(1));
    }

    /** Doubled until the middle of every part lies near enough to its straight line. */
    private static int parts(Stretch stretch, double out) {
        int parts = stretch.partsWithin(TOLERANCE_MM / 2);
        while (stretch.curved() && parts < 4096 && strays(stretch, out, parts)) {
            parts *= 2;
        }
        return parts;
    }

    private static boolean strays(Stretch stretch, double out, int parts) {
        for (int i = 0; i < parts; i++) {
            Point from = beside(stretch, (double) i / parts, out);
            Point to = beside(stretch, (i + 1.0) / parts, out);
            Point middle = beside(stretch, (i + 0.5) / parts, out);
            if (Stretch.straight(from, to).nearest(middle).distanceMm() > TOLERANCE_MM / 2) {
                return true;
            }
        }
        return false;
    }

    private static Point beside(Stretch stretch, double share, double out) {
        Point direction = stretch.directionAt(share);
        return stretch.at(share).moved(direction.yMm() * out, -direction.xMm() * out);
    }

    /**
     * Whether its cutting line runs back, since it bends more sharply than its allowance is wide.
     */
    boolean isTurnedBack() {
        Point a = sewn.at(0);
        Point b = sewn.at(sewn.lengthMm());
        Point c = cut.at(0);
        Point d = cut.at(cut.lengthMm());
        return (b.xMm() - a.xMm()) * (d.xMm() - c.xMm()) + (b.yMm() - a.yMm()) * (d.yMm() - c.yMm())
                < 0;
    }

    CutEdge reversed() {
        return new CutEdge(allowance, sewn.reversed(), cut.reversed());
    }

    boolean is(Allowance.Kind kind) {
        return allowance.kind() == kind;
    }

    double widthMm() {
        return allowance.widthMm();
    }
}
