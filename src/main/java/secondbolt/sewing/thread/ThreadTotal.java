package secondbolt.sewing.thread;

import secondbolt.measure.Length;
import secondbolt.measure.Share;

/**
 * The thread of one colour on spools, or on the cones of an overlock machine.
 *
 * @param colour empty if none is told
 * @param isOnCones whether each thread of the stitch has a cone of its own
 * @param net what the stitches take
 * @param waste what is added, as a share of that
 * @param each how much is on one spool or cone
 * @param apart how many cones stand on the machine at once; 1 for a spool
 * @param largestShare how much of it one of them gives at most
 */
public record ThreadTotal(
        String colour,
        boolean isOnCones,
        Length net,
        Share waste,
        Length each,
        int apart,
        Share largestShare) {
    /** With the waste. */
    public Length gross() {
        return net.plus(net.times(waste));
    }

    /** How many spools or cones, rounded up; of cones as many for each thread of the stitch. */
    public int count() {
        return apart * Share.left(gross().times(largestShare), each).roundedUp();
    }
}
