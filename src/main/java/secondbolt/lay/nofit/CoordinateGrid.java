package secondbolt.lay.nofit;

import secondbolt.shape.Outline;
import secondbolt.shape.Point;

/**
 * Rounds coordinates to a grid of 1/1024 mm, so that a search begins with the same numbers on every
 * machine: what comes from angles and overlays may differ there in its last bit.
 */
final class CoordinateGrid {
    private static final double CELLS_A_MM = 1024;

    private CoordinateGrid() {}

    static double rounded(double valueMm) {
        return Math.rint(valueMm * CELLS_A_MM) / CELLS_A_MM;
    }

    static Outline rounded(Outline outline) {
        return outline.map(point -> new Point(rounded(point.xMm()), rounded(point.yMm())));
    }
}
