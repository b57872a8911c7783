package secondbolt.trim;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import secondbolt.garment.PieceEdge;
import secondbolt.trim.bound.BindingResult;
import secondbolt.trim.fused.InterfacingResult;
import secondbolt.trim.gathered.ElasticResult;

/**
 * What stiffens, binds and gathers, worked out.
 *
 * @param interfacing if any piece is cut of it, or the maker tells of it
 * @param bindings in her order
 * @param elastics in her order
 * @param turnedUp the edges that a hem turns up
 */
public record TrimResult(
        Optional<InterfacingResult> interfacing,
        List<BindingResult> bindings,
        List<ElasticResult> elastics,
        Set<PieceEdge> turnedUp) {
    /** Copies the lists. */
    public TrimResult {
        bindings = List.copyOf(bindings);
        elastics = List.copyOf(elastics);
        turnedUp = Set.copyOf(turnedUp);
    }

    /** Whether there is nothing of it. */
    boolean isEmpty() {
        return interfacing.isEmpty() && bindings.isEmpty() && elastics.isEmpty();
    }
}
