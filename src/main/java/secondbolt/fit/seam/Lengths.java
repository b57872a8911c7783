package secondbolt.fit.seam;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;
import secondbolt.pattern.EdgeSum;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.Piece;

/**
 * How long the edges of all pieces are along their sewing lines, what darts and pleats take up left
 * out; each is measured once.
 *
 * @param pieces by name
 */
public record Lengths(Map<String, OnPiece> pieces) {
    /** Copies the map in order. */
    public Lengths {
        pieces = Collections.unmodifiableMap(new LinkedHashMap<>(pieces));
    }

    /**
     * The lengths on one piece.
     *
     * @param sewn each edge, once
     * @param open edges of which it is not known whether the alterations changed them
     */
    record OnPiece(Map<String, Length> sewn, Set<String> open) {
        /** Copies both in order. */
        OnPiece {
            sewn = Collections.unmodifiableMap(new LinkedHashMap<>(sewn));
            open = Collections.unmodifiableSet(new LinkedHashSet<>(open));
        }

        private static OnPiece of(Piece piece, SewnLengths lines) {
            Map<String, Length> sewn = new LinkedHashMap<>();
            Set<String> open = new LinkedHashSet<>();
            lines.of(piece)
                    .forEach(
                            (edge, length) -> {
                                sewn.put(edge, length.minus(piece.takenFrom(edge)));
                                if (piece.shape().isOpen(edge)) {
                                    open.add(edge);
                                }
                            });
            return new OnPiece(sewn, open);
        }
    }

    /** The lengths on a pattern as drawn. */
    public static Lengths of(Pattern pattern) {
        SewnLengths lines = new SewnLengths(pattern.allowance());
        Map<String, OnPiece> pieces = new LinkedHashMap<>();
        pattern.pieces().forEach(piece -> pieces.put(piece.name(), OnPiece.of(piece, lines)));
        return new Lengths(pieces);
    }

    /**
     * The lengths on the same pieces altered; one that stayed as drawn is not measured again.
     *
     * @param pattern as drawn, which these are the lengths of
     * @param altered its pieces in the same order
     */
    public Lengths after(Pattern pattern, List<Piece> altered) {
        SewnLengths lines = new SewnLengths(pattern.allowance());
        Map<String, OnPiece> now = new LinkedHashMap<>();
        for (int i = 0; i < altered.size(); i++) {
            Piece piece = altered.get(i);
            boolean isAsDrawn = piece.equals(pattern.pieces().get(i));
            now.put(piece.name(), isAsDrawn ? pieces.get(piece.name()) : OnPiece.of(piece, lines));
        }
        return new Lengths(now);
    }

    /** The edge as it is sewn, once; nothing if there is none of this name. */
    public Optional<Length> edge(PieceEdge edge) {
        return Optional.ofNullable(pieces.get(edge.piece()))
                .flatMap(piece -> Optional.ofNullable(piece.sewn().get(edge.edge())));
    }

    /** A sum of edges; each must be there, which reading has checked. */
    public Length of(EdgeSum sum) {
        Length length = Length.ZERO;
        for (EdgeSum.Term term : sum.terms()) {
            length = length.plus(edge(term.edge()).orElseThrow().times(term.count()));
        }
        return length;
    }

    /** The edges of a sum of which it is not known whether the alterations changed them. */
    public List<EdgeSum.Term> open(EdgeSum sum) {
        return sum.terms().stream().filter(term -> isOpen(term.edge())).distinct().toList();
    }

    private boolean isOpen(PieceEdge edge) {
        return Optional.ofNullable(pieces.get(edge.piece()))
                .filter(piece -> piece.open().contains(edge.edge()))
                .isPresent();
    }
}
