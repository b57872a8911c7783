package secondbolt.shape.cut;

import java.util.ArrayList;
import java.util.List;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Stretch;

/** An edge parted at its corners. */
final class SmoothParts {
    /** An edge is parted where it turns by more than this; less is a slip of drawing. */
    private static final double CORNER_RADIANS = Math.toRadians(0.5);

    private SmoothParts() {}

    /** Its stretches from corner to corner, in order; what has no length is left out. */
    static List<List<Stretch>> of(EdgeLine edge) {
        List<List<Stretch>> parts = new ArrayList<>();
        for (Stretch stretch : edge.stretches()) {
            if (stretch.lengthMm() <= 1e-9) {
                continue;
            }
            List<Stretch> last = parts.isEmpty() ? List.of() : parts.get(parts.size() - 1);
            if (last.isEmpty() || isCorner(last.get(last.size() - 1), stretch)) {
                parts.add(new ArrayList<>());
            }
            parts.get(parts.size() - 1).add(stretch);
        }
        return parts;
    }

    private static boolean isCorner(Stretch before, Stretch after) {
        return before.directionAt(1).distanceMm(after.directionAt(0)) > CORNER_RADIANS;
    }
}
