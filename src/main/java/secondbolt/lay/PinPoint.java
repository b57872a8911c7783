package secondbolt.lay;

import secondbolt.shape.Point;

/**
 * A point of a piece that is found on its paper.
 *
 * @param where which corner, by the edges that meet there
 * @param at in the piece's own millimetres
 */
public record PinPoint(String where, Point at) {}
