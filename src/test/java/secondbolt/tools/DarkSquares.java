package secondbolt.tools;

import java.util.BitSet;
import secondbolt.shape.Point;

/** Which squares of a sheet have anything dark in them: a quick look before a close one. */
final class DarkSquares {
    private static final double SIDE_MM = 1.2;

    /** More than numbers are off that were reached in two ways. */
    private static final double ROUNDING_MM = 1e-6;

    private final int across;
    private final int along;
    private final BitSet dark = new BitSet();

    DarkSquares(double widthMm, double heightMm) {
        this.across = square(widthMm) + 1;
        this.along = square(heightMm) + 1;
    }

    private static int square(double mm) {
        return (int) Math.floor(mm / SIDE_MM);
    }

    /** Adds what is dark on a page whose left top corner lies at a point of the sheet. */
    void add(Raster page, Point corner) {
        page.eachDark(
                (leftMm, topMm, wideMm) -> {
                    double left = corner.xMm() + leftMm - ROUNDING_MM;
                    double top = corner.yMm() + topMm - ROUNDING_MM;
                    double wide = wideMm + 2 * ROUNDING_MM;
                    for (int y = square(top); y <= square(top + wide); y++) {
                        for (int x = square(left); x <= square(left + wide); x++) {
                            mark(x, y);
                        }
                    }
                });
    }

    private void mark(int x, int y) {
        if (isOnSheet(x, y)) {
            dark.set(y * across + x);
        }
    }

    private boolean isOnSheet(int x, int y) {
        return x >= 0 && x < across && y >= 0 && y < along;
    }

    /** Whether a square of the sheet may have anything dark in it. */
    boolean hasDarkWithin(double leftMm, double topMm, double wideMm) {
        int right = square(leftMm + wideMm);
        int bottom = square(topMm + wideMm);
        for (int y = square(topMm); y <= bottom; y++) {
            for (int x = square(leftMm); x <= right; x++) {
                if (isOnSheet(x, y) && dark.get(y * across + x)) {
                    return true;
                }
            }
        }
        return false;
    }
}
