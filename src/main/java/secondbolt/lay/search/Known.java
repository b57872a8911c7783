package secondbolt.lay.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.shape.Box;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;

/**
 * A shape that is worked out, with what it is told by: two outlines that are mirror images of each
 * other are the same shape but for a flip.
 *
 * @param outline turned, its box at the origin
 * @param lies the shape
 * @param overLeftMm how far the shape's box begins before that of the outline
 * @param overLowMm likewise
 */
record Known(List<Point> outline, Orientation lies, double overLeftMm, double overLowMm) {
    private static final List<Flip> FLIPS =
            List.of(Flip.NONE, new Flip(true, true), new Flip(true, false), new Flip(false, true));

    /** The corners of an outline, its box at the origin. */
    static List<Point> atOrigin(Outline turned) {
        Box box = turned.box();
        return turned.corners().stream().map(p -> p.moved(-box.leftMm(), -box.topMm())).toList();
    }

    /**
     * How another must be flipped to be this; nothing if it is another shape.
     *
     * @param sameMm how far apart two corners may be and count as one
     */
    Optional<Flip> flipOf(List<Point> other, double sameMm) {
        if (other.size() != outline.size()) {
            return Optional.empty();
        }
        Box box = new Outline(outline).box();
        return FLIPS.stream().filter(flip -> isSame(flipped(other, flip, box), sameMm)).findFirst();
    }

    private static List<Point> flipped(List<Point> corners, Flip flip, Box box) {
        List<Point> flipped = new ArrayList<>();
        for (Point corner : corners) {
            flipped.add(
                    new Point(
                            flip.x(corner.xMm(), box.widthMm()),
                            flip.y(corner.yMm(), box.heightMm())));
        }
        return flipped;
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
