package secondbolt.lay.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;
import secondbolt.shape.Region;

/**
 * Pieces as they are cut from folded cloth: pairs from both layers at once, halves on the fold, and
 * what is there once from the upper layer only.
 */
public final class FoldedPieces {
    private static final double UPRIGHT_MM = 0.5;

    /** Two shapes that differ by less are cut as one, whichever side is up. */
    private static final double SAME_SHARE = 1e-3;

    private FoldedPieces() {}

    /** Single copies, as they are cut from folded cloth. */
    public static List<LayPiece> of(List<LayPiece> single) {
        List<LayPiece> left = new ArrayList<>(single);
        List<LayPiece> folded = new ArrayList<>();
        while (!left.isEmpty()) {
            LayPiece piece = left.remove(0);
            Optional<LayPiece> other = left.stream().filter(o -> goTogether(piece, o)).findFirst();
            if (isOnFold(piece)) {
                folded.add(onFold(piece));
            } else if (other.isPresent()) {
                left.remove(other.get());
                folded.add(piece.with(LayPiece.CutLayers.BOTH));
            } else {
                folded.add(piece.with(LayPiece.CutLayers.UPPER));
            }
        }
        return List.copyOf(folded);
    }

    /** The next copy, if it is what comes from the lower layer. */
    private static boolean goTogether(LayPiece piece, LayPiece other) {
        return other.piece().equals(piece.piece())
                && !piece.isMirrored()
                && other.copy() == piece.copy() + 1
                && (other.isMirrored() || isItsOwnMirrorImage(piece));
    }

    /** Whether one of either hand is cut alike, as a rectangle is. */
    public static boolean isItsOwnMirrorImage(LayPiece piece) {
        Outline outline = piece.full();
        double axis = outline.box().middle().xMm();
        Region one = Region.of(outline);
        Region two = Region.of(outline.map(p -> new Point(2 * axis - p.xMm(), p.yMm())));
        return one.minus(two).areaMm2() < SAME_SHARE * outline.areaMm2();
    }

    private static boolean isOnFold(LayPiece piece) {
        return piece.opened()
                .map(LayPiece.Opened::fold)
                .filter(f -> isUpright(f) || isLevel(f))
                .isPresent();
    }

    /** Whether a piece is drawn half, with its fold down the middle of the whole. */
    public static boolean isOnUprightFold(LayPiece piece) {
        return piece.isOpened()
                && piece.cut().flatMap(LayPieces::fold).filter(FoldedPieces::isUpright).isPresent();
    }

    static boolean isUpright(EdgeLine fold) {
        return Math.abs(fold.start().xMm() - fold.end().xMm()) < UPRIGHT_MM;
    }

    private static boolean isLevel(EdgeLine fold) {
        return Math.abs(fold.start().yMm() - fold.end().yMm()) < UPRIGHT_MM;
    }

    private static LayPiece onFold(LayPiece piece) {
        return new LayPiece(
                piece.piece(),
                piece.cut(),
                piece.copy(),
                piece.of(),
                piece.isMirrored(),
                piece.opened(),
                LayPiece.CutLayers.ON_FOLD,
                piece.opened().orElseThrow().half(),
                piece.full(),
                piece.pins());
    }
}
