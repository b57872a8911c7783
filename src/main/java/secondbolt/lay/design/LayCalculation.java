package secondbolt.lay.design;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.cutting.line.CuttingResult;
import secondbolt.garment.Role;
import secondbolt.lay.kept.LayCache;
import secondbolt.lay.kept.LayDesk;
import secondbolt.lay.log.CutLog;
import secondbolt.lay.piece.LayPiece;
import secondbolt.lay.piece.LayPieces;
import secondbolt.lay.placement.Effort;
import secondbolt.lay.plan.Design;
import secondbolt.lay.plan.LayPlan;
import secondbolt.lay.stock.CuttingProgress;
import secondbolt.lay.stock.StockLay;
import secondbolt.lay.stock.StockTable;
import secondbolt.lay.stock.Trial;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding;

/** Lays every design on the cloths there are, and on cloth from the bolt. */
public final class LayCalculation {
    /** The design that is meant where the file tells of none. */
    static final String ALL_PIECES = "all pieces";

    private final List<ClothResult> cloths;
    private final LayPieces pieces;
    private final LayPlan plan;
    private final Tape tape;
    private final CuttingProgress progress;
    private final StockTable table;
    private final BoltSearch bolts;
    private final LayRemedies remedies;
    private final RemnantCache remnants;

    private LayCalculation(
            List<ClothResult> cloths,
            CuttingResult cutting,
            LayPlan plan,
            Tape tape,
            LayDesk desk) {
        this.cloths = List.copyOf(cloths);
        this.pieces = new LayPieces(cutting);
        this.plan = plan.namedBy(pieces.byName().keySet());
        this.tape = tape;
        this.progress =
                CuttingProgress.of(
                        this.plan,
                        pieces,
                        Arrays.stream(Role.values())
                                .flatMap(r -> pieces.of(r, any -> true).stream())
                                .toList(),
                        cloths);
        LayCache lays = new LayCache(desk);
        this.table = new StockTable(progress, lays);
        this.bolts = new BoltSearch(lays, this.plan, tape);
        this.remedies = new LayRemedies(this.plan, cutting, tape);
        this.remnants = new RemnantCache(desk.store());
    }

    /**
     * The lays of a project; it must have passed {@link secondbolt.lay.plan.LayCheck}.
     *
     * @param cloths worked out
     * @param cutting the cutting lines after alterations and hems
     */
    public static LayResult work(
            List<ClothResult> cloths,
            CuttingResult cutting,
            LayPlan plan,
            Tape tape,
            LayDesk desk) {
        return new LayCalculation(cloths, cutting, plan, tape, desk).result();
    }

    private LayResult result() {
        String made =
                plan.make()
                        .map(placed -> placed.value())
                        .or(() -> plan.designs().keySet().stream().findFirst())
                        .orElse(ALL_PIECES);
        DesignLay first = design(made, plan.effortOrSteady(), table::layPinned);
        List<DesignLay> rest =
                plan.designs().keySet().stream()
                        .filter(name -> !name.equals(made))
                        .map(name -> design(name, Effort.QUICK, table::lay))
                        .toList();
        List<DesignLay> all = Stream.concat(Stream.of(first), rest.stream()).toList();
        DesignLay chosen = noneMore(first, all);
        List<DesignLay> others = rest.stream().map(design -> noneMore(design, all)).toList();
        List<LayResult.Remedy> tried = new ArrayList<>();
        Map<Role, Length> lacking = new EnumMap<>(Role.class);
        for (StockLay stock : chosen.stocks()) {
            if (!stock.fits() && !stock.spreads().isEmpty()) {
                if (stock.tooLarge().isEmpty()) {
                    lack(stock, made).ifPresent(length -> lacking.put(stock.role(), length));
                }
                unpinned(stock, made).ifPresent(tried::add);
                tried.addAll(
                        remedies.of(
                                stock,
                                progress.rest(
                                        pieces.of(stock.role(), isWanted(made)), stock.role()),
                                (missing, trial) ->
                                        table.layRest(
                                                stock.role(),
                                                stock.cloths(),
                                                missing,
                                                trial,
                                                Effort.QUICK)));
            }
        }
        return new LayResult(
                plan,
                chosen,
                others,
                together(chosen, others),
                tried,
                log(),
                lacking,
                cloths,
                open());
    }

    /** What is wrong with what is cut so far. */
    private List<Finding> log() {
        return plan.soFar().isEmpty() ? List.of() : new CutLog(progress, cloths, tape).findings();
    }

