package secondbolt.pattern.piece;

import java.util.List;
import java.util.Optional;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Point;

/**
 * How a half piece lies to its fold.
 *
 * @param drawn the piece
 * @param fold its edge on the fold
 */
record FoldSide(PieceShape.Drawn drawn, EdgeLine fold) {
    /** About as closely as a line is traced. */
    private static final double CLOSELY_MM = 0.5;

    /** Whether the fold is straight, as cloth is folded. */
    boolean isStraight() {
        return fold.flattened(0.05).stream().allMatch(p -> Math.abs(besideMm(p)) <= CLOSELY_MM);
    }

    /** The point that lies farthest past the fold, if any does. */
    Optional<Point> past() {
        List<Point> points = ShapeKeys.points(drawn);
        Point farthest = points.get(0);
        Point other = points.get(0);
        for (Point point : points) {
            farthest = besideMm(point) > besideMm(farthest) ? point : farthest;
            other = besideMm(point) < besideMm(other) ? point : other;
        }
        boolean isMostly = besideMm(farthest) > -besideMm(other);
        Point past = isMostly ? other : farthest;
        return Math.abs(besideMm(past)) > CLOSELY_MM
                        && besideMm(past) * besideMm(isMostly ? farthest : other) < 0
                ? Optional.of(past)
                : Optional.empty();
    }

    /** How far beside the line from the fold's start to its end, to the one side or the other. */
    private double besideMm(Point point) {
        Point from = fold.start();
        Point to = fold.end();
        double x = to.xMm() - from.xMm();
        double y = to.yMm() - from.yMm();
        double across = (point.xMm() - from.xMm()) * y - (point.yMm() - from.yMm()) * x;
        return across / Math.max(Math.hypot(x, y), Double.MIN_NORMAL);
    }
}
