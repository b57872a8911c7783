package secondbolt.lay;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import secondbolt.block.Block;
import secondbolt.cloth.ClothResult;
import secondbolt.cutting.CuttingResult;
import secondbolt.draw.Drawing;
import secondbolt.figure.Figures;
import secondbolt.fit.Piece;
import secondbolt.garment.Role;
import secondbolt.lay.piece.LaidPiece;
import secondbolt.lay.piece.LayPiece;
import secondbolt.lay.plan.LayPlan;
import secondbolt.lay.stock.LayDesk;
import secondbolt.lay.stock.SpreadCloth;
import secondbolt.lay.stock.StockLay;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.shape.Point;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Notes;
import secondbolt.worksheet.Open;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.Worksheet;

/** Where every piece goes on the cloths there are, and what it would take from a bolt. */
public final class LayWorksheet {
    private final LayResult result;
    private final CuttingResult cutting;
    private final Tape tape;
    private final Map<String, Drawing> plans;

    private LayWorksheet(LayResult result, CuttingResult cutting, Tape tape) {
        this.result = result;
        this.cutting = cutting;
        this.tape = tape;
        Map<String, Drawing> drawn = new LinkedHashMap<>();
        for (StockLay stock : result.made().stocks()) {
            for (int i = 0; i < stock.cloths().size(); i++) {
                drawn.put(LayPage.picture(stock.role(), i), LayDrawing.of(stock, i, tape));
            }
        }
        this.plans = Collections.unmodifiableMap(drawn);
    }

    /** Works out the lays of a project. */
    public static LayWorksheet of(
            List<ClothResult> cloths,
            CuttingResult cutting,
            LayPlan plan,
            Tape tape,
            LayDesk desk) {
        return new LayWorksheet(
                LayCalculation.work(cloths, cutting, plan, tape, desk), cutting, tape);
    }

    /** What the lays came to. */
    public LayResult result() {
        return result;
    }

    /** Its page, sheets and figures. */
    public Worksheet worksheet() {
        return Worksheet.of("lay", "The lay", new Notes(findings(), assumed(), open()))
                .showing(() -> List.of(new Block.Own("lay", view(), pictures())))
                .printing(this::sheets)
                .telling(this::figures);
    }

    Object view() {
        return LayPage.view(result, tape);
    }

    Map<String, Drawing> pictures() {
        return plans;
    }

    List<Sheet> sheets() {
        return LaySheets.of(result, plans, tape);
    }

    List<Finding> findings() {
        return LayFindings.of(result, tape);
    }

    List<Assumed> assumed() {
        List<Assumed> assumed = new ArrayList<>();
        if (result.plan().rules().gap().isEmpty()) {
            assumed.add(
                    new Assumed(
                            "the gap between two cutting lines",
                            tape.printSmall(result.plan().gapOrUsual()),
                            "room for the shears; common practice, no source"));
        }
        if (!result.made().bolts().isEmpty()) {
            assumed.add(
                    new Assumed(
                            "how much of a bolt the selvages take",
                            tape == Tape.INCH ? "2 in in all" : "5 cm in all",
                            "a trade convention: 5 cm off 150 cm, 2 in off 60 in"));
        }
        assumed.addAll(assumedOfInterfacing());
        List<String> taped = cutting.taped().stream().map(Piece::name).toList();
        if (!taped.isEmpty()) {
            assumed.add(
                    new Assumed(
                            "the cutting line of " + String.join(", ", taped),
                            "the box with the seam allowance all round",
                            "known by tape only; common practice, no source"));
        }
        return assumed;
    }

    private List<Assumed> assumedOfInterfacing() {
        boolean asked =
                result.made().bolts().stream().anyMatch(bolt -> bolt.role() == Role.INTERFACING);
        if (!asked) {
            return List.of();
        }
        List<Assumed> assumed = new ArrayList<>();
        if (result.plan().interfacing().isEmpty()) {
            assumed.add(
                    new Assumed(
                            "the width of the interfacing",
                            "usual widths",
                            "sold 20 in wide and wider; write `interfacing: {width: …}`"));
        }
        assumed.add(
                new Assumed(
                        "how long the interfacing is",
                        "all of its width used, one layer",
                        "sewn-in kinds may need a little for shrinkage; common practice, no"
                                + " source"));
        return assumed;
    }

