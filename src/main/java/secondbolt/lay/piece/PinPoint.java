package secondbolt.lay.piece;

import secondbolt.shape.Point;

/**
 * A point of a piece that is found on its paper.
 *
 * @param where which corner, by the edges that meet there
 * @param at in the piece's own millimetres
 * @param isMatch whether stripes or checks meet another piece there
 */
public record PinPoint(String where, Point at, boolean isMatch) {
    /** A corner to pin by. */
    public static PinPoint corner(String where, Point at) {
        return new PinPoint(where, at, false);
    }

    /** A place where the pattern of the cloth runs on into another piece. */
    public static PinPoint match(String where, Point at) {
        return new PinPoint("match, " + where, at, true);
    }

    /** The same place of it elsewhere. */
    PinPoint moved(Point to) {
        return new PinPoint(where, to, isMatch);
    }
}
