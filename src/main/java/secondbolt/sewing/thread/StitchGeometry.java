package secondbolt.sewing.thread;

import secondbolt.measure.Length;
import secondbolt.measure.Share;

/**
 * How much thread a stitch takes for its seam's length, by its geometry.
 *
 * <p>Every result is so many times the length of the seam, above zero; lengths must be above zero.
 */
public final class StitchGeometry {
    private static final Share TWO = Share.ofRatio(2, 1);
    private static final Share THREE = Share.ofRatio(3, 1);
    private static final Share FOUR = Share.ofRatio(4, 1);
    private static final long MILLIONTHS = 1_000_000;

    private StitchGeometry() {}

    /**
     * A lockstitch: needle and bobbin once along the seam, and through it twice at each stitch.
     *
     * <p>Source: article with geometric formulae of thread consumption, 2 + 2TS.
     *
     * @param stitch length of one
     * @param thickness of the seam's layers together
     */
    public static Share lockstitch(Length stitch, Length thickness) {
        return TWO.plus(TWO.times(Share.left(thickness, stitch)));
    }

    /**
     * A two-thread chainstitch.
     *
     * <p>Source: the same article, 4 + 2TS; a machine maker's chart agrees with it.
     */
    public static Share chainstitch(Length stitch, Length thickness) {
        return FOUR.plus(TWO.times(Share.left(thickness, stitch)));
    }

    /**
     * A three-thread overlock.
     *
     * <p>Source: the same article, 3 + 4WS + 4TS; published forms differ in the first figure.
     *
     * @param width of the stitch, from the needle to the edge
     */
    public static Share overlock(Length stitch, Length width, Length thickness) {
        return THREE.plus(FOUR.times(Share.left(width.plus(thickness), stitch)));
    }

    /** Running stitch: along the seam once, and through it once at each stitch. Derived. */
    public static Share running(Length stitch, Length thickness) {
        return Share.WHOLE.plus(Share.left(thickness, stitch));
    }

    /** Backstitch: three times along, and through twice at each stitch. Derived. */
    public static Share backstitch(Length stitch, Length thickness) {
        return THREE.plus(TWO.times(Share.left(thickness, stitch)));
    }

    /**
     * Overcasting: slanting up and down over the edge, and through once. Derived.
     *
     * @param depth from the edge to where the needle goes in
     */
    public static Share overcast(Length stitch, Length depth, Length thickness) {
        double slantMm =
                2 * StrictMath.hypot(depth.millimetres(), stitch.millimetres() / 2)
                        + thickness.millimetres();
        double ratio = slantMm / stitch.millimetres();
        return Share.ofRatio(Math.round(ratio * MILLIONTHS), MILLIONTHS);
    }
}
