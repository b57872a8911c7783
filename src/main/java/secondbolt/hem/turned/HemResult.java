package secondbolt.hem.turned;

import java.util.List;
import java.util.Optional;
import secondbolt.hem.plan.Hem;
import secondbolt.measure.Length;

/**
 * A hem worked out.
 *
 * @param name the maker's name for it
 * @param hem as written
 * @param turnedUp how much cloth is turned up below the fold
 * @param pressing where the turned edge lies each time it is pressed, from the fold inward
 * @param edges its edges, in her order
 * @param hang whether it hangs before it is levelled, told or by its shape
 * @param level how it is made level, if its height above the floor is told
 */
public record HemResult(
        String name,
        Hem hem,
        Length turnedUp,
        List<Length> pressing,
        List<HemEdge> edges,
        Hem.Hang hang,
        Optional<HemLevel> level) {
    /** Copies the lists. */
    public HemResult {
        pressing = List.copyOf(pressing);
        edges = List.copyOf(edges);
    }

    /** The fold, all round the body. */
    public Length foldAllRound() {
        return edges.stream().map(HemEdge::foldAllRound).reduce(Length.ZERO, Length::plus);
    }

    /** How much is to be eased in all round, if it is known of every edge. */
    public Optional<Length> surplusAllRound() {
        return edges.stream()
                .map(HemEdge::surplusAllRound)
                .reduce(Optional.of(Length.ZERO), (all, one) -> all.flatMap(a -> one.map(a::plus)));
    }

    /** How far the hem turns all round, in radians: a full circle is 2π. */
    public double turnsAllRound() {
        return edges.stream().mapToDouble(HemEdge::turnsAllRound).sum();
    }

    /** The edges with which the same is to be done. */
    public List<HemEdge> handled(HemEdge.Handling handling) {
        return edges.stream().filter(edge -> edge.handling() == handling).toList();
    }
}
