package secondbolt.cutting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import secondbolt.block.Block;
import secondbolt.draw.Drawing;
import secondbolt.figure.Figures;
import secondbolt.fit.FitResult;
import secondbolt.fit.Pattern;
import secondbolt.fit.Piece;
import secondbolt.hem.Hem;
import secondbolt.measure.Area;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.shape.Point;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Notes;
import secondbolt.worksheet.Open;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.Worksheet;

/** The pieces of a pattern with their cutting lines, full size. */
public final class CuttingWorksheet {
    private final CuttingResult result;
    private final Tape tape;
    private final Map<String, Drawing> pictures;
    private final List<Sheet> sheets;

    private CuttingWorksheet(CuttingResult result, Tape tape) {
        this.result = result;
        this.tape = tape;
        Map<String, Drawing> drawn = new LinkedHashMap<>();
        result.pieces().forEach(piece -> drawn.put(piece.name(), PicturePiece.of(piece)));
        this.pictures = drawn;
        List<Sheet> all = new ArrayList<>(PieceSheets.of(result, tape));
        all.add(GridSheet.of(tape));
        this.sheets = List.copyOf(all);
    }

    /**
     * The pieces of an altered pattern.
     *
     * @param hems by name; none if they are not told
     */
    public static CuttingWorksheet of(FitResult fit, Map<String, Hem> hems, Tape tape) {
        return of(CuttingCalculation.work(fit, hems, tape), tape);
    }

    /** The pieces as worked out. */
    public static CuttingWorksheet of(CuttingResult result, Tape tape) {
        return new CuttingWorksheet(result, tape);
    }

    /** Its page, sheets and figures. */
    public Worksheet worksheet() {
        return Worksheet.of("cutting", "The pieces", new Notes(findings(), assumed(), open()))
                .showing(() -> List.of(new Block.Own("cutting", view(), pictures())))
                .printing(this::sheets)
                .telling(this::figures);
    }

    Object view() {
        return new CuttingView(
                rights(),
                allowance(),
                result.pieces().stream().map(this::view).toList(),
                result.taped().stream().map(Piece::name).collect(Collectors.joining(", ")));
    }

    private String rights() {
        return result.rights() == Pattern.Rights.BOUGHT
                ? "The pattern is a bought one: its outlines and sheets are for your own use."
                : "";
    }

    private String allowance() {
        boolean included = result.pieces().stream().anyMatch(CutPiece::isIncluded);
        return "Seam allowance "
                + tape.printBoth(result.allowance())
                + (included
                        ? ", included in the outlines as written."
                        : ", added outside the outlines as written.");
    }

    private CuttingView.One view(CutPiece piece) {
        Box box = piece.cut().box();
        String caption =
                "Points numbered in the order they are written, reduced"
                        + (piece.before().isPresent()
                                ? "; dotted, the outline before the alterations."
                                : ".");
        return new CuttingView.One(
                piece.name(),
                piece.name(),
                caption,
                PieceSheets.capital(piece.instruction()),
                both(box.widthMm()) + " by " + both(box.heightMm()),
                piece.edges().stream().map(this::row).toList());
    }

    private String both(double lengthMm) {
        return tape.printBoth(Length.ofComputedMillimetres(lengthMm));
    }

    private CuttingView.Row row(EdgeAllowance edge) {
        return new CuttingView.Row(
                edge.edge(),
                tape.print(edge.width()),
                tape.other().print(edge.width()),
                PieceSheets.kind(edge));
    }

    Map<String, Drawing> pictures() {
        return pictures;
    }

    List<Sheet> sheets() {
        return sheets;
    }

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (CutPiece piece : result.pieces()) {
            piece.crossing().ifPresent(at -> findings.add(crossing(piece, at)));
        }
        return findings;
    }

    private Finding crossing(CutPiece piece, Point at) {
        return new Finding(
                piece.name(),
                Finding.Level.STOP,
                "The cutting line crosses itself near "
                        + tape.print(Length.ofComputedMillimetres(at.xMm()))
                        + " across, "
                        + tape.print(Length.ofComputedMillimetres(at.yMm()))
                        + " along.",
                "Write a narrower allowance for the edge there, or correct a mistyped point.");
    }

    List<Assumed> assumed() {
        return result.isAssumed()
                ? List.of(
                        new Assumed(
                                "seam allowance",
                                tape.print(result.allowance()) + ", not in the outlines",
                                "usual on modern paper patterns (home-economics class notes, 2008);"
                                        + " look at yours and write `seam allowance`"))
                : List.of();
    }

    List<Open> open() {
        return List.of();
    }

    Figures figures() {
        Figures figures = new Figures();
        result.pieces().forEach(piece -> figures.inside(piece.name(), figures(piece)));
        return figures;
    }

    private static Figures figures(CutPiece piece) {
        Figures byCloth = new Figures();
        piece.piece().cuts().forEach((role, cut) -> byCloth.count(role.word(), cut.count()));
        Map<String, Length> widths = new LinkedHashMap<>();
        piece.edges().forEach(edge -> widths.put(edge.edge(), edge.width()));
        return new Figures()
                .points("cut_outline", piece.cut().corners())
                .claim("on_fold", piece.piece().fold().isPresent())
                .count("copies", piece.copies())
                .inside("by_cloth", byCloth)
                .lengths("allowances", widths)
                .list("marks", marks(piece))
                .inside("cut_size", size(piece))
                .inside("cloth", cloth(piece));
    }

    private static List<Figures> marks(CutPiece piece) {
        Box sewn = piece.shape().box();
        List<Figures> marks = new ArrayList<>();
        for (Piece.MarkPoint mark : piece.piece().features().marks()) {
            String of = piece.name() + ": " + mark.what();
            marks.add(
                    new Figures()
                            .text("what", mark.what())
                            .toldLength(
                                    "from_top",
                                    mm(mark.at().yMm() - sewn.topMm()),
                                    of + ", from the piece's top")
                            .toldLength(
                                    "from_left",
                                    mm(mark.at().xMm() - sewn.leftMm()),
                                    of + ", from the piece's left"));
        }
        return marks;
    }

    private static Figures size(CutPiece piece) {
        Box cut = piece.cut().box();
        String as =
                piece.name()
                        + ", cut of "
                        + piece.piece().cuts().keySet().stream()
                                .map(Object::toString)
                                .collect(Collectors.joining(" and "));
        return new Figures()
                .toldLength("along", mm(cut.heightMm()), as + ": along")
                .toldLength("across", mm(cut.widthMm()), as + ": across");
    }

    /** What all copies of a piece cover of each cloth. */
    private static Figures cloth(CutPiece piece) {
        int halves = piece.piece().fold().isPresent() ? 2 : 1;
        double mm2 = piece.cut().areaMm2() * halves;
        Figures cloth = new Figures();
        piece.piece()
                .cuts()
                .forEach(
                        (role, cut) ->
                                cloth.toldArea(
                                        role.toString(),
                                        Area.ofComputedSquareMillimetres(mm2 * cut.count()),
                                        "Cloth in all pieces cut of " + role));
        return cloth;
    }

    private static Length mm(double mm) {
        return Length.ofComputedMillimetres(mm);
    }
}
