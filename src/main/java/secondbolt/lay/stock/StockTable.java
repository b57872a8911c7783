package secondbolt.lay.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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
import secondbolt.shape.Box;

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
     * Lays pieces.
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
        Stock stock = new Stock(role, spreads(cloths, trial.isFolded()));
        List<LayPiece> rest = trial.isFolded() ? FoldedPieces.of(single) : single;
        StockSearch.Outcome found =
                StockSearch.search(lays, stock, rest, trial, effort, Goal.REMNANT);
        Lay lay = found.lay();
        List<LaidPiece> laid =
                lay.placements().stream()
                        .map(
                                p ->
                                        new LaidPiece(
                                                pinned(rest, p.item(), found.matching()),
                                                p.container(),
                                                p))
                        .toList();
        List<LayPiece> leftOver = lay.leftOver().stream().map(rest::get).toList();
        return new StockLay(
                role,
                stock.spreads(),
                laid,
                leftOver,
                Lack.of(leftOver, stock, trial),
                found.matching().unmet(),
                lay.isFinished());
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
        Stock stock = new Stock(role, spreads);
        Lay lay = StockSearch.search(lays, stock, rest, trial, Effort.QUICK, Goal.SHORT).lay();
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
