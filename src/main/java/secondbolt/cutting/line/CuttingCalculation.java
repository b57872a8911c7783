package secondbolt.cutting.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.fault.Fault;
import secondbolt.fit.cut.CutShape;
import secondbolt.fit.result.FitResult;
import secondbolt.garment.PieceEdge;
import secondbolt.hem.plan.Hem;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.NamedEdge;
import secondbolt.pattern.piece.Piece;
import secondbolt.pattern.piece.PieceShape;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.cut.Allowance;
import secondbolt.shape.cut.CuttingLine;
import secondbolt.worksheet.Convention;

/** Draws the cutting line round each piece, after alterations and hems. */
public final class CuttingCalculation {
    /** The seam allowance where none is told; that ⅝ in is treated as 1.5 cm is from memory. */
    public static final Convention USUAL_ALLOWANCE =
            new Convention(
                    Length.ofInches(5, 8),
                    Length.ofMillimetres(15),
                    "usual on modern paper patterns (home-economics class notes, 2008)");

    private final FitResult fit;
    private final Map<String, Hem> hems;
    private final Tape tape;

    private CuttingCalculation(FitResult fit, Map<String, Hem> hems, Tape tape) {
        this.fit = fit;
        this.hems = hems;
        this.tape = tape;
    }

    /**
     * The cutting lines of a pattern.
     *
     * @param hems by name; their edges must be there, which reading has checked
     */
    public static CuttingResult work(FitResult fit, Map<String, Hem> hems, Tape tape) {
        return new CuttingCalculation(fit, hems, tape).result();
    }

    private CuttingResult result() {
        List<CutPiece> pieces = new ArrayList<>();
        List<TapedCut> taped = new ArrayList<>();
        for (Piece piece : fit.pieces()) {
            Optional<PieceShape.Drawn> shape = piece.shape().asDrawn();
            shape.ifPresent(s -> pieces.add(Fault.during(piece.name(), () -> cut(piece, s))));
            piece.shape()
                    .asTaped()
                    .ifPresent(s -> taped.add(Fault.during(piece.name(), () -> taped(piece, s))));
        }
        Pattern pattern = fit.pattern();
        return new CuttingResult(
                pattern.rights(),
                allowance(),
                pattern.allowance().isEmpty(),
                pieces,
                taped,
                oneHand(pieces, taped),
                earlier());
    }

    private List<Piece> oneHand(List<CutPiece> drawn, List<TapedCut> taped) {
        List<Piece> oneHand = new ArrayList<>();
        drawn.stream()
                .filter(cut -> Handed.isAsked(cut.piece()))
                .filter(cut -> cut.crossing().isEmpty() && Handed.is(cut))
                .forEach(cut -> oneHand.add(cut.piece()));
        taped.stream()
                .map(TapedCut::piece)
                .filter(piece -> Handed.isAsked(piece))
                .filter(piece -> Handed.is(piece, fit.pattern().meanings()))
                .forEach(oneHand::add);
        return oneHand;
    }

    /** With the allowances and hems that are written now. */
    private List<EarlierPiece> earlier() {
        List<EarlierPiece> earlier = new ArrayList<>();
        for (CutShape shape : fit.cut().shapes()) {
            Piece now = fit.find(shape.name()).orElseThrow();
            if (!now.shape().equals(shape.piece().shape())) {
                earlier.add(
                        new EarlierPiece(
                                shape.had(),
                                shape.piece(),
                                shape.piece().shape().asDrawn().map(s -> cut(shape.piece(), s)),
                                shape.piece().shape().asTaped().map(s -> taped(shape.piece(), s))));
            }
        }
        return earlier;
    }

    private Length allowance() {
        return fit.pattern()
                .allowance()
                .map(Pattern.Allowance::of)
                .orElseGet(() -> USUAL_ALLOWANCE.on(tape));
    }

    /** What is taken where no seam allowance is told. */
    private String usual() {
        return "seam allowance: "
                + tape.print(USUAL_ALLOWANCE.on(tape))
                + " ("
                + USUAL_ALLOWANCE.source()
                + ")";
    }

    private CutPiece cut(Piece piece, PieceShape.Drawn shape) {
        boolean included = isIncluded();
        List<EdgeAllowance> edges =
                shape.edges().stream().map(edge -> allowance(piece, edge.name())).toList();
        Optional<PieceShape.Drawn> before =
                fit.pattern()
                        .find(piece.name())
                        .flatMap(p -> p.shape().asDrawn())
                        .filter(was -> !was.equals(shape));
        return new CutPiece(piece, shape, before, edges, included, line(shape, edges, included));
    }

    /** The line to cut on; the outline itself if the allowances are included in it. */
    public static CuttingLine line(
            PieceShape.Drawn shape, List<EdgeAllowance> edges, boolean included) {
        List<EdgeLine> lines = shape.edges().stream().map(NamedEdge::line).toList();
        List<Allowance> widths =
                edges.stream().map(e -> included ? Allowance.plain(0) : e.allowance()).toList();
        return CuttingLine.of(lines, widths);
    }

    private boolean isIncluded() {
        return fit.pattern().allowance().map(Pattern.Allowance::isIncluded).orElse(false);
    }

    /** By its box, which is the cut piece already where the allowances are included. */
    private TapedCut taped(Piece piece, PieceShape.Taped shape) {
        boolean included = isIncluded();
        return new TapedCutting(
                        fit.pattern().meanings(),
                        edge -> included ? 0 : allowance(piece, edge).width().millimetres(),
                        included ? 0 : allowance().millimetres())
                .of(piece, shape);
    }

    private EdgeAllowance allowance(Piece piece, String name) {
        if (piece.fold().filter(name::equals).isPresent()) {
            return new EdgeAllowance(name, Length.ZERO, Allowance.Kind.FOLD);
        }
        Length seam = piece.allowance(name, allowance());
        Optional<Hem> hem =
                hems.values().stream()
                        .filter(h -> h.isOn(new PieceEdge(piece.name(), name)))
                        .findFirst();
        if (hem.isEmpty() || hem.get().turned() == Hem.Turned.FACED) {
            boolean isTold =
                    fit.pattern().allowance().isPresent() || piece.allowances().containsKey(name);
            return new EdgeAllowance(
                    name,
                    seam,
                    Allowance.Kind.PLAIN,
                    isTold ? Optional.empty() : Optional.of(usual()));
        }
        Length adds = hem.get().addsBelowTheFold(seam, tape);
        return new EdgeAllowance(name, adds, Allowance.Kind.HEM, hem.get().takenMeanwhile());
    }
}
