package secondbolt.cutting.line;

import java.util.List;
import secondbolt.measure.Length;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.Piece;

/**
 * A pattern ready to be cut.
 *
 * @param rights whose it is
 * @param allowance the seam allowance of every edge that has none of its own
 * @param isAssumed whether that was not told
 * @param pieces the drawn ones, in her order
 * @param taped those known by tape only, which have no cutting line
 * @param oneHand those of which several are cut as drawn, though they are not their own mirror
 *     image
 * @param earlier shapes in which copies were cut, where they are not the ones above
 */
public record CuttingResult(
        Pattern.Rights rights,
        Length allowance,
        boolean isAssumed,
        List<CutPiece> pieces,
        List<TapedCut> taped,
        List<Piece> oneHand,
        List<EarlierPiece> earlier) {
    /** Copies the lists. */
    public CuttingResult {
        pieces = List.copyOf(pieces);
        earlier = List.copyOf(earlier);
        taped = List.copyOf(taped);
        oneHand = List.copyOf(oneHand);
    }
}