    List<Open> open() {
        return result.open().stream()
                .map(
                        cloth ->
                                new Open(
                                        "the finished size of " + cloth,
                                        "whether the pieces fit on it",
                                        "Measure it and its shrinkage, as told with the cloth."))
                .toList();
    }

    Figures figures() {
        Figures figures = new Figures();
        result.designs().forEach(design -> figures.inside(design.name(), figures(design)));
        return figures;
    }

    /** Which of the other designs can be made of the same cloth as well. */
    private List<Figures> together(String design) {
        List<Figures> together = new ArrayList<>();
        for (LayResult.DesignPair both : result.together()) {
            if (both.first().equals(design) || both.second().equals(design)) {
                String other = both.first().equals(design) ? both.second() : both.first();
                together.add(new Figures().text("with", other).claim("fits", both.fits()));
            }
        }
        return together;
    }

    private Figures figures(DesignLay design) {
        List<Figures> placed = new ArrayList<>();
        List<Figures> left = new ArrayList<>();
        List<Figures> remnants = new ArrayList<>();
        double used = 0;
        double sound = 0;
        for (StockLay stock : design.stocks()) {
            stock.laid().forEach(laid -> placed.addAll(figures(laid, stock)));
            stock.leftOver().forEach(piece -> left.addAll(figures(piece)));
            for (int i = 0; i < stock.cloths().size(); i++) {
                remnants.add(remnant(stock.cloths().get(i), stock.remnants().get(i)));
            }
            used += stock.used().squareMillimetres();
            sound += stock.sound().squareMillimetres();
        }
        List<Figures> bolts =
                design.bolts().stream()
                        .map(
                                bolt ->
                                        new Figures()
                                                .text("role", bolt.role().word())
                                                .length("width", bolt.width())
                                                .length("length", bolt.length())
                                                .length("to_buy", bolt.toBuy()))
                        .toList();
        return new Figures()
                .claim("fits", design.fits())
                .list("placed", placed)
                .list("left_over", left)
                .share("used", sound > 0 ? used / sound : 0)
                .list("remnants", remnants)
                .list("bolt_lengths", bolts)
                .list("together", together(design.name()))
                .text("saved", new LayWords(tape).saved(design, result.plan()));
    }

    /** The copies it makes, on the cloth laid out single. */
    private static List<Figures> figures(LaidPiece laid, StockLay stock) {
        SpreadCloth spread = stock.spreads().get(laid.cloth());
        return laid.copies(spread.fold()).stream()
                .map(
                        copy ->
                                new Figures()
                                        .text("piece", laid.piece().piece().name())
                                        .count("copy", copy.number())
                                        .text("cloth", spread.name())
                                        .count(
                                                "turn_deg",
                                                laid.placement().orientation().turnDegrees())
                                        .claim("mirrored", copy.isMirrored())
                                        .claim("opened", laid.piece().isOpened())
                                        .points("outline", copy.outline().corners()))
                .toList();
    }

    private static List<Figures> figures(LayPiece piece) {
        return IntStream.range(piece.copy(), piece.copy() + piece.copies())
                .mapToObj(
                        copy ->
                                new Figures()
                                        .text("piece", piece.piece().name())
                                        .count("copy", copy))
                .toList();
    }

    private static Figures remnant(ClothResult cloth, Optional<Box> box) {
        return new Figures()
                .text("cloth", cloth.name())
                .acrossAlong("at", box.map(b -> new Point(b.leftMm(), b.topMm())))
                .acrossAlong("size", box.map(b -> new Point(b.widthMm(), b.heightMm())));
    }
}
