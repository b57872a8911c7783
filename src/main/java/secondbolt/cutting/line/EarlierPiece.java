package secondbolt.cutting.line;

import java.util.List;
import java.util.Optional;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.piece.Piece;

/**
 * A piece in a shape that copies of it were cut in, other than the one it has now.
 *
 * @param had the alterations it had; nothing if that is not told
 * @param piece as it was cut; as drawn if that is not told
 * @param cut it with its cutting line; nothing if it is known by tape only
 * @param taped it as a box, if it is known by tape only
 */
public record EarlierPiece(
        Optional<List<Alteration>> had,
        Piece piece,
        Optional<CutPiece> cut,
        Optional<TapedCut> taped) {
    /** Copies the alterations. */
    public EarlierPiece {
        had = had.map(List::copyOf);
    }
}
