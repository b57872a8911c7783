package secondbolt.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.lay.search.Placed;
import secondbolt.shape.Box;
import secondbolt.shape.Outline;
import secondbolt.shape.Region;

/**
 * What is cut already, and what of the wanted copies is still to be cut.
 *
 * @param plan as the maker wrote it
 * @param wanted all copies of a role
 */
record SoFar(LayPlan plan, List<LayPiece> wanted) {
    /** The copies that are still to be cut. */
    List<LayPiece> rest() {
        List<LayPiece> rest = new ArrayList<>(wanted);
        for (LayPlan.CutAlready cut : plan.soFar()) {
            copy(rest, cut).ifPresent(rest::remove);
        }
        return rest;
    }

    private static Optional<LayPiece> copy(List<LayPiece> pieces, LayPlan.CutAlready cut) {
        return pieces.stream().filter(piece -> isCopy(piece, cut)).findFirst();
    }

    static boolean isCopy(LayPiece piece, LayPlan.CutAlready cut) {
        return piece.piece().name().equals(cut.piece().value())
                && piece.isMirrored() == cut.isMirrored();
    }

    /** What is gone from a cloth, with the gap round it. */
    Region cutFrom(String cloth) {
        List<Region> gone = new ArrayList<>();
        for (LayPlan.CutAlready cut : plan.soFar()) {
            if (cut.cloth().value().equals(cloth)) {
                copy(wanted, cut).ifPresent(piece -> gone.add(grown(piece.outline(), cut)));
            }
        }
        return Region.union(gone);
    }

    private Region grown(Outline outline, LayPlan.CutAlready cut) {
        return lying(outline, cut).grown(plan.gapOrUsual().millimetres());
    }

    /** Turned, with its box where she says. */
    static Outline lying(Outline outline, LayPlan.CutAlready cut) {
        Placed turned = new Placed(0, 0, cut.turnDegrees(), 0, 0);
        Box box = turned.lying(outline).box();
        return new Placed(
                        0,
                        0,
                        cut.turnDegrees(),
                        cut.at().xMm() - box.leftMm(),
                        cut.at().yMm() - box.topMm())
                .lying(outline);
    }
}
