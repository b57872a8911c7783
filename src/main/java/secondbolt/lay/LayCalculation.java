package secondbolt.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import secondbolt.cloth.BoltWidth;
import secondbolt.cloth.ClothResult;
import secondbolt.cloth.ClothYield;
import secondbolt.cloth.Textile;
import secondbolt.cutting.CuttingResult;
import secondbolt.fit.Piece;
import secondbolt.lay.search.Bed;
import secondbolt.lay.search.Effort;
import secondbolt.lay.search.Figure;
import secondbolt.lay.search.Lay;
import secondbolt.measure.Area;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.shape.ClearRectangles;
import secondbolt.shape.Region;

/** Lays every design on the cloths there are, and on cloth from the bolt. */
public final class LayCalculation {
    /** The roles of cloth in the order they are worked out. */
    private static final List<String> ROLES = List.of("main", "lining", "contrast", "interfacing");

    /** The design that is meant where the file tells of none. */
    static final String ALL_PIECES = "all pieces";

    private final List<ClothResult> cloths;
    private final CuttingResult cutting;
    private final LayPieces pieces;
    private final LayPlan plan;
    private final SoFar soFar;
    private final Tape tape;
    private final KeptLays lays;

    private LayCalculation(
            List<ClothResult> cloths,
            CuttingResult cutting,
            LayPlan plan,
            Tape tape,
            LayDesk desk) {
        this.cloths = List.copyOf(cloths);
        this.cutting = cutting;
        this.pieces = new LayPieces(cutting);
        this.plan = plan;
        this.soFar =
                new SoFar(
                        plan,
                        ROLES.stream().flatMap(r -> pieces.of(r, any -> true).stream()).toList());
        this.tape = tape;
        this.lays = new KeptLays(desk);
    }

    /**
     * The lays of a project; it must have passed {@link LayCheck}.
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
        DesignLay chosen = design(made, plan.effortOrSteady());
        List<DesignLay> others =
                plan.designs().keySet().stream()
                        .filter(name -> !name.equals(made))
                        .map(name -> design(name, Effort.QUICK))
                        .toList();
        List<LayResult.Remedy> remedies = new ArrayList<>();
        for (StockLay stock : chosen.stocks()) {
            if (!stock.fits()) {
                remedies.addAll(remedies(made, stock));
            }
        }
        return new LayResult(plan, chosen, others, remedies, open());
    }

    private List<String> open() {
        return cloths.stream().filter(c -> c.finished().isEmpty()).map(ClothResult::name).toList();
    }

    private Predicate<String> isWanted(String design) {
        Optional<Design> told = Optional.ofNullable(plan.designs().get(design));
        return piece -> told.map(d -> d.needs(piece)).orElse(true);
    }

    private DesignLay design(String name, Effort effort) {
        List<StockLay> stocks = new ArrayList<>();
        List<BoltLength> bolts = new ArrayList<>();
        for (String role : ROLES) {
            List<LayPiece> wanted = pieces.of(role, isWanted(name));
            if (wanted.isEmpty()) {
                continue;
            }
            List<ClothResult> stock = stock(role);
            if (!stock.isEmpty()) {
                stocks.add(lay(role, stock, wanted, Trial.asWritten(plan), effort));
            }
            for (BoltWidth bolt : BoltWidth.COMMON) {
                if (bolt.tape() == tape) {
                    bolts.add(bolt(role, bolt.width(), wanted));
                }
            }
        }
        return new DesignLay(name, Optional.ofNullable(plan.designs().get(name)), stocks, bolts);
    }

    /** The cloths of a role that have sound cloth, the largest first. */
    private List<ClothResult> stock(String role) {
        return cloths.stream()
                .filter(c -> c.cloth().textile().roleOrMain().word().equals(role))
                .filter(c -> c.finished().filter(y -> !y.soundForHidden().isEmpty()).isPresent())
                .sorted(
                        (a, b) ->
                                Double.compare(
                                        yielded(b).sound().areaMm2(), yielded(a).sound().areaMm2()))
                .toList();
    }

    private static ClothYield yielded(ClothResult cloth) {
        return cloth.finished().orElseThrow();
    }

    private StockLay lay(
            String role,
            List<ClothResult> stock,
            List<LayPiece> wanted,
            Trial trial,
            Effort effort) {
        List<LayPiece> rest = soFar.rest(wanted, stock);
        List<Bed> beds = stock.stream().map(this::bed).toList();
        Lay lay = search(rest, beds, isOneWay(stock), trial, effort);
        List<LaidPiece> laid =
                lay.placed().stream()
                        .map(p -> new LaidPiece(rest.get(p.figure()), p.bed(), p))
                        .toList();
        List<LayPiece> leftOver = lay.leftOver().stream().map(rest::get).toList();
        List<Optional<Box>> remnants = new ArrayList<>();
        for (int i = 0; i < stock.size(); i++) {
            int number = i;
            List<LaidPiece> here = laid.stream().filter(l -> l.cloth() == number).toList();
            remnants.add(remnant(beds.get(i).sound(), here));
        }
        double sound = beds.stream().mapToDouble(b -> b.sound().areaMm2()).sum();
        return new StockLay(
                role,
                stock,
                stock.stream().map(cloth -> soFar.holes(cloth.name())).toList(),
                laid,
                leftOver,
                leftOver.stream().filter(p -> isTooLarge(p, beds)).toList(),
                remnants,
                Area.ofComputedSquareMillimetres(sound),
                lay.isFinished());
    }

