package secondbolt.safety;

import java.util.List;

/**
 * What a garment has that a child may be hurt by.
 *
 * @param cords all cords, ties and drawstrings
 * @param neckLoops the pieces that go round the neck in a loop
 * @param nightwear whether it is slept in
 */
public record SafetyResult(List<Cord> cords, List<String> neckLoops, Nightwear nightwear) {
    /** Copies the lists. */
    public SafetyResult {
        cords = List.copyOf(cords);
        neckLoops = List.copyOf(neckLoops);
    }
}
