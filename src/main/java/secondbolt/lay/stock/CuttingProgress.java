package secondbolt.lay.stock;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.cutting.line.EarlierPiece;
import secondbolt.garment.Role;
import secondbolt.lay.piece.FoldedPieces;
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
 * @param pieces the pieces with their cutting lines
 * @param copies all copies of all pieces of the pattern
 * @param roles what each cloth is for, by its name
 */
public record CuttingProgress(
        LayPlan plan, LayPieces pieces, List<LayPiece> copies, Map<String, Role> roles) {
    /**
     * So much inside the edge of a spoilt piece nothing is laid: the same piece would fit it
     * exactly, and be spoilt again. Our own choice, no source.
     */
    private static final double LEAST_INSIDE_MM = 1;

    /** Copies both. */
    public CuttingProgress {
        copies = List.copyOf(copies);
        roles = Map.copyOf(roles);
    }

    /** What is cut already of the cloths there are. */
    public static CuttingProgress of(
            LayPlan plan, LayPieces pieces, List<LayPiece> copies, List<ClothResult> cloths) {
        Map<String, Role> roles = new HashMap<>();
        cloths.forEach(c -> roles.put(c.name(), c.cloth().textile().roleOrMain()));
        return new CuttingProgress(plan, pieces, copies, roles);
    }

    /** What of the wanted copies is not cut of the cloths of a role yet, or was spoilt. */
    public List<LayPiece> rest(List<LayPiece> wanted, Role role) {
        List<LayPiece> rest = new ArrayList<>(wanted);
        List<LayPlan.EarlierCut> others = new ArrayList<>();
        for (LayPlan.EarlierCut cut : sound(role)) {
            Optional<LayPiece> same =
                    rest.stream()
                            .filter(piece -> isOf(piece, cut))
                            .filter(piece -> piece.isMirrored() == cut.servesMirrored())
                            .findFirst();
            same.ifPresentOrElse(rest::remove, () -> others.add(cut));
        }
        // What has no hand serves as either.
        for (LayPlan.EarlierCut cut : others) {
            rest.stream()
                    .filter(piece -> isOf(piece, cut))
                    .filter(FoldedPieces::isItsOwnMirrorImage)
                    .findFirst()
                    .ifPresent(rest::remove);
        }
        return rest;
    }

    /** What is cut of the cloths of a role and was not spoilt, in the order written. */
    public List<LayPlan.EarlierCut> sound(Role role) {
        return plan.soFar().stream()
                .filter(cut -> !cut.isSpoilt() && roles.get(cut.cloth().value()) == role)
                .toList();
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
                .flatMap(cut -> outlines(cut).stream())
                .toList();
    }

    /**
     * Where it was cut, on the trimmed and washed cloth laid out single; nothing of a piece that is
     * cut of nothing, or whose cutting line crosses itself.
     */
    public Optional<Outline> outline(LayPlan.EarlierCut cut) {
        return outlines(cut).stream().findFirst();
    }

    /** In the shape it was cut in; in either, where it is not told which alterations it had. */
    private List<Outline> outlines(LayPlan.EarlierCut cut) {
        UnaryOperator<Point> side =
                cut.isMirrored() ? LayPieces.MIRROR : UnaryOperator.<Point>identity();
        List<Outline> shapes = new ArrayList<>();
        if (cut.altered().isEmpty() || asCut(cut).isEmpty()) {
            copies.stream()
                    .filter(piece -> isOf(piece, cut) && !piece.isMirrored())
                    .findFirst()
                    .ifPresent(piece -> shapes.add(piece.outline()));
        }
        asCut(cut).flatMap(pieces::of).ifPresent(shapes::add);
        return shapes.stream().map(shape -> lying(shape.map(side), cut)).toList();
    }

    /** What it was cut as, if that is not what the pattern has now. */
    private Optional<EarlierPiece> asCut(LayPlan.EarlierCut cut) {
        return pieces.cutting().earlier().stream()
                .filter(earlier -> earlier.piece().name().equals(cut.piece().value()))
                .filter(earlier -> earlier.had().equals(cut.altered()))
                .findFirst();
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
