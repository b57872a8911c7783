package secondbolt.textile;

import java.util.Optional;
import secondbolt.measure.Share;

/**
 * How far a knit stretches under a hand, as a share of its length at rest; it goes back by itself.
 *
 * @param across crosswise; nothing if it does not stretch that way
 * @param along lengthwise, likewise
 */
public record Stretch(Optional<Share> across, Optional<Share> along) {
    /** A cloth that does not stretch, as most woven ones. */
    public static final Stretch NONE = new Stretch(Optional.empty(), Optional.empty());

    /** Whether it stretches either way. */
    public boolean isAny() {
        return across.isPresent() || along.isPresent();
    }
}
