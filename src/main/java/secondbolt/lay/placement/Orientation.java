package secondbolt.lay.placement;

import secondbolt.shape.Outline;
import secondbolt.shape.Point;

/**
 * How an item is turned, and which side of it is up.
 *
 * @param turnDegrees by how many whole degrees it is turned about its origin, from across towards
 *     along; any number, 0 as it is drawn
 * @param isMirrored whether it is turned over, left to right, before it is turned
 */
public record Orientation(int turnDegrees, boolean isMirrored) {
    /** Turned by so many degrees, with the side up it is drawn with. */
    public static Orientation turned(int degrees) {
        return new Orientation(degrees, false);
    }

    /** The same with its other side up. */
    public Orientation mirrored() {
        return new Orientation(turnDegrees, !isMirrored);
    }

    /** An outline of the item with the side up that lies up, not turned yet. */
    public Outline sideUp(Outline outline) {
        return isMirrored ? outline.map(Orientation::turnedOver) : outline;
    }

    private static Point turnedOver(Point point) {
        return new Point(-point.xMm(), point.yMm());
    }

    /** An outline of the item in this orientation, in millimetres from the item's origin. */
    public Outline applyTo(Outline outline) {
        return outline.map(this::applyTo);
    }

    /** A point of the item in this orientation, in millimetres from the item's origin. */
    public Point applyTo(Point point) {
        return turned(isMirrored ? turnedOver(point) : point);
    }

    private Point turned(Point point) {
        double cos = cos(turnDegrees);
        double sin = cos(turnDegrees - 90);
        return new Point(
                point.xMm() * cos - point.yMm() * sin, point.xMm() * sin + point.yMm() * cos);
    }

    /** Exact at the quarters of a turn, and everywhere the same on every machine. */
    private static double cos(int degrees) {
        int turn = Math.floorMod(degrees, 360);
        return switch (turn) {
            case 0 -> 1;
            case 90, 270 -> 0;
            case 180 -> -1;
            default -> StrictMath.cos(StrictMath.toRadians(turn));
        };
    }
}
