package secondbolt.lay.search;

import secondbolt.shape.Outline;
import secondbolt.shape.Point;

/**
 * Rounds to parts of a millimetre, so that a search begins with the same numbers on every machine:
 * what comes from angles and overlays may differ there in its last bit.
 */
final class Parts {
    private static final double A_MM = 1024;

    private Parts() {}

    static double rounded(double value) {
        return Math.rint(value * A_MM) / A_MM;
    }

    static Outline rounded(Outline outline) {
        return outline.map(point -> new Point(rounded(point.xMm()), rounded(point.yMm())));
    }
}
