package secondbolt.fit.cut;

import java.util.List;
import java.util.Optional;
import secondbolt.pattern.Alteration;

/**
 * One copy of a piece that is cut and not spoilt.
 *
 * @param piece its name
 * @param had the alterations it had when it was cut; nothing if that is not told
 */
public record CutCopy(String piece, Optional<List<Alteration>> had) {
    /** Copies the alterations. */
    public CutCopy {
        had = had.map(List::copyOf);
    }
}
