package secondbolt.closure.strip;

import secondbolt.draw.Align;

/**
 * The strip of one of the two sides.
 *
 * @param name from the wearer's side
 * @param edgeMm where its finished edge stands on the drawing
 * @param inward 1 if the cloth lies to the right of its edge, -1 if to the left
 * @param isOver whether it lies over
 */
record StripSide(String name, double edgeMm, int inward, boolean isOver) {
    /** A place so far inside the finished edge. */
    double at(double insideMm) {
        return edgeMm + inward * insideMm;
    }

    /** Text that begins at its point on the right front must end there on the left one. */
    Align align() {
        return inward > 0 ? Align.START : Align.END;
    }
}
