package secondbolt.closure.row;

import java.util.Optional;
import secondbolt.closure.fastening.Fastening;
import secondbolt.measure.Length;

/**
 * Where one fastener and its hole come.
 *
 * @param number from the top, from 1
 * @param fromTop from the top edge to its centre
 * @param holes which way its hole runs
 * @param start where the hole begins: from the top if upright, from the line of the row if level,
 *     negative toward the edge
 * @param end where it ends, measured likewise
 * @param byHand whether it must be worked by hand
 * @param why what it meets, if it must
 */
public record FastenerMark(
        int number,
        Length fromTop,
        Fastening.Holes holes,
        Length start,
        Length end,
        boolean byHand,
        Optional<String> why) {
    /** Whether its hole runs along the centre line. */
    public boolean isUpright() {
        return holes == Fastening.Holes.UPRIGHT;
    }
}
