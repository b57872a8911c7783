package secondbolt.lay.design;

import java.util.Optional;
import secondbolt.garment.Role;
import secondbolt.measure.Length;

/**
 * How long a cloth from the bolt would have to be.
 *
 * @param role of the cloth
 * @param width of the bolt
 * @param cuttable what of it is between the selvages
 * @param length the length of the lay that was found; nothing if a piece is wider than the bolt
 * @param toBuy the same rounded up as shops cut
 */
public record BoltLength(
        Role role, Length width, Length cuttable, Optional<Length> length, Optional<Length> toBuy) {
    /** The same, or no longer than another whose lay can be cut of this bolt as well. */
    BoltLength atMost(BoltLength other) {
        boolean isLonger =
                other.length
                        .filter(l -> length.isEmpty() || length.get().isLongerThan(l))
                        .isPresent();
        return isLonger ? new BoltLength(role, width, cuttable, other.length, other.toBuy) : this;
    }
}
