package secondbolt.lay;

import java.util.List;
import secondbolt.lay.search.Placed;
import secondbolt.shape.Box;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;

/**
 * A piece that found its place.
 *
 * @param piece which copy of which
 * @param cloth the number of its cloth, from 0
 * @param placed how it is turned and moved
 */
public record LaidPiece(LayPiece piece, int cloth, Placed placed) {
    /** Its cutting line on the cloth. */
    public Outline outline() {
        return placed.lying(piece.outline());
    }

    /** The box round it on the cloth. */
    public Box box() {
        return outline().box();
    }

    /** Its pin points on the cloth. */
    List<PinPoint> pins() {
        return piece.pins().stream().map(pin -> new PinPoint(pin.where(), on(pin.at()))).toList();
    }

    /** A point of the piece on the cloth. */
    Point on(Point point) {
        return placed.at(point);
    }
}