    /** What would come of it if all that is pinned and not cut were laid anew. */
    private Optional<LayResult.Remedy> unpinned(StockLay stock, String design) {
        if (stock.pinned().kept().isEmpty()) {
            return Optional.empty();
        }
        List<LayPiece> wanted = pieces.of(stock.role(), isWanted(design));
        StockLay anew =
                table.lay(
                        stock.role(),
                        stock.cloths(),
                        wanted,
                        Trial.asWritten(plan, stock.role(), wanted),
                        Effort.QUICK);
        return Optional.of(
                new LayResult.Remedy(
                        stock.role(),
                        "what is pinned and not cut laid anew (`secondbolt pin --anew`)",
                        anew.leftOver().stream().map(LayPiece::words).toList()));
    }

    private Optional<Length> lack(StockLay stock, String design) {
        List<LayPiece> wanted = pieces.of(stock.role(), isWanted(design));
        Trial trial = Trial.asWritten(plan, stock.role(), wanted);
        return table.lackMm(stock.role(), stock.cloths(), wanted, trial)
                .map(Length::ofComputedMillimetres);
    }

    private List<String> open() {
        return cloths.stream().filter(c -> c.finished().isEmpty()).map(ClothResult::name).toList();
    }

    private Predicate<String> isWanted(String design) {
        Optional<Design> told = Optional.ofNullable(plan.designs().get(design));
        return piece -> told.map(d -> d.needs(piece)).orElse(true);
    }

    /** Lays pieces on cloths: where they are pinned, or wherever there is room. */
    @FunctionalInterface
    private interface Laying {
        StockLay lay(
                Role role,
                List<ClothResult> cloths,
                List<LayPiece> wanted,
                Trial trial,
                Effort effort);
    }

    private DesignLay design(String name, Effort effort, Laying laying) {
        List<StockLay> stocks = new ArrayList<>();
        List<BoltLength> lengths = new ArrayList<>();
        for (Role role : Role.values()) {
            List<LayPiece> wanted = pieces.of(role, isWanted(name));
            if (wanted.isEmpty()) {
                continue;
            }
            List<ClothResult> known = known(role);
            if (!known.isEmpty()) {
                stocks.add(
                        laying.lay(
                                role, known, wanted, Trial.asWritten(plan, role, wanted), effort));
            }
            lengths.addAll(bolts.lengths(role, wanted, table.likeOf(known)));
        }
        return new DesignLay(
                name,
                Optional.ofNullable(plan.designs().get(name)),
                stocks,
                remnants.of(stocks),
                lengths,
                pieces.crossed(isWanted(name)));
    }

    /** With the lay of a larger design that has all its pieces, wherever that one is better. */
    private DesignLay noneMore(DesignLay design, List<DesignLay> all) {
        DesignLay best = design;
        for (DesignLay larger : all) {
            if (!larger.name().equals(design.name()) && larger.hasAllOf(design)) {
                best = best.atMost(larger);
            }
        }
        return best.stocks().equals(design.stocks()) ? best : best.with(remnants.of(best.stocks()));
    }

    /** The cloths of a role whose size and shrinkage are known. */
    private List<ClothResult> known(Role role) {
        return cloths.stream()
                .filter(c -> c.cloth().textile().roleOrMain() == role)
                .filter(c -> c.finished().isPresent())
                .toList();
    }

    /** Every two designs that fit on the cloth each by itself, made both. */
    private List<LayResult.DesignPair> together(DesignLay chosen, List<DesignLay> others) {
        List<DesignLay> fitting = new ArrayList<>();
        if (chosen.fits()) {
            fitting.add(chosen);
        }
        others.stream().filter(DesignLay::fits).forEach(fitting::add);
        List<LayResult.DesignPair> together = new ArrayList<>();
        for (int i = 0; i < fitting.size(); i++) {
            for (int j = i + 1; j < fitting.size(); j++) {
                together.add(both(fitting.get(i), fitting.get(j)));
            }
        }
        return together;
    }

    private LayResult.DesignPair both(DesignLay one, DesignLay two) {
        List<StockLay> stocks = new ArrayList<>();
        for (Role role : Role.values()) {
            List<LayPiece> wanted = new ArrayList<>(pieces.of(role, isWanted(one.name())));
            wanted.addAll(pieces.of(role, isWanted(two.name())));
            List<ClothResult> known = known(role);
            if (wanted.isEmpty() || known.isEmpty()) {
                continue;
            }
            if (table.isTooMuch(role, known, wanted)) {
                return new LayResult.DesignPair(one.name(), two.name(), List.of(), Remnants.NONE);
            }
            stocks.add(
                    table.lay(
                            role,
                            known,
                            wanted,
                            Trial.asWritten(plan, role, wanted),
                            Effort.QUICK));
        }
        return new LayResult.DesignPair(one.name(), two.name(), stocks, remnants.of(stocks));
    }
}
