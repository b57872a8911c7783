package secondbolt.lay.stock;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.cloth.yields.ClothYield;
import secondbolt.cutting.line.EarlierPiece;
import secondbolt.garment.Role;
import secondbolt.lay.piece.FoldedPieces;
import secondbolt.lay.piece.LayPiece;
import secondbolt.lay.piece.LayPieces;
import secondbolt.lay.placement.Orientation;
import secondbolt.lay.plan.LayPlan;
import secondbolt.lay.plan.Lies;
import secondbolt.lay.plan.Placing;
import secondbolt.measure.Length;
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
 * @param cut every copy that is cut, in the order written: which side up is told of each, and two
 *     that were cut at once from both layers are two
 * @param roles what each cloth is for, by its name
 * @param folds where each cloth is folded if it is, from its left edge, by its name
 */
public record CuttingProgress(
        LayPlan plan,
        LayPieces pieces,
        List<LayPiece> copies,
        List<Placing> cut,
        Map<String, Role> roles,
        Map<String, Length> folds) {
    /**
     * So much inside the edge of a spoilt piece nothing is laid: the same piece would fit it
     * exactly, and be spoilt again. Our own choice, no source.
     */
    private static final double LEAST_INSIDE_MM = 1;

    /** Copies all. */
    public CuttingProgress {
        copies = List.copyOf(copies);
        cut = List.copyOf(cut);
        roles = Map.copyOf(roles);
        folds = Map.copyOf(folds);
    }

    /** What is cut already of the cloths there are. */
    public static CuttingProgress of(
            LayPlan plan, LayPieces pieces, List<LayPiece> copies, List<ClothResult> cloths) {
        Map<String, Role> roles = new HashMap<>();
        Map<String, Length> folds = new HashMap<>();
        for (ClothResult cloth : cloths) {
            roles.put(cloth.name(), cloth.cloth().textile().roleOrMain());
            cloth.finished().ifPresent(f -> folds.put(cloth.name(), SpreadCloth.foldOf(f.whole())));
        }
        List<Placing> cut =
                plan.soFar().stream().flatMap(one -> copies(one, copies).stream()).toList();
        return new CuttingProgress(plan, pieces, copies, cut, roles, folds);
    }

    /** What was cut at once from both layers is two copies, one the mirror image of the other. */
    private static List<Placing> copies(Placing cut, List<LayPiece> copies) {
        boolean isDown =
                cut.lies()
                        .isFaceDown()
                        .orElseGet(
                                () ->
                                        copies.stream()
                                                .anyMatch(c -> isSame(c, cut) && c.isMirrored()));
        Lies lies = cut.lies().facing(isDown);
        if (lies.layer() != Lies.Layer.BOTH) {
            return List.of(cut.lying(lies, cut.copy()));
        }
        Optional<Integer> other = cut.copy().map(number -> number + 1);
        return List.of(
                cut.lying(lies.from(Lies.Layer.UPPER), isDown ? other : cut.copy()),
                cut.lying(
                        lies.facing(!isDown).from(Lies.Layer.LOWER), isDown ? cut.copy() : other));
    }

    private static boolean isSame(LayPiece piece, Placing cut) {
        return isOf(piece, cut) && cut.copy().filter(n -> n == piece.copy()).isPresent();
    }

    /** What of the wanted copies is not cut of the cloths of a role yet, or was spoilt. */
    public List<LayPiece> rest(List<LayPiece> wanted, Role role) {
        return served(wanted, role, new LinkedHashMap<>());
    }

    /**
     * Takes from wanted copies those that are cut.
     *
     * @param served told which copy each that is cut is
     * @return the others
     */
    private List<LayPiece> served(List<LayPiece> wanted, Role role, Map<LayPiece, Placing> served) {
        List<LayPiece> rest = new ArrayList<>(wanted);
        List<Placing> others = new ArrayList<>();
        for (Placing one : sound(role)) {
            Optional<LayPiece> same =
                    ofHand(rest, one)
                            .filter(piece -> isSame(piece, one))
                            .findFirst()
                            .or(() -> ofHand(rest, one).findFirst());
            same.ifPresentOrElse(piece -> take(piece, one, rest, served), () -> others.add(one));
        }
        // What has no hand serves as either.
        for (Placing one : others) {
            rest.stream()
                    .filter(piece -> isOf(piece, one))
                    .filter(FoldedPieces::isItsOwnMirrorImage)
                    .findFirst()
                    .ifPresent(piece -> take(piece, one, rest, served));
        }
        return rest;
    }

    private static void take(
            LayPiece piece, Placing cut, List<LayPiece> rest, Map<LayPiece, Placing> served) {
        rest.remove(piece);
        served.put(piece, cut);
    }

    /** The copies that are cut of the cloths of a role and not spoilt, with their places. */
    List<Stock.Fixed> fixed(Role role, List<ClothResult> cloths) {
        Map<LayPiece, Placing> served = new LinkedHashMap<>();
        served(pieces.of(role, any -> true), role, served);
        List<Stock.Fixed> fixed = new ArrayList<>();
        served.forEach(
                (piece, cut) ->
                        cloths.stream()
                                .filter(cloth -> cloth.name().equals(cut.cloth().value()))
                                .flatMap(cloth -> cloth.finished().stream())
                                .forEach(y -> fixed.add(fixed(piece, cut, y))));
        return fixed;
    }

    private Stock.Fixed fixed(LayPiece piece, Placing cut, ClothYield yielded) {
        int turn = cut.lies().turnDegrees();
        Box own = Orientation.turned(turn).applyTo(piece.outline()).box();
        boolean isAsDrawn = piece.isMirrored() == cut.isMirrored() && asCut(cut).isEmpty();
        Optional<Point> at =
                outline(cut)
                        .filter(outline -> isAsDrawn)
                        .map(Outline::box)
                        .map(b -> new Point(b.leftMm() - own.leftMm(), b.topMm() - own.topMm()));
        return new Stock.Fixed(piece, cut.cloth().value(), yielded.repeat(), turn, at);
    }

    private static Stream<LayPiece> ofHand(List<LayPiece> pieces, Placing cut) {
        return pieces.stream()
                .filter(piece -> isOf(piece, cut))
                .filter(piece -> piece.isMirrored() == cut.servesMirrored());
    }

    /** What is cut of the cloths of a role and was not spoilt, in the order written. */
    public List<Placing> sound(Role role) {
        return cut.stream()
                .filter(one -> !one.isSpoilt() && roles.get(one.cloth().value()) == role)
                .toList();
    }

    private static boolean isOf(LayPiece piece, Placing cut) {
        return piece.piece().name().equals(cut.piece().value());
    }

    /** What is cut from a cloth. */
    SpreadCloth.Cuts cuts(String cloth) {
        return new SpreadCloth.Cuts(
                plan.soFar().stream()
                        .filter(one -> one.cloth().value().equals(cloth) && !one.isSpoilt())
                        .map(this::hole)
                        .filter(hole -> !hole.region().isEmpty())
                        .toList(),
                cut(cloth, true).stream().map(Region::of).toList());
    }

    private SpreadCloth.Hole hole(Placing cut) {
        List<Placing> single = copies(cut, copies);
        return new SpreadCloth.Hole(
                cut.words(),
                cut.lies().facing(single.get(0).isMirrored()),
                Region.union(
                        single.stream()
                                .flatMap(one -> outlines(one).stream())
                                .map(Region::of)
                                .toList()));
    }

    private List<Outline> cut(String cloth, boolean spoilt) {
        return cut.stream()
                .filter(one -> one.cloth().value().equals(cloth) && one.isSpoilt() == spoilt)
                .flatMap(one -> outlines(one).stream())
                .toList();
    }

    /**
     * Where it was cut, on the trimmed and washed cloth laid out single; nothing of a piece that is
     * cut of nothing, or whose cutting line crosses itself.
     */
    public Optional<Outline> outline(Placing cut) {
        return outlines(cut).stream().findFirst();
    }

    /** In the shape it was cut in; in either, where it is not told which alterations it had. */
    private List<Outline> outlines(Placing cut) {
        List<Outline> shapes = new ArrayList<>();
        if (cut.altered().isEmpty() || asCut(cut).isEmpty()) {
            copies.stream()
                    .filter(piece -> isOf(piece, cut) && !piece.isMirrored())
                    .findFirst()
                    .ifPresent(piece -> shapes.add(piece.outline()));
        }
        asCut(cut).flatMap(pieces::of).ifPresent(shapes::add);
        return shapes.stream().map(shape -> lying(shape, cut)).toList();
    }

    /** What it was cut as, if that is not what the pattern has now. */
    private Optional<EarlierPiece> asCut(Placing cut) {
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
        List<Region> gone = new ArrayList<>();
        cut(cloth, false).forEach(hole -> gone.add(hole.grown(gapMm)));
        for (Outline piece : cut(cloth, true)) {
            gone.add(piece.grown(gapMm).minus(piece.shrunk(Math.max(gapMm, LEAST_INSIDE_MM))));
        }
        return Region.union(gone);
    }

    /**
     * Where nothing may lie that is still whole: what is cut out, and the line round a spoilt
     * piece.
     */
    Region taken(String cloth) {
        List<Region> taken = new ArrayList<>();
        cut(cloth, false).forEach(hole -> taken.add(Region.of(hole)));
        for (Outline piece : cut(cloth, true)) {
            taken.add(Region.of(piece).minus(piece.shrunk(LEAST_INSIDE_MM)));
        }
        return Region.union(taken);
    }

    /** Turned, with its box where she says. */
    private Outline lying(Outline outline, Placing cut) {
        Lies lies = cut.lies();
        double foldMm =
                Optional.ofNullable(folds.get(cut.cloth().value()))
                        .map(Length::millimetres)
                        .orElse(0.0);
        // The lower layer is cut as the upper one would be with the pattern's other side up.
        boolean isBelow = lies.layer() == Lies.Layer.LOWER;
        Outline facing = cut.isMirrored() == isBelow ? outline : outline.map(LayPieces.MIRROR);
        Outline turned = Orientation.turned(lies.turnDegrees()).applyTo(facing);
        Box box = turned.box();
        double leftMm =
                switch (lies.layer()) {
                    case SINGLE, OPENED -> cut.at().xMm();
                    case ON_FOLD -> foldMm - box.widthMm() / 2;
                    case BOTH, UPPER, LOWER -> foldMm + cut.at().xMm();
                };
        Outline lying =
                turned.map(p -> p.moved(leftMm - box.leftMm(), cut.at().yMm() - box.topMm()));
        return isBelow ? lying.map(p -> new Point(2 * foldMm - p.xMm(), p.yMm())) : lying;
    }
}
