package secondbolt.shape.cut;

import java.util.ArrayList;
import java.util.List;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Point;
import secondbolt.shape.Stretch;

/** Lines beside an edge, everywhere at the same distance. */
public final class Parallel {
    private static final double TOLERANCE_MM = 0.01;
    private static final int LEAST_PARTS = 16;

    private Parallel() {}

    /**
     * Points of the line so far to the left of an edge, as it leads, so close together that
     * straight lines between them will do for drawing.
     *
     * @param leftMm below zero to the right
     */
    public static List<Point> points(EdgeLine edge, double leftMm) {
        List<Point> points = new ArrayList<>();
        for (Stretch stretch : edge.stretches()) {
            int parts =
                    stretch.curved() ? Math.max(LEAST_PARTS, stretch.partsWithin(TOLERANCE_MM)) : 1;
            for (int i = 0; i <= parts; i++) {
                double share = (double) i / parts;
                Point direction = stretch.directionAt(share);
                add(
                        points,
                        stretch.at(share)
                                .moved(direction.yMm() * leftMm, -direction.xMm() * leftMm));
            }
        }
        return List.copyOf(points);
    }

    private static void add(List<Point> points, Point point) {
        if (points.isEmpty() || points.get(points.size() - 1).distanceMm(point) > 1e-6) {
            points.add(point);
        }
    }
}
