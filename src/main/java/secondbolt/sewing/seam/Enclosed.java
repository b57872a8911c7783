package secondbolt.sewing.seam;

import java.util.Set;
import java.util.stream.Stream;
import secondbolt.fit.result.FitResult;
import secondbolt.garment.PieceEdge;
import secondbolt.garment.Role;
import secondbolt.pattern.JoinedPieces;
import secondbolt.pattern.Seam;
import secondbolt.pattern.piece.Piece;

/**
 * Whether the edges of a join lie inside the finished garment, so that nothing is to be neatened:
 * in a band, a cuff or a collar, or under a lining.
 *
 * <p>Derived from what is cut: a piece that is stiffened is a band, a cuff, a collar or a facing;
 * one cut more than once of a cloth on the fold has two layers; an edge joined to its own like is
 * turned right side out; what is joined to a lining is covered by it. It is told as taken, and the
 * maker may say otherwise.
 *
 * @param fit the altered pattern
 */
record Enclosed(FitResult fit) {
    boolean is(Seam seam) {
        Set<PieceEdge> edges = seam.edges();
        boolean isTurned =
                seam.first().value().pieceEdges().stream()
                        .anyMatch(seam.second().value().pieceEdges()::contains);
        boolean isInLayers = pieces(edges).anyMatch(Enclosed::hasLayers);
        return isTurned || isInLayers || pieces(edges).allMatch(this::isLined);
    }

    private Stream<Piece> pieces(Set<PieceEdge> edges) {
        return edges.stream().map(edge -> fit.find(edge.piece()).orElseThrow());
    }

    private static boolean hasLayers(Piece piece) {
        boolean isStiffened = piece.copies(Role.INTERFACING) > 0;
        boolean isDoubled =
                piece.fold().isPresent()
                        && piece.cuts().entrySet().stream()
                                .anyMatch(
                                        cut ->
                                                !cut.getKey().isBetween()
                                                        && cut.getValue().count() > 1);
        return isStiffened || isDoubled;
    }

    /** Itself a lining, or sewn to one. */
    private boolean isLined(Piece piece) {
        return isLining(piece)
                || JoinedPieces.of(fit.pattern()).partners(piece.name()).stream()
                        .anyMatch(name -> isLining(fit.find(name).orElseThrow()));
    }

    private static boolean isLining(Piece piece) {
        return piece.copies(Role.LINING) > 0;
    }
}
