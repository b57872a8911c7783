package secondbolt.lay.search;

import secondbolt.shape.Outline;
import secondbolt.shape.Point;

/**
 * Where a figure lies.
 *
 * @param figure its number
 * @param bed the number of the bed
 * @param isMirrored whether it is turned over first, left to right
 * @param turnDegrees by how much it is then turned about its origin, from across towards along
 * @param acrossMm how far it is then moved across
 * @param alongMm how far it is then moved along
 */
public record Placed(
        int figure, int bed, boolean isMirrored, int turnDegrees, double acrossMm, double alongMm) {
    /** An outline of the figure as it lies. */
    public Outline lying(Outline outline) {
        return outline.map(this::at);
    }

    /** A point of the figure as it lies. */
    public Point at(Point point) {
        Point up = isMirrored ? Orientation.mirrored(point) : point;
        return Orientation.turned(up, turnDegrees).moved(acrossMm, alongMm);
    }
}
