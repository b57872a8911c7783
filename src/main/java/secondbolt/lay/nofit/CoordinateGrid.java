package secondbolt.lay.nofit;

import secondbolt.shape.Outline;
import secondbolt.shape.Point;

/**
 * Rounds coordinates to a grid of a four-millionth of a millimetre, so that a search begins with
 * the same numbers on every machine: what comes from angles and overlays may differ there in its
 * last bit. It is fine enough that twenty pieces side by side which fit exactly still do.
 */
final class CoordinateGrid {
    private static final double CELLS_A_MM = 1L << 22;

    private CoordinateGrid() {}

    static double rounded(double valueMm) {
        return Math.rint(valueMm * CELLS_A_MM) / CELLS_A_MM;
    }

    static Outline rounded(Outline outline) {
        return outline.map(point -> new Point(rounded(point.xMm()), rounded(point.yMm())));
    }
}