    /** Whether a piece is longer, or wider, than every cloth, whichever way it is turned. */
    private static boolean isTooLarge(LayPiece piece, List<Bed> beds) {
        Box box = piece.outline().box();
        double longest = Math.max(box.widthMm(), box.heightMm());
        return beds.stream()
                .map(bed -> bed.soundForHidden().box())
                .allMatch(bed -> longest > Math.max(bed.widthMm(), bed.heightMm()));
    }

    /** The sound cloth, without what is cut already and its gap. */
    private Bed bed(ClothResult cloth) {
        Region cut = soFar.gone(cloth.name());
        ClothYield yielded = yielded(cloth);
        return new Bed(yielded.sound().minus(cut), yielded.soundForHidden().minus(cut));
    }

    private static boolean isOneWay(List<ClothResult> stock) {
        return stock.stream().anyMatch(c -> c.cloth().textile().napOrNone() == Textile.Nap.ONE_WAY);
    }

    private Lay search(
            List<LayPiece> wanted, List<Bed> beds, boolean oneWay, Trial trial, Effort effort) {
        List<Bed> sound = beds.stream().filter(b -> !b.soundForHidden().isEmpty()).toList();
        if (wanted.isEmpty() || sound.size() < beds.size()) {
            List<Integer> all = new ArrayList<>();
            for (int i = 0; i < wanted.size(); i++) {
                all.add(i);
            }
            return new Lay(List.of(), all, true);
        }
        List<Figure> figures = wanted.stream().map(piece -> figure(piece, oneWay, trial)).toList();
        return lays.lay(figures, beds, trial.gap().millimetres(), effort);
    }

    private static Figure figure(LayPiece piece, boolean oneWay, Trial trial) {
        boolean hidden = piece.piece().seen() == Piece.Seen.HIDDEN;
        double area = piece.outline().areaMm2();
        // A piece nobody sees can be cut of another cloth: it is the first to be left out.
        return new Figure(
                piece.outline(),
                trial.turns(piece.piece(), oneWay),
                hidden,
                hidden ? area / 10 : area);
    }

    private Optional<Box> remnant(Region sound, List<LaidPiece> here) {
        Region left =
                sound.minus(Region.union(here.stream().map(l -> Region.of(l.outline())).toList()));
        return ClearRectangles.largest(left).filter(box -> box.areaMm2() > 0);
    }

    /**
     * The length on cloth of a width. The selvages take 5 cm, or 2 in, in all.
     *
     * <p>Source: 5 cm off 150 cm, or 2 in off 60 in (a trade convention, lesson on yardage).
     */
    private BoltLength bolt(String role, Length width, List<LayPiece> wanted) {
        Length selvages = tape == Tape.INCH ? Length.ofInches(2, 1) : Length.ofMillimetres(50);
        Length cuttable = width.minus(selvages);
        double area = wanted.stream().mapToDouble(p -> p.outline().areaMm2()).sum();
        double longest =
                wanted.stream()
                        .mapToDouble(
                                p ->
                                        Math.max(
                                                p.outline().box().widthMm(),
                                                p.outline().box().heightMm()))
                        .max()
                        .orElse(0);
        double lengthMm = 2 * area / cuttable.millimetres() + 2 * longest;
        Bed whole = Bed.whole(cuttable.millimetres(), lengthMm);
        Lay lay = search(wanted, List.of(whole), false, Trial.asWritten(plan), Effort.QUICK);
        if (!lay.leftOver().isEmpty()) {
            return new BoltLength(role, width, cuttable, Optional.empty(), Optional.empty());
        }
        double reach =
                lay.placed().stream()
                        .mapToDouble(
                                p -> p.lying(wanted.get(p.figure()).outline()).box().bottomMm())
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

    /** What could help, tried quickly. */
    private List<LayResult.Remedy> remedies(String design, StockLay stock) {
        List<LayResult.Remedy> remedies = new ArrayList<>();
        List<LayPiece> wanted = pieces.of(stock.role(), isWanted(design));
        for (Map.Entry<String, Trial> trial : Trial.others(plan, wanted, tape).entrySet()) {
            StockLay tried =
                    lay(stock.role(), stock.cloths(), wanted, trial.getValue(), Effort.QUICK);
            remedies.add(remedy(stock.role(), trial.getKey(), tried));
        }
        List<LayPiece> parted = Halves.of(wanted, cutting.allowance().millimetres());
        if (parted.size() > wanted.size()) {
            remedies.add(
                    remedy(
                            stock.role(),
                            "the hidden pieces in two parts, with a seam across",
                            lay(
                                    stock.role(),
                                    stock.cloths(),
                                    parted,
                                    Trial.asWritten(plan),
                                    Effort.QUICK)));
        }
        return remedies;
    }

    private static LayResult.Remedy remedy(String role, String words, StockLay tried) {
        return new LayResult.Remedy(
                role, words, tried.leftOver().stream().map(LayPiece::words).toList());
    }
}
