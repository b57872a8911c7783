package secondbolt.sewing.thread;

import java.util.Optional;
import secondbolt.measure.Length;
import secondbolt.measure.Share;
import secondbolt.sewing.plan.Stitch;

/**
 * The thread of one line.
 *
 * @param what as a page names it
 * @param colour of its thread; empty if none is told
 * @param stitch with which it is sewn
 * @param length of the line in all rows; nothing if it is not known
 * @param ratio how many times that is the thread
 */
public record ThreadUse(
        String what, String colour, Stitch stitch, Optional<Length> length, ThreadRatio ratio) {
    /** As much as is threaded at a time, of a needleful of 40 to 50 cm; the rest is lost. */
    private static final Length NEEDLEFUL = Length.ofMillimetres(400);

    /** How much thread, if the length is known. */
    public Optional<Length> thread() {
        return length.map(line -> line.times(ratio.value()));
    }

    /**
     * How many needlefuls, of a hand stitch whose length is known.
     *
     * <p>Source of 40 to 50 cm: T. de Dillmont, Encyclopedia of Needlework; the shorter is taken.
     */
    public Optional<Integer> needlefuls() {
        return stitch.isByHand()
                ? thread().map(thread -> Share.left(thread, NEEDLEFUL).roundedUp())
                : Optional.empty();
    }
}
