package secondbolt.lay.piece;

import java.util.List;
import java.util.Optional;
import secondbolt.cutting.line.CutPiece;
import secondbolt.pattern.piece.Piece;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Outline;

/**
 * One copy of a piece, or two that are cut at once, as it is laid.
 *
 * @param piece the piece
 * @param cut it with its cutting line; nothing if it is known by tape only
 * @param copy which copy, from 1; the first of two
 * @param of how many copies there are
 * @param isMirrored whether the copy is the mirror image
 * @param opened how it is opened out, if it is drawn or taped half
 * @param layers how many layers are cut for it
 * @param outline what is laid: the cutting line, mirrored or opened if it is; a half on the fold
 * @param full the cutting line of the copy when it is cut; the same but for a half on the fold
 * @param pins two points of it that are found on the paper piece
 */
public record LayPiece(
        Piece piece,
        Optional<CutPiece> cut,
        int copy,
        int of,
        boolean isMirrored,
        Optional<Opened> opened,
        CutLayers layers,
        Outline outline,
        Outline full,
        List<PinPoint> pins) {
    /** Copies the points. */
    public LayPiece {
        pins = List.copyOf(pins);
    }

    /**
     * What is opened out.
     *
     * @param fold the edge on the fold
     * @param half the cutting line of the half
     */
    public record Opened(EdgeLine fold, Outline half) {}

    /** Whether it is drawn or taped half, and opened out. */
    public boolean isOpened() {
        return opened.isPresent();
    }

    /** How many layers of cloth are cut for it. */
    public enum CutLayers {
        /** The cloth lies single. */
        SINGLE,
        /** Both layers at once: two copies, one the mirror image of the other. */
        BOTH,
        /** Both layers on the fold: one copy. */
        ON_FOLD,
        /** Only the upper of two layers: one copy. */
        UPPER
    }

    /** The same with other pins. */
    public LayPiece with(List<PinPoint> newPins) {
        return new LayPiece(
                piece, cut, copy, of, isMirrored, opened, layers, outline, full, newPins);
    }

    /** The same cut from so many layers. */
    public LayPiece with(CutLayers newLayers) {
        return new LayPiece(
                piece, cut, copy, of, isMirrored, opened, newLayers, outline, full, pins);
    }

    /** Its name, with its number where there are several. */
    public String words() {
        String number = layers == CutLayers.BOTH ? copy + " and " + (copy + 1) : "" + copy;
        return of > 1 ? piece.name() + " " + number : piece.name();
    }

    /** How many copies it makes. */
    public int copies() {
        return layers == CutLayers.BOTH ? 2 : 1;
    }

    /** How much cloth it takes, all layers together. */
    public double areaMm2() {
        boolean two = layers == CutLayers.BOTH || layers == CutLayers.ON_FOLD;
        return outline.areaMm2() * (two ? 2 : 1);
    }

    /** Whether it is hidden in wear. */
    public boolean isHidden() {
        return piece.seen() == Piece.Seen.HIDDEN;
    }
}
