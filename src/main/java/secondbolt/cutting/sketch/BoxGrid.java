package secondbolt.cutting.sketch;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import secondbolt.shape.Box;

/**
 * Boxes kept by the squares of a grid that they touch, so that only those nearby are looked at. Not
 * for sharing: it remembers what was added.
 */
final class BoxGrid {
    /** About as large as what is asked for: a letter on a piece. */
    private static final double SQUARE_MM = 4;

    private final Map<Long, List<Box>> squares = new HashMap<>();

    void add(Box box) {
        for (int row = number(box.topMm()); row <= number(box.bottomMm()); row++) {
            for (int column = number(box.leftMm()); column <= number(box.rightMm()); column++) {
                squares.computeIfAbsent(square(column, row), s -> new ArrayList<>()).add(box);
            }
        }
    }

    /** Whether a box overlaps one of those added. */
    boolean overlaps(Box box) {
        for (int row = number(box.topMm()); row <= number(box.bottomMm()); row++) {
            for (int column = number(box.leftMm()); column <= number(box.rightMm()); column++) {
                List<Box> near = squares.getOrDefault(square(column, row), List.of());
                for (Box other : near) {
                    if (box.overlaps(other)) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    /** Both numbers in one. */
    private static long square(int column, int row) {
        return (long) column << Integer.SIZE | Integer.toUnsignedLong(row);
    }

    /** Boxes that overlap share a point, and so the square of it. */
    private static int number(double atMm) {
        return (int) Math.floor(atMm / SQUARE_MM);
    }
}
