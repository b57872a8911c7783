package secondbolt.shape.cut;

import secondbolt.shape.EdgeLine;
import secondbolt.shape.Point;

/** Where two turned-up edges meet at a corner: the line on which both end. */
final class Mitre {
    private static final double DUST_MM = 1e-6;

    private Mitre() {}

    /**
     * From a corner to where its two landing lines cross; the line that halves it where both are
     * turned up as deep, or the crossing lies outside the piece.
     *
     * @param here the corner, at the end of the edge
     * @param there the same place on the neighbour, whose direction leads on as the edge's does
     * @param way 1 if the piece lies to the right, -1 if to the left
     * @param depthMm how deep the edge is turned up
     * @param otherMm how deep the neighbour is
     */
    static Run between(
            TurnedPart.Sample here,
            TurnedPart.Sample there,
            int way,
            double depthMm,
            double otherMm) {
        return run(EdgeLine.straight(here.at(), crossing(here, there, way, depthMm, otherMm)));
    }

    /**
     * Where the landing line of an edge meets the mitre.
     *
     * <p>Derived: what lies so deep inside both edges is {@code x a + y b} of their inward arrows
     * {@code a} and {@code b}, with {@code x + cy} and {@code cx + y} the two depths and {@code c =
     * a·b}.
     */
    static Point crossing(
            TurnedPart.Sample here,
            TurnedPart.Sample there,
            int way,
            double depthMm,
            double otherMm) {
        Point a = TurnedEdge.inward(here.direction(), way);
        Point b = TurnedEdge.inward(there.direction(), way);
        double c = a.xMm() * b.xMm() + a.yMm() * b.yMm();
        double x = depthMm - c * otherMm;
        double y = otherMm - c * depthMm;
        if (Math.abs(depthMm - otherMm) < DUST_MM || x <= 0 || y <= 0) {
            return halfway(here.at(), a, b, depthMm);
        }
        double size = 1 - c * c;
        return here.at()
                .moved((x * a.xMm() + y * b.xMm()) / size, (x * a.yMm() + y * b.yMm()) / size);
    }

    /** The line that halves a corner, into the piece. */
    static Run halving(TurnedPart.Sample here, TurnedPart.Sample there, int way, double depthMm) {
        Point a = TurnedEdge.inward(here.direction(), way);
        Point b = TurnedEdge.inward(there.direction(), way);
        return run(EdgeLine.straight(here.at(), halfway(here.at(), a, b, depthMm)));
    }

    /** So deep inside an edge on the line that halves its corner. */
    private static Point halfway(Point corner, Point a, Point b, double depthMm) {
        Point sum = new Point(a.xMm() + b.xMm(), a.yMm() + b.yMm());
        double size = sum.distanceMm(Point.ORIGIN);
        Point arrow = size > 1e-6 ? new Point(sum.xMm() / size, sum.yMm() / size) : a;
        double inward = Math.max(1e-3, arrow.xMm() * a.xMm() + arrow.yMm() * a.yMm());
        return corner.moved(arrow.xMm() * depthMm / inward, arrow.yMm() * depthMm / inward);
    }

    /** A line from the corner on. */
    static Run run(EdgeLine line) {
        return new Run(
                line.flattened(CutEdge.TOLERANCE_MM),
                line.directionAt(0),
                line.directionAt(line.lengthMm()));
    }
}
