package secondbolt.cutting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import secondbolt.draw.Drawing;
import secondbolt.fit.FitResult;
import secondbolt.fit.Pattern;
import secondbolt.fit.Piece;
import secondbolt.hem.Hem;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.shape.Point;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Figures;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Open;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.Worksheet;

/** The pieces of a pattern with their cutting lines, full size. */
public final class CuttingWorksheet implements Worksheet {
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
    public static Worksheet of(FitResult fit, Map<String, Hem> hems, Tape tape) {
        return of(CuttingCalculation.work(fit, hems, tape), tape);
    }

    /** The pieces as worked out. */
    public static Worksheet of(CuttingResult result, Tape tape) {
        return new CuttingWorksheet(result, tape);
    }

    @Override
    public String name() {
        return "cutting";
    }

    @Override
    public String title() {
        return "The pieces";
    }

    @Override
    public Object view() {
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

    @Override
    public Map<String, Drawing> pictures() {
        return pictures;
    }

    @Override
    public List<Sheet> sheets() {
        return sheets;
    }

    @Override
    public List<Finding> findings() {
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

    @Override
    public List<Assumed> assumed() {
        return result.isAssumed()
                ? List.of(
                        new Assumed(
                                "seam allowance",
                                tape.print(result.allowance()) + ", not in the outlines",
                                "usual on modern paper patterns (home-economics class notes, 2008);"
                                        + " look at yours and write `seam allowance`"))
                : List.of();
    }

    @Override
    public List<Open> open() {
        return List.of();
    }

    @Override
    public Figures figures() {
        Figures figures = new Figures();
        result.pieces().forEach(piece -> figures.inside(piece.name(), figures(piece)));
        return figures;
    }

    private static Figures figures(CutPiece piece) {
        Figures byCloth = new Figures();
        piece.piece().cutByRole().forEach((role, cut) -> byCloth.count(role.word(), cut.count()));
        Map<String, Length> widths = new LinkedHashMap<>();
        piece.edges().forEach(edge -> widths.put(edge.edge(), edge.width()));
        return new Figures()
                .points("cut_outline", piece.cut().corners())
                .claim("on_fold", piece.piece().fold().isPresent())
                .count("copies", piece.copies())
                .inside("by_cloth", byCloth)
                .lengths("allowances", widths);
    }
}
