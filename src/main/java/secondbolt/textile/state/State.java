package secondbolt.textile.state;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Set;

/**
 * In what state a cloth came.
 *
 * @param cameWith what came with it, in the order written
 * @param ridOf what of that is dealt with
 * @param finishes how it was finished, as far as that is told
 * @param label what its care label says
 */
public record State(
        Set<CameWith> cameWith, Set<CameWith> ridOf, Set<Finish> finishes, CareLabel label) {
    /** Copies the sets. */
    public State {
        cameWith = Collections.unmodifiableSet(new LinkedHashSet<>(cameWith));
        ridOf = Collections.unmodifiableSet(new LinkedHashSet<>(ridOf));
        finishes = Collections.unmodifiableSet(new LinkedHashSet<>(finishes));
    }

    /** Whether that came with it and is not dealt with. */
    public boolean has(CameWith thing) {
        return cameWith.contains(thing) && !ridOf.contains(thing);
    }

    /** Whether it is finished so. */
    public boolean has(Finish finish) {
        return finishes.contains(finish);
    }
}
