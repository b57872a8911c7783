package secondbolt.sewing.seam;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import secondbolt.fit.result.FitResult;
import secondbolt.garment.PieceEdge;
import secondbolt.garment.Role;
import secondbolt.pattern.EdgeSum;
import secondbolt.pattern.Seam;
import secondbolt.pattern.piece.Piece;

/**
 * How many of each edge there are in all that is cut, and so how often a join is sewn.
 *
 * <p>Derived: an edge as drawn comes once with each copy, and twice with each that is drawn half on
 * a fold. What lies between outside and lining, or stiffens a piece, is caught in with it and is
 * not sewn for itself.
 *
 * @param counts by edge; edges on a fold are none
 */
public record EdgeSupply(Map<PieceEdge, Integer> counts) {
    /** Copies the map in order. */
    public EdgeSupply {
        counts = Collections.unmodifiableMap(new LinkedHashMap<>(counts));
    }

    /** What a pattern comes to. */
    public static EdgeSupply of(FitResult fit) {
        Map<PieceEdge, Integer> counts = new LinkedHashMap<>();
        for (Piece piece : fit.pieces()) {
            int each = copies(piece) * (piece.fold().isPresent() ? 2 : 1);
            piece.shape().edgeNames().stream()
                    .filter(edge -> piece.fold().filter(edge::equals).isEmpty())
                    .forEach(edge -> counts.put(new PieceEdge(piece.name(), edge), each));
        }
        return new EdgeSupply(counts);
    }

    /** How many copies of a piece are sewn for themselves. */
    static int copies(Piece piece) {
        return piece.cuts().entrySet().stream()
                .filter(cut -> !cut.getKey().isBetween())
                .mapToInt(cut -> cut.getValue().count())
                .sum();
    }

    /** The cloth whose thread a piece takes: the first it is cut of. */
    static Role role(Piece piece) {
        return piece.cuts().keySet().stream()
                .filter(role -> !role.isBetween())
                .findFirst()
                .orElse(Role.MAIN);
    }

    /** How many there are of an edge. */
    public int of(PieceEdge edge) {
        return counts.getOrDefault(edge, 0);
    }

    /**
     * How often a join is sewn, and whether all its edges agree.
     *
     * @param times as often as every edge that it names is there
     * @param lacking edges of which it names more than are cut
     */
    record Count(int times, List<PieceEdge> lacking) {
        Count {
            lacking = List.copyOf(lacking);
        }
    }

    /** How often a join is sewn; once where it names more of an edge than are cut. */
    Count of(Seam seam) {
        Map<PieceEdge, Integer> named = named(seam);
        List<PieceEdge> lacking =
                named.entrySet().stream()
                        .filter(edge -> of(edge.getKey()) > 0)
                        .filter(edge -> of(edge.getKey()) < edge.getValue())
                        .map(Map.Entry::getKey)
                        .toList();
        int times =
                named.entrySet().stream()
                        .mapToInt(edge -> of(edge.getKey()) / edge.getValue())
                        .min()
                        .orElse(0);
        return new Count(lacking.isEmpty() ? times : 1, lacking);
    }

    /** How often a join names each of its edges, on both sides together. */
    static Map<PieceEdge, Integer> named(Seam seam) {
        Map<PieceEdge, Integer> named = new LinkedHashMap<>();
        seam.sides().stream()
                .flatMap(side -> side.value().terms().stream())
                .forEach(
                        (EdgeSum.Term term) ->
                                named.merge(term.edge(), term.count(), Integer::sum));
        return named;
    }

    /** Its edges that are there. */
    Set<PieceEdge> edges() {
        return counts.keySet();
    }
}
