package secondbolt.lay.piece;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import secondbolt.shape.Box;
import secondbolt.shape.Outline;
import secondbolt.shape.Region;

/** Pieces cut in two across, with an allowance at the seam for each half. */
public final class Halves {
    private Halves() {}

    /**
     * All pieces, some of them in halves.
     *
     * @param isParted which
     * @param allowanceMm what each half gets at the seam
     */
    public static List<LayPiece> of(
            List<LayPiece> pieces, Predicate<LayPiece> isParted, double allowanceMm) {
        List<LayPiece> parted = new ArrayList<>();
        for (LayPiece piece : pieces) {
            List<LayPiece> halves = isParted.test(piece) ? halves(piece, allowanceMm) : List.of();
            parted.addAll(halves.isEmpty() ? List.of(piece) : halves);
        }
        return List.copyOf(parted);
    }

    /** Nothing if one of them is more than one part, or none. */
    private static List<LayPiece> halves(LayPiece piece, double allowanceMm) {
        Box box = piece.outline().box();
        double middleMm = box.middle().yMm();
        double upperMm = middleMm + allowanceMm - box.topMm();
        Optional<LayPiece> upper =
                part(piece, new Box(box.leftMm(), box.topMm(), box.widthMm(), upperMm));
        Optional<LayPiece> lower =
                part(
                        piece,
                        new Box(
                                box.leftMm(),
                                middleMm - allowanceMm,
                                box.widthMm(),
                                box.bottomMm() - middleMm + allowanceMm));
        return upper.isPresent() && lower.isPresent()
                ? List.of(upper.get(), lower.get())
                : List.of();
    }

    private static Optional<LayPiece> part(LayPiece piece, Box box) {
        List<Outline> outlines = Region.of(piece.outline()).intersection(Region.of(box)).outlines();
        return outlines.stream()
                .max(Comparator.comparingDouble(Outline::areaMm2))
                .filter(outline -> outlines.size() == 1)
                .map(
                        outline ->
                                new LayPiece(
                                        piece.piece(),
                                        Optional.empty(),
                                        piece.copy(),
                                        piece.of(),
                                        piece.isMirrored(),
                                        Optional.empty(),
                                        piece.layers(),
                                        outline,
                                        outline,
                                        List.of()));
    }
}
