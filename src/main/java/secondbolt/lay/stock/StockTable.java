package secondbolt.lay.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.garment.Role;
import secondbolt.lay.kept.LayCache;
import secondbolt.lay.piece.FoldedPieces;
import secondbolt.lay.piece.LaidPiece;
import secondbolt.lay.piece.LayPiece;
import secondbolt.lay.piece.PinPoint;
import secondbolt.lay.placement.Effort;
import secondbolt.lay.placement.Goal;
import secondbolt.lay.placement.Lay;
import secondbolt.lay.placement.Placement;
import secondbolt.lay.placement.WrittenPlace;
import secondbolt.shape.Box;
import secondbolt.shape.Point;
import secondbolt.shape.Region;

/**
 * Spreads the cloths of a role and lays pieces on them, round what is cut already.
 *
 * @param progress what is cut already
 * @param lays searches them
 */
public record StockTable(CuttingProgress progress, LayCache lays) {
    /** What fits exactly may exceed its cloth by the last bits of its coordinates. */
    private static final double SAME_SHARE = 1e-9;

    /** Those of the cloths that a piece could lie on, the largest first. */
    private List<SpreadCloth> spreads(List<ClothResult> cloths, boolean folded) {
        return cloths.stream()
                .map(cloth -> SpreadCloth.single(cloth, progress))
                .map(spread -> folded ? spread.folded() : spread)
                .filter(SpreadCloth::isUsable)
                .sorted(Comparator.comparingDouble((SpreadCloth s) -> -s.sound().areaMm2()))
                .toList();
    }

    /** The nap and pattern that cloth from the bolt should have, as the largest of these. */
    public Optional<SpreadCloth> likeOf(List<ClothResult> cloths) {
        return spreads(cloths, false).stream().findFirst();
    }

    /** Whether pieces are larger than all sound cloth, so that no lay need be looked for. */
    public boolean isTooMuch(Role role, List<ClothResult> cloths, List<LayPiece> wanted) {
        double area =
                progress.rest(wanted, role).stream().mapToDouble(p -> p.outline().areaMm2()).sum();
        double sound =
                spreads(cloths, false).stream()
                        .mapToDouble(s -> s.soundForHidden().areaMm2())
                        .sum();
        return area > sound * (1 + SAME_SHARE);
    }

    /**
     * Lays pieces, wherever they find room.
     *
     * @param cloths whose size is known
     * @param wanted single copies, those that are cut already among them
     */
    public StockLay lay(
            Role role,
            List<ClothResult> cloths,
            List<LayPiece> wanted,
            Trial trial,
            Effort effort) {
        return layRest(role, cloths, progress.rest(wanted, role), trial, effort);
    }

    /**
     * Lays pieces; those that are pinned keep their places as far as they can, and the rest is laid
     * round them.
     *
     * @param cloths whose size is known
     * @param wanted single copies, those that are cut already among them
     */
    public StockLay layPinned(
            Role role,
            List<ClothResult> cloths,
            List<LayPiece> wanted,
            Trial trial,
            Effort effort) {
        Spread spread = spread(role, cloths, progress.rest(wanted, role), trial);
        List<String> names = wanted.stream().map(piece -> piece.piece().name()).toList();
        Pinned pinned = PinnedPlaces.of(progress, spread.stock(), spread.rest(), names, trial);
        return lay(spread, pinned, trial, effort);
    }

    /**
     * Lays what is missing on what is left of the cloths.
     *
     * @param cloths whose size is known
     * @param single single copies, none of which is cut yet
     */
    public StockLay layRest(
            Role role,
            List<ClothResult> cloths,
            List<LayPiece> single,
            Trial trial,
            Effort effort) {
        return lay(spread(role, cloths, single, trial), Pinned.NONE, trial, effort);
    }

    /** Cloths as they are spread, and what is to be laid on them as it is cut from them. */
    private record Spread(Stock stock, List<LayPiece> rest) {}

    private Spread spread(Role role, List<ClothResult> cloths, List<LayPiece> single, Trial trial) {
        return new Spread(
                stock(role, cloths, spreads(cloths, trial.isFolded())),
                trial.isFolded() ? FoldedPieces.of(single) : single);
    }

    private Stock stock(Role role, List<ClothResult> cloths, List<SpreadCloth> spreads) {
        return new Stock(role, spreads, progress.fixed(role, cloths));
    }

