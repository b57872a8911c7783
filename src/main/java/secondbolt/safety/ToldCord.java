package secondbolt.safety;

import java.util.Optional;
import secondbolt.file.value.Placed;
import secondbolt.measure.Length;

/**
 * What the maker says of a cord, a tie or a drawstring.
 *
 * @param isOne whether it is one at all
 * @param at where it lies, if told
 * @param free how long each free end is, zero if none hangs free; nothing if not told
 * @param of the piece it is cut from, if told
 */
record ToldCord(
        boolean isOne, Optional<CordPlace> at, Optional<Length> free, Optional<Placed<String>> of) {
    /** What is called like a cord, but is none. */
    static final ToldCord NO_CORD =
            new ToldCord(false, Optional.empty(), Optional.empty(), Optional.empty());

    /** Of which nothing is told. */
    static final ToldCord UNTOLD =
            new ToldCord(true, Optional.empty(), Optional.empty(), Optional.empty());
}
