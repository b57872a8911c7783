package secondbolt.lay;

import java.util.List;
import secondbolt.fit.Piece;
import secondbolt.shape.Outline;

/**
 * One copy of a piece, as it is laid.
 *
 * @param piece the piece
 * @param copy which copy, from 1
 * @param of how many there are
 * @param isMirrored whether it is the mirror image
 * @param isOpened whether it is drawn on the fold and opened out
 * @param outline its cutting line, mirrored or opened if it is
 * @param pins two points of it that are found on the paper piece
 */
public record LayPiece(
        Piece piece,
        int copy,
        int of,
        boolean isMirrored,
        boolean isOpened,
        Outline outline,
        List<PinPoint> pins) {
    /** Copies the points. */
    public LayPiece {
        pins = List.copyOf(pins);
    }

    /** Its name, with its number where there are several. */
    public String words() {
        return of > 1 ? piece.name() + " " + copy : piece.name();
    }

    /** Which side of the pattern lies up. */
    public String side() {
        return isOpened ? "opened out" : isMirrored ? "pattern face down" : "pattern face up";
    }
}
