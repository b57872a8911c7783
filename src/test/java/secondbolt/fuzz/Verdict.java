package secondbolt.fuzz;

import java.util.Optional;

/**
 * What became of one file.
 *
 * @param isTaken whether it was found sound
 * @param fault what must never be, if it was
 */
record Verdict(boolean isTaken, Optional<String> fault) {
    static final Verdict TAKEN = new Verdict(true, Optional.empty());
    static final Verdict REFUSED = new Verdict(false, Optional.empty());

    static Verdict wrong(String fault) {
        return new Verdict(false, Optional.of(fault));
    }
}
