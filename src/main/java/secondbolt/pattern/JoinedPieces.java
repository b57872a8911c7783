package secondbolt.pattern;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * Which pieces are sewn to which, whatever the edges.
 *
 * @param all the names of the pieces that each is sewn to; of itself, where it is sewn to itself
 */
public record JoinedPieces(Map<String, Set<String>> all) {
    /** By the seams of a pattern. */
    public static JoinedPieces of(Pattern pattern) {
        Map<String, Set<String>> all = new HashMap<>();
        for (Seam seam : pattern.seams()) {
            join(all, seam.first().value(), seam.second().value());
            join(all, seam.second().value(), seam.first().value());
        }
        return new JoinedPieces(all);
    }

    private static void join(Map<String, Set<String>> all, EdgeSum side, EdgeSum other) {
        for (EdgeSum.Term term : side.terms()) {
            Set<String> partners = all.computeIfAbsent(term.piece(), any -> new HashSet<>());
            other.terms().forEach(to -> partners.add(to.piece()));
        }
    }

    /** Whether a piece is named in any seam. */
    public boolean isSewn(String piece) {
        return all.containsKey(piece);
    }

    /** The names of the pieces it is sewn to, in no order. */
    public Set<String> partners(String piece) {
        return all.getOrDefault(piece, Set.of());
    }
}
