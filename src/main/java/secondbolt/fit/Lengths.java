package secondbolt.fit;

import java.util.List;
import java.util.Optional;
import secondbolt.measure.Length;

/**
 * The lengths of edges on some pieces, what darts and pleats take up left out.
 *
 * @param pieces the pieces, before or after the alterations
 */
record Lengths(List<Piece> pieces) {
    Lengths {
        pieces = List.copyOf(pieces);
    }

    Optional<Piece> piece(String name) {
        return pieces.stream().filter(piece -> piece.name().equals(name)).findFirst();
    }

    /** The edge as it is sewn, once; nothing if there is none of this name. */
    Optional<Length> edge(String piece, String edge) {
        return piece(piece)
                .filter(p -> p.hasEdge(edge))
                .map(p -> p.shape().edgeLengths().get(edge).minus(p.takenFrom(edge)));
    }

    /** A sum of edges; each must be there, which reading has checked. */
    Length of(EdgeSum sum) {
        Length length = Length.ZERO;
        for (EdgeSum.Term term : sum.terms()) {
            length = length.plus(edge(term.piece(), term.edge()).orElseThrow().times(term.count()));
        }
        return length;
    }
}
