package secondbolt.fit.seam;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;
import secondbolt.measure.Share;
import secondbolt.pattern.EdgeSum;

/**
 * How far the edges of a pattern stretch, by the cloth each piece is cut from and how it lies.
 *
 * @param shares of their length, edge by edge; one that is not in it does not stretch
 * @param depths how deep each piece lies behind each of its edges
 * @param straight the pieces that are straight all round, as a band is, or known by tape
 * @param round how far the garment stretches round the body, if it does
 */
public record EdgeStretch(
        Map<PieceEdge, Share> shares,
        Map<PieceEdge, Length> depths,
        Set<String> straight,
        Optional<Share> round) {
    /** Woven cloth. */
    public static final EdgeStretch NONE =
            new EdgeStretch(Map.of(), Map.of(), Set.of(), Optional.empty());

    /** Copies all in order. */
    public EdgeStretch {
        shares = Collections.unmodifiableMap(new LinkedHashMap<>(shares));
        depths = Collections.unmodifiableMap(new LinkedHashMap<>(depths));
        straight = Collections.unmodifiableSet(new LinkedHashSet<>(straight));
    }

    /** How long edges are together when they are stretched as far as they go. */
    public Length reach(EdgeSum sum, Lengths lengths) {
        Length reach = Length.ZERO;
        for (EdgeSum.Term term : sum.terms()) {
            Length one = lengths.edge(term.edge()).orElseThrow();
            Length more =
                    Optional.ofNullable(shares.get(term.edge()))
                            .map(one::times)
                            .orElse(Length.ZERO);
            reach = reach.plus(one.plus(more).times(term.count()));
        }
        return reach;
    }

    /**
     * Whether a side of a join is a band that stretches: straight, and at most half as deep as what
     * it is sewn to. Common practice, no source.
     */
    public boolean isBand(EdgeSum side, EdgeSum sewnTo) {
        Optional<Length> deepest =
                side.terms().stream()
                        .map(term -> depths.getOrDefault(term.edge(), Length.ZERO))
                        .reduce(Length::orLonger);
        boolean stretches = side.terms().stream().allMatch(t -> shares.containsKey(t.edge()));
        boolean isStraight = side.terms().stream().allMatch(t -> straight.contains(t.piece()));
        return stretches
                && isStraight
                && sewnTo.terms().stream()
                        .map(term -> depths.getOrDefault(term.edge(), Length.ZERO))
                        .noneMatch(depth -> depth.isShorterThan(deepest.orElseThrow().times(2)));
    }
}
