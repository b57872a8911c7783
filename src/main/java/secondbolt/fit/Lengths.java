package secondbolt.fit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;

/**
 * The lengths of edges on some pieces along their sewing lines, what darts and pleats take up left
 * out. Not for sharing: it measures a piece when one of its edges is first asked for, and
 * remembers.
 */
final class Lengths {
    private final SewnLengths sewn;
    private final List<Piece> pieces;
    private final Map<String, Map<String, Length>> measured = new HashMap<>();

    /**
     * The lengths on these pieces.
     *
     * @param pattern whose they are
     * @param pieces before or after the alterations
     */
    Lengths(Pattern pattern, List<Piece> pieces) {
        this.sewn = new SewnLengths(pattern.allowance());
        this.pieces = List.copyOf(pieces);
    }

    Optional<Piece> piece(String name) {
        return pieces.stream().filter(piece -> piece.name().equals(name)).findFirst();
    }

    /** The edge as it is sewn, once; nothing if there is none of this name. */
    Optional<Length> edge(PieceEdge edge) {
        return piece(edge.piece())
                .filter(p -> p.hasEdge(edge.edge()))
                .map(p -> measured(p).get(edge.edge()).minus(p.takenFrom(edge.edge())));
    }

    private Map<String, Length> measured(Piece piece) {
        return measured.computeIfAbsent(piece.name(), name -> sewn.of(piece));
    }

    /** A sum of edges; each must be there, which reading has checked. */
    Length of(EdgeSum sum) {
        Length length = Length.ZERO;
        for (EdgeSum.Term term : sum.terms()) {
            length = length.plus(edge(term.edge()).orElseThrow().times(term.count()));
        }
        return length;
    }

    /** The edges of a sum of which it is not known whether the alterations changed them. */
    List<EdgeSum.Term> open(EdgeSum sum) {
        return sum.terms().stream()
                .filter(
                        t ->
                                piece(t.piece())
                                        .filter(p -> p.shape().isOpen(t.edge().edge()))
                                        .isPresent())
                .distinct()
                .toList();
    }
}
