package secondbolt.lay.piece;

import java.util.List;
import java.util.Optional;
import secondbolt.lay.placement.Orientation;
import secondbolt.lay.plan.Lies;

/**
 * A piece as the maker says that it lies.
 *
 * @param piece as it is cut
 * @param lies in her words
 */
public record ToldLie(LayPiece piece, Lies lies) {
    /** Whether it is cut from those layers. */
    public boolean isOfItsLayers() {
        Lies.Layer layer = lies.layer();
        return switch (piece.layers()) {
            case SINGLE -> !layer.isFolded();
            case BOTH -> layer == Lies.Layer.BOTH;
            case ON_FOLD -> layer == Lies.Layer.ON_FOLD;
            case UPPER -> layer == Lies.Layer.UPPER;
        };
    }

    /**
     * The orientations that are meant; none of a piece of the other hand. What was told of the side
     * that is up holds where it makes a difference.
     */
    public List<Orientation> orientations() {
        Orientation up = Orientation.turned(lies.turnDegrees());
        Optional<Boolean> down = lies.isFaceDown();
        return switch (piece.layers()) {
            case SINGLE, UPPER ->
                    piece.isOpened()
                                    || down.filter(d -> d != piece.isMirrored()).isEmpty()
                                    || FoldedPieces.isItsOwnMirrorImage(piece)
                            ? List.of(up)
                            : List.of();
            case BOTH -> List.of(down.orElse(false) == piece.isMirrored() ? up : up.mirrored());
            case ON_FOLD -> List.of(up, up.mirrored());
        };
    }
}