    private StockLay lay(Spread spread, Pinned pinned, Trial trial, Effort effort) {
        Stock stock = spread.stock();
        List<LayPiece> rest = spread.rest();
        List<Integer> kept = pinned.kept().stream().map(Placement::item).toList();
        List<Integer> free =
                IntStream.range(0, rest.size()).filter(i -> !kept.contains(i)).boxed().toList();
        List<Integer> open = new ArrayList<>();
        List<SpreadCloth> left = new ArrayList<>();
        for (int i = 0; i < stock.spreads().size(); i++) {
            SpreadCloth beside = stock.spreads().get(i).without(taken(pinned, i, rest, trial));
            if (beside.isUsable()) {
                open.add(i);
                left.add(beside);
            }
        }
        Lay found =
                StockSearch.search(
                        lays,
                        stock.with(left, fixed(pinned, rest, stock)),
                        free.stream().map(rest::get).toList(),
                        trial,
                        effort,
                        Goal.REMNANT);
        List<Placement> all = new ArrayList<>(pinned.kept());
        for (Placement p : found.placements()) {
            Placement own = p.of(free.get(p.item()), open.get(p.container()));
            all.add(WrittenPlace.rounded(own, rest.get(own.item()).outline()));
        }
        Matching matching = Matching.of(trial, rest, stock);
        List<LayPiece> leftOver =
                found.leftOver().stream().map(i -> rest.get(free.get(i))).toList();
        return new StockLay(
                stock.role(),
                stock.spreads(),
                all.stream()
                        .map(p -> new LaidPiece(pinned(rest, p.item(), matching), p.container(), p))
                        .toList(),
                leftOver,
                Lack.of(leftOver, stock, trial),
                matching.unmet(),
                matching.apart(),
                pinned,
                found.isFinished());
    }

    /** The pinned pieces as copies that have their place. */
    private static List<Stock.Fixed> fixed(Pinned pinned, List<LayPiece> rest, Stock stock) {
        return pinned.kept().stream()
                .map(
                        p -> {
                            SpreadCloth on = stock.spreads().get(p.container());
                            return new Stock.Fixed(
                                    rest.get(p.item()),
                                    on.name(),
                                    on.repeat(),
                                    p.orientation().turnDegrees(),
                                    Optional.of(new Point(p.acrossMm(), p.alongMm())));
                        })
                .toList();
    }

    /** What the pinned pieces of a cloth take of it, with the gap round them. */
    private static Region taken(Pinned pinned, int cloth, List<LayPiece> rest, Trial trial) {
        double gapMm = trial.gap().millimetres();
        return Region.union(
                pinned.kept().stream()
                        .filter(p -> p.container() == cloth)
                        .map(p -> p.applyTo(rest.get(p.item()).outline()).grown(gapMm))
                        .toList());
    }

    /** With the places where it meets others. */
    private static LayPiece pinned(List<LayPiece> pieces, int number, Matching matching) {
        LayPiece piece = pieces.get(number);
        if (!matching.isAny() || !matching.isMatched(number)) {
            return piece;
        }
        List<PinPoint> pins = new ArrayList<>(piece.pins());
        pins.addAll(matching.points(number));
        return piece.with(pins);
    }

    /**
     * How much longer the largest cloth would have to be for all pieces to be laid, as far as a
     * quick search finds; nothing if that is not found either, or is no longer than it is.
     */
    public Optional<Double> lackMm(
            Role role, List<ClothResult> cloths, List<LayPiece> wanted, Trial trial) {
        List<LayPiece> single = progress.rest(wanted, role);
        List<LayPiece> rest = trial.isFolded() ? FoldedPieces.of(single) : single;
        List<SpreadCloth> spreads = new ArrayList<>(spreads(cloths, trial.isFolded()));
        SpreadCloth largest = spreads.remove(0);
        Box box = largest.soundForHidden().box();
        double area = rest.stream().mapToDouble(p -> p.outline().areaMm2()).sum();
        double longest =
                rest.stream()
                        .map(p -> p.outline().box())
                        .mapToDouble(b -> Math.max(b.widthMm(), b.heightMm()))
                        .max()
                        .orElse(0);
        spreads.add(largest.longer(2 * area / box.widthMm() + 2 * longest));
        Stock stock = stock(role, cloths, spreads);
        Lay lay = StockSearch.search(lays, stock, rest, trial, Effort.QUICK, Goal.SHORT);
        double reach =
                lay.placements().stream()
                        .filter(p -> p.container() == spreads.size() - 1)
                        .mapToDouble(p -> p.applyTo(rest.get(p.item()).outline()).box().bottomMm())
                        .max()
                        .orElse(0);
        double lack = reach - box.bottomMm();
        return lay.leftOver().isEmpty() && lack > 0 ? Optional.of(lack) : Optional.empty();
    }
}
