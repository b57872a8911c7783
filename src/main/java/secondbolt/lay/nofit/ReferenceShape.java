package secondbolt.lay.nofit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.shape.Box;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;

/**
 * A shape that no-fit regions are made of, with the outline it is told by: an outline that is the
 * same but for a reflection refers to it, and needs no regions of its own.
 *
 * @param outline in its orientation, its box at the origin
 * @param shape the same, ready for the search
 * @param overLeftMm how far the shape's box begins before that of the outline across
 * @param overLowMm how far it begins before it along
 */
record ReferenceShape(
        List<Point> outline, OrientedShape shape, double overLeftMm, double overLowMm) {
    private static final List<Reflection> REFLECTIONS =
            List.of(
                    Reflection.NONE,
                    new Reflection(true, true),
                    new Reflection(true, false),
                    new Reflection(false, true));

    /** Copies the corners. */
    ReferenceShape {
        outline = List.copyOf(outline);
    }

    /**
     * A reference shape.
     *
     * @param corners of the outline, its box at the origin
     * @param box of the outline in its orientation, before it was moved to the origin
     */
    static ReferenceShape of(List<Point> corners, OrientedShape shape, Box box) {
        return new ReferenceShape(
                corners, shape, box.leftMm() - shape.leftMm(), box.topMm() - shape.lowMm());
    }

    /** The corners of an outline, its box at the origin. */
    static List<Point> atOrigin(Outline turned) {
        Box box = turned.box();
        return turned.corners().stream().map(p -> p.moved(-box.leftMm(), -box.topMm())).toList();
    }

    /**
     * The shape reflected to stand for another outline; it may be larger than that, on every side
     * as it is larger than its own.
     *
     * @param own the box of the other outline in its orientation
     */
    OrientedShape reflected(Reflection reflection, Box own) {
        Box first = new Outline(outline).box();
        double over = shape.widthMm() - first.widthMm();
        double above = shape.heightMm() - first.heightMm();
        double left = reflection.across() ? over - overLeftMm : overLeftMm;
        double low = reflection.along() ? above - overLowMm : overLowMm;
        return shape.reflected(
                reflection,
                CoordinateGrid.rounded(own.leftMm() - left),
                CoordinateGrid.rounded(own.topMm() - low));
    }

    /**
     * How this must be reflected to be another outline; nothing if it is another shape.
     *
     * @param other its corners, its box at the origin
     * @param sameMm two corners that differ by less count as one, above zero
     */
    Optional<Reflection> reflectionTo(List<Point> other, double sameMm) {
        if (other.size() != outline.size()) {
            return Optional.empty();
        }
        Box box = new Outline(outline).box();
        return REFLECTIONS.stream()
                .filter(reflection -> isSame(reflected(other, reflection, box), sameMm))
                .findFirst();
    }

    private static List<Point> reflected(List<Point> corners, Reflection reflection, Box box) {
        List<Point> reflected = new ArrayList<>();
        for (Point corner : corners) {
            reflected.add(
                    new Point(
                            reflection.x(corner.xMm(), box.widthMm()),
                            reflection.y(corner.yMm(), box.heightMm())));
        }
        return reflected;
    }

    /** Corner by corner, from any of them, either way round. */
    private boolean isSame(List<Point> other, double sameMm) {
        int n = outline.size();
        for (int from = 0; from < n; from++) {
            if (isNear(0, other.get(from), sameMm)
                    && (runs(other, from, 1, sameMm) || runs(other, from, n - 1, sameMm))) {
                return true;
            }
        }
        return false;
    }

    private boolean runs(List<Point> other, int from, int step, double sameMm) {
        int n = outline.size();
        for (int i = 1; i < n; i++) {
            if (!isNear(i, other.get((from + i * step) % n), sameMm)) {
                return false;
            }
        }
        return true;
    }

    private boolean isNear(int corner, Point other, double sameMm) {
        Point own = outline.get(corner);
        return Math.abs(own.xMm() - other.xMm()) < sameMm
                && Math.abs(own.yMm() - other.yMm()) < sameMm;
    }
}
