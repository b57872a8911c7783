package secondbolt.file.svg;

import java.util.stream.Stream;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Point;

/**
 * What a drawing may hold: as large as a piece that is written, and of a bounded number of steps.
 */
final class Bounds {
    /** An outline that is written goes as far. */
    static final double FARTHEST_MM = 5000;

    /** Of numbers, in whatever unit: beyond it no drawing has a millimetre left. */
    static final double LARGEST_NUMBER = 1e9;

    static final int LONGEST_NUMBER = 60;
    static final int LONGEST_NAME = 60;
    static final int MOST_STEPS = 5000;
    static final int MOST_EDGES = 200;
    static final int DEEPEST = 60;

    /** Less is lost where two ends are made to meet. */
    private static final double SHORTEST_MM = 1;

    private Bounds() {}

    /**
     * The edge itself.
     *
     * @throws Slip if it lies too far off, or is so short that it is none
     */
    static EdgeLine checked(EdgeLine line) throws Slip {
        if (!points(line).allMatch(Bounds::isNear)) {
            throw new Slip(
                    0,
                    "an edge with a point more than 5 m from the drawing's corner",
                    "points within 5 m of it, at real size");
        }
        Point start = line.start();
        if (points(line).allMatch(point -> point.distanceMm(start) < SHORTEST_MM)) {
            throw new Slip(0, "an edge of less than 1 mm", "edges of 1 mm or more");
        }
        return line;
    }

    private static boolean isNear(Point point) {
        return Math.abs(point.xMm()) <= FARTHEST_MM && Math.abs(point.yMm()) <= FARTHEST_MM;
    }

    private static Stream<Point> points(EdgeLine line) {
        return line.stretches().stream()
                .flatMap(s -> Stream.of(s.from(), s.leave(), s.arrive(), s.to()));
    }

    /**
     * Refuses one step too many.
     *
     * @param steps how many there are
     * @param at the letter at which it stands
     */
    static void checkSteps(int steps, int at) throws Slip {
        if (steps > MOST_STEPS) {
            throw new Slip(
                    at,
                    "an edge of more than " + MOST_STEPS + " steps",
                    "its line with fewer points, or as several edges");
        }
    }
}
