package secondbolt.safety;

import java.util.List;
import java.util.Optional;

/**
 * What a garment has that a child may be hurt by.
 *
 * @param cords all cords, ties and drawstrings
 * @param neckLoops the pieces that go round the neck in a loop
 * @param spokenOf what ties, by the maker's own words, while none of it is written; mostly nothing
 * @param nightwear whether it is slept in
 */
public record SafetyResult(
        List<Cord> cords, List<String> neckLoops, Optional<String> spokenOf, Nightwear nightwear) {
    /** Copies the lists. */
    public SafetyResult {
        cords = List.copyOf(cords);
        neckLoops = List.copyOf(neckLoops);
    }
}
