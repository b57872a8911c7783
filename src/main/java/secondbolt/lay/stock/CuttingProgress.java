package secondbolt.lay.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.lay.piece.LayPiece;
import secondbolt.lay.piece.LayPieces;
import secondbolt.lay.placement.Orientation;
import secondbolt.lay.plan.LayPlan;
import secondbolt.shape.Box;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;
import secondbolt.shape.Region;

/**
 * What is cut already, whatever is made of it, and what of the wanted copies is still to be cut.
 *
 * @param plan as the maker wrote it
 * @param copies all copies of all pieces of the pattern
 */
public record CuttingProgress(LayPlan plan, List<LayPiece> copies) {
    /**
     * So much inside the edge of a spoilt piece nothing is laid: the same piece would fit it
     * exactly, and be spoilt again. Our own choice, no source.
     */
    private static final double LEAST_INSIDE_MM = 1;

    /** Copies the list. */
    public CuttingProgress {
        copies = List.copyOf(copies);
    }

    /** What of the wanted copies is not cut from these cloths yet, or was spoilt. */
    List<LayPiece> rest(List<LayPiece> wanted, List<ClothResult> cloths) {
        Set<String> names = cloths.stream().map(ClothResult::name).collect(Collectors.toSet());
        List<LayPiece> rest = new ArrayList<>(wanted);
        for (LayPlan.EarlierCut cut : plan.soFar()) {
            if (names.contains(cut.cloth().value()) && !cut.isSpoilt()) {
                rest.stream()
                        .filter(piece -> isOf(piece, cut))
                        .filter(piece -> piece.isMirrored() == cut.isMirrored())
                        .findFirst()
                        .ifPresent(rest::remove);
            }
        }
        return rest;
    }

    private static boolean isOf(LayPiece piece, LayPlan.EarlierCut cut) {
        return piece.piece().name().equals(cut.piece().value());
    }

    /** What is cut from a cloth. */
    SpreadCloth.Cuts cuts(String cloth) {
        return new SpreadCloth.Cuts(cut(cloth, false), cut(cloth, true));
    }

    private List<Outline> cut(String cloth, boolean spoilt) {
        return plan.soFar().stream()
                .filter(cut -> cut.cloth().value().equals(cloth) && cut.isSpoilt() == spoilt)
                .flatMap(cut -> outline(cut).stream())
                .toList();
    }

    private Optional<Outline> outline(LayPlan.EarlierCut cut) {
        UnaryOperator<Point> side =
                cut.isMirrored() ? LayPieces.MIRROR : UnaryOperator.<Point>identity();
        return copies.stream()
                .filter(piece -> isOf(piece, cut) && !piece.isMirrored())
                .findFirst()
                .map(piece -> lying(piece.outline().map(side), cut));
    }

    /**
     * What is gone from a cloth, with the gap round it; of a spoilt piece the gap alone, inside it
     * too.
     */
    Region gone(String cloth) {
        double gapMm = plan.gapOrUsual().millimetres();
        SpreadCloth.Cuts cuts = cuts(cloth);
        List<Region> gone = new ArrayList<>();
        cuts.holes().forEach(hole -> gone.add(hole.grown(gapMm)));
        for (Outline piece : cuts.spoilt()) {
            gone.add(piece.grown(gapMm).minus(piece.shrunk(Math.max(gapMm, LEAST_INSIDE_MM))));
        }
        return Region.union(gone);
    }

    /** Turned, with its box where she says. */
    private static Outline lying(Outline outline, LayPlan.EarlierCut cut) {
        Outline turned = Orientation.turned(cut.turnDegrees()).applyTo(outline);
        Box box = turned.box();
        return turned.map(
                point -> point.moved(cut.at().xMm() - box.leftMm(), cut.at().yMm() - box.topMm()));
    }
}
