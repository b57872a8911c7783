package secondbolt.lay.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.lay.placement.Placement;
import secondbolt.lay.plan.Lies;
import secondbolt.measure.Length;
import secondbolt.shape.Box;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;

/**
 * A piece that found its place.
 *
 * @param piece which copy of which
 * @param cloth the number of its cloth, from 0
 * @param placement how it is turned and moved
 */
public record LaidPiece(LayPiece piece, int cloth, Placement placement) {
    /** Its cutting line on the cloth as it is spread. */
    public Outline outline() {
        return placement.applyTo(piece.outline());
    }

    /** The box round it on the cloth as it is spread. */
    public Box box() {
        return outline().box();
    }

    /** Whether the pattern lies face down. */
    boolean isFaceDown() {
        return piece.isMirrored() != placement.orientation().isMirrored();
    }

    /** How it lies: from which layers it is cut, which side of the pattern is up, and its top. */
    public Lies lies() {
        Lies.Layer layer =
                switch (piece.layers()) {
                    case ON_FOLD -> Lies.Layer.ON_FOLD;
                    case BOTH -> Lies.Layer.BOTH;
                    case UPPER -> Lies.Layer.UPPER;
                    case SINGLE -> piece.isOpened() ? Lies.Layer.OPENED : Lies.Layer.SINGLE;
                };
        return new Lies(layer, Optional.of(isFaceDown()), placement.orientation().turnDegrees());
    }

    /** Its pin points on the cloth as it is spread. */
    public List<PinPoint> pins() {
        return piece.pins().stream().map(pin -> pin.moved(on(pin.at()))).toList();
    }

    /** A point of the piece on the cloth as it is spread. */
    public Point on(Point point) {
        return placement.applyTo(point);
    }

    /**
     * One copy when it is cut.
     *
     * @param number of the copy
     * @param isMirrored whether it is the mirror image
     * @param outline its cutting line on the cloth laid out single, right side up
     */
    public record Copy(int number, boolean isMirrored, Outline outline) {}

    /**
     * The copies it makes, on the cloth laid out single.
     *
     * @param fold how far from the left edge the cloth is folded, if it is
     */
    public List<Copy> copies(Optional<Length> fold) {
        double foldMm = fold.map(Length::millimetres).orElse(0.0);
        Outline lies = placement.applyTo(piece.full());
        List<Copy> copies = new ArrayList<>();
        boolean down = isFaceDown();
        copies.add(
                new Copy(
                        piece.layers() == LayPiece.CutLayers.BOTH && down
                                ? piece.copy() + 1
                                : piece.copy(),
                        down,
                        lies.map(p -> p.moved(foldMm, 0))));
        if (piece.layers() == LayPiece.CutLayers.BOTH) {
            copies.add(
                    new Copy(
                            down ? piece.copy() : piece.copy() + 1,
                            !down,
                            lies.map(p -> new Point(foldMm - p.xMm(), p.yMm()))));
        }
        return copies;
    }
}
