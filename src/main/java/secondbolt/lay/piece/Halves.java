package secondbolt.lay.piece;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import secondbolt.shape.Box;
import secondbolt.shape.Outline;
import secondbolt.shape.Region;

/**
 * Pieces cut in parts, with an allowance on both sides of every seam: in two across, or in panels
 * side by side, with seams down the piece as it is drawn.
 */
public final class Halves {
    private Halves() {}

    /** Which way the new seams run. */
    public enum Seams {
        /** Across the piece as it is drawn, in the middle of its length. */
        ACROSS,
        /** Down the piece as it is drawn; in two parts, in the middle of its width. */
        DOWN
    }

    /**
     * All pieces, some of them in parts.
     *
     * @param isParted which
     * @param seams which way they are parted
     * @param count in how many equal parts, from 2
     * @param allowanceMm what each part gets at a seam
     */
    public static List<LayPiece> of(
            List<LayPiece> pieces,
            Predicate<LayPiece> isParted,
            Seams seams,
            int count,
            double allowanceMm) {
        List<LayPiece> parted = new ArrayList<>();
        for (LayPiece piece : pieces) {
            List<LayPiece> parts =
                    isParted.test(piece) ? parts(piece, seams, count, allowanceMm) : List.of();
            parted.addAll(parts.isEmpty() ? List.of(piece) : parts);
        }
        return List.copyOf(parted);
    }

    /** Nothing if one of them is more than one part, or none. */
    private static List<LayPiece> parts(
            LayPiece piece, Seams seams, int count, double allowanceMm) {
        List<LayPiece> parts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Box box = box(piece.outline().box(), seams, i, count, allowanceMm);
            part(piece, box).ifPresent(parts::add);
        }
        if (parts.size() < count) {
            return List.of();
        }
        // A mirror image begins at the other side, so that the parts of a pair come in one order.
        if (piece.isMirrored() && seams == Seams.DOWN) {
            Collections.reverse(parts);
        }
        return parts;
    }

    /** Where one part lies, with its allowance beyond each seam. */
    private static Box box(Box whole, Seams seams, int number, int count, double allowanceMm) {
        double beforeMm = number > 0 ? allowanceMm : 0;
        double afterMm = number < count - 1 ? allowanceMm : 0;
        if (seams == Seams.DOWN) {
            double stepMm = whole.widthMm() / count;
            return new Box(
                    whole.leftMm() + number * stepMm - beforeMm,
                    whole.topMm(),
                    stepMm + beforeMm + afterMm,
                    whole.heightMm());
        }
        double stepMm = whole.heightMm() / count;
        return new Box(
                whole.leftMm(),
                whole.topMm() + number * stepMm - beforeMm,
                whole.widthMm(),
                stepMm + beforeMm + afterMm);
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
