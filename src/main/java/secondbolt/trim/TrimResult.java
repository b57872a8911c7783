package secondbolt.trim;

import java.util.List;
import java.util.Optional;
import secondbolt.trim.bound.BindingResult;
import secondbolt.trim.fused.InterfacingResult;
import secondbolt.trim.gathered.ElasticResult;

/**
 * What stiffens, binds and gathers, worked out.
 *
 * @param interfacing if any piece is cut of it, or the maker tells of it
 * @param bindings in her order
 * @param elastics in her order
 */
public record TrimResult(
        Optional<InterfacingResult> interfacing,
        List<BindingResult> bindings,
        List<ElasticResult> elastics) {
    /** Copies the lists. */
    public TrimResult {
        bindings = List.copyOf(bindings);
        elastics = List.copyOf(elastics);
    }

    /** Whether there is nothing of it. */
    boolean isEmpty() {
        return interfacing.isEmpty() && bindings.isEmpty() && elastics.isEmpty();
    }
}
