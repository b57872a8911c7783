package secondbolt.lay.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.cloth.yields.BoltWidth;
import secondbolt.garment.Role;
import secondbolt.lay.kept.LayCache;
import secondbolt.lay.piece.FoldedPieces;
import secondbolt.lay.piece.LayPiece;
import secondbolt.lay.placement.Effort;
import secondbolt.lay.placement.Goal;
import secondbolt.lay.placement.Lay;
import secondbolt.lay.plan.Interfacing;
import secondbolt.lay.plan.LayPlan;
import secondbolt.lay.stock.SpreadCloth;
import secondbolt.lay.stock.Stock;
import secondbolt.lay.stock.StockSearch;
import secondbolt.lay.stock.Trial;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/**
 * How long cloth from the bolt would have to be, with the nap and the pattern of the cloth there
 * is.
 */
public final class BoltSearch {
    /**
     * Widths that interfacing is sold in.
     *
     * <p>Source: 20 in and upward (Interfacings, EM014, Washington State University Extension); 36
     * and 45 in, and the metric neighbours, are from memory.
     */
    private static final List<BoltWidth> OF_INTERFACING =
            List.of(
                    new BoltWidth(Length.ofMillimetres(500), Tape.CENTIMETRE),
                    new BoltWidth(Length.ofMillimetres(900), Tape.CENTIMETRE),
                    new BoltWidth(Length.ofInches(20, 1), Tape.INCH),
                    new BoltWidth(Length.ofInches(36, 1), Tape.INCH),
                    new BoltWidth(Length.ofInches(45, 1), Tape.INCH));

    private final LayCache lays;
    private final LayPlan plan;
    private final Tape tape;

    BoltSearch(LayCache lays, LayPlan plan, Tape tape) {
        this.lays = lays;
        this.plan = plan;
        this.tape = tape;
    }

    /**
     * The lengths at all widths that are asked for, the narrow ones first.
     *
     * @param wanted single copies
     * @param like a cloth whose nap and pattern the bolt has
     */
    List<BoltLength> lengths(Role role, List<LayPiece> wanted, Optional<SpreadCloth> like) {
        return noneLonger(
                role == Role.INTERFACING ? interfacing(wanted, like) : cloth(role, wanted, like));
    }

    /**
     * A lay on a narrower bolt can be cut of a wider one as it is: the better of the two counts.
     */
    private static List<BoltLength> noneLonger(List<BoltLength> narrowFirst) {
        List<BoltLength> lengths = new ArrayList<>();
        for (BoltLength bolt : narrowFirst) {
            lengths.add(lengths.isEmpty() ? bolt : bolt.atMost(lengths.get(lengths.size() - 1)));
        }
        return lengths;
    }

    private List<BoltLength> cloth(Role role, List<LayPiece> wanted, Optional<SpreadCloth> like) {
        List<BoltLength> lengths = new ArrayList<>();
        for (Length width : widths(role)) {
            Trial trial = Trial.asWritten(plan);
            lengths.add(
                    length(
                            role,
                            width,
                            new BoltWidth(width, tape).cuttable(),
                            wanted,
                            like,
                            trial));
        }
        return lengths;
    }

    private List<Length> widths(Role role) {
        List<Length> widths = new ArrayList<>(onTape(BoltWidth.COMMON));
        plan.rules()
                .newCloth()
                .map(cloth -> cloth.width())
                .filter(width -> role == Role.MAIN && !widths.contains(width))
                .ifPresent(widths::add);
        widths.sort(null);
        return widths;
    }

    /** Interfacing has no selvage that is left, and lies single. */
    private List<BoltLength> interfacing(List<LayPiece> wanted, Optional<SpreadCloth> like) {
        List<Length> widths =
                plan.interfacing()
                        .flatMap(Interfacing::width)
                        .map(List::of)
                        .orElse(onTape(OF_INTERFACING));
        boolean anyWay = plan.interfacing().map(Interfacing::isNonwoven).orElse(false);
        Trial trial = Trial.ofInterfacing(plan, wanted, anyWay);
        return widths.stream()
                .map(w -> length(Role.INTERFACING, w, w, wanted, like, trial))
                .toList();
    }

    private List<Length> onTape(List<BoltWidth> widths) {
        return widths.stream().filter(bolt -> bolt.tape() == tape).map(BoltWidth::width).toList();
    }

    private BoltLength length(
            Role role,
            Length width,
            Length cuttable,
            List<LayPiece> single,
            Optional<SpreadCloth> like,
            Trial trial) {
        double area = single.stream().mapToDouble(LayPiece::areaMm2).sum();
        double longest =
                single.stream()
                        .map(p -> p.outline().box())
                        .mapToDouble(b -> Math.max(b.widthMm(), b.heightMm()))
                        .max()
                        .orElse(0);
        double repeat = like.map(s -> s.repeat().alongMm()).orElse(0.0);
        double lengthMm = 2 * area / cuttable.millimetres() + 2 * longest + single.size() * repeat;
        SpreadCloth bolt = SpreadCloth.fromBolt(cuttable, lengthMm, like);
        Stock stock = new Stock(role, List.of(trial.isFolded() ? bolt.folded() : bolt));
        List<LayPiece> wanted = trial.isFolded() ? FoldedPieces.of(single) : single;
        Lay lay = StockSearch.search(lays, stock, wanted, trial, Effort.QUICK, Goal.SHORT);
        if (!lay.leftOver().isEmpty()) {
            return new BoltLength(role, width, cuttable, Optional.empty(), Optional.empty());
        }
        double reach =
                lay.placements().stream()
                        .mapToDouble(
                                p -> p.applyTo(wanted.get(p.item()).outline()).box().bottomMm())
                        .max()
                        .orElse(0);
        Length length = Length.ofComputedMillimetres(reach).roundedUpTo(Length.ofMillimetres(1));
        return new BoltLength(
                role,
                width,
                cuttable,
                Optional.of(length),
                Optional.of(length.roundedUpTo(tape.shopStep())));
    }
}
