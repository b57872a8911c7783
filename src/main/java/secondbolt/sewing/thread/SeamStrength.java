package secondbolt.sewing.thread;

import secondbolt.measure.Length;
import secondbolt.measure.Share;

/**
 * How strong a plain seam of a woven cloth is, in strengths of its thread to the inch of seam; the
 * weaker of its threads counts.
 *
 * <p>Source: thread maker's booklet, pages 32 and 33: stitches in an inch times the strength of the
 * thread times 1.5 for a lockstitch, 1.7 for a two-thread chainstitch.
 */
public final class SeamStrength {
    private static final Share LOCKSTITCH = Share.ofDecimal("1.5");
    private static final Share CHAINSTITCH = Share.ofDecimal("1.7");
    private static final Length INCH = Length.ofInches(1, 1);

    private SeamStrength() {}

    /** Of a lockstitch seam, so many strengths of its thread in an inch. */
    public static Share lockstitch(Length stitch) {
        return Share.left(INCH, stitch).times(LOCKSTITCH);
    }

    /** Of a two-thread chainstitch seam, likewise. */
    public static Share chainstitch(Length stitch) {
        return Share.left(INCH, stitch).times(CHAINSTITCH);
    }
}
