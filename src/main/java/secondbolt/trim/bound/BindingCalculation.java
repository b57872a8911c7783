package secondbolt.trim.bound;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.cutting.line.CuttingResult;
import secondbolt.fit.result.FitResult;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;
import secondbolt.measure.Share;
import secondbolt.measure.Tape;
import secondbolt.pattern.EdgeSum;
import secondbolt.pattern.piece.Piece;
import secondbolt.pattern.piece.PieceShape;
import secondbolt.shape.EdgeLine;
import secondbolt.trim.bound.BindingResult.Bends;
import secondbolt.trim.bound.BindingResult.BoundEdge;
import secondbolt.trim.plan.Binding;
import secondbolt.trim.strip.StripRule;
import secondbolt.worksheet.Convention;

/** How long and how wide each binding is cut, and which strips yield it. */
public final class BindingCalculation {
    /** What a curved edge takes more; common practice, no source. */
    public static final Share FOR_CURVES = Share.ofPercent(5);

    /** What the join of the ends takes. */
    public static final Convention FOR_ENDS =
            Convention.common(Length.ofInches(2, 1), Length.ofMillimetres(50));

    private final FitResult fit;
    private final CuttingResult cutting;
    private final Tape tape;

    private BindingCalculation(FitResult fit, CuttingResult cutting, Tape tape) {
        this.fit = fit;
        this.cutting = cutting;
        this.tape = tape;
    }

    /**
     * All bindings, in the maker's order; those that share a remnant share its strips.
     *
     * @param bindings whose edges are there
     * @param left what the lay leaves
     */
    public static List<BindingResult> all(
            Map<String, Binding> bindings,
            FitResult fit,
            CuttingResult cutting,
            ClothLeft left,
            Tape tape) {
        BindingCalculation calculation = new BindingCalculation(fit, cutting, tape);
        Map<String, BindingResult> results = new LinkedHashMap<>();
        bindings.forEach((name, binding) -> results.put(name, calculation.result(name, binding)));
        for (Binding.Cut cut : List.of(Binding.Cut.STRAIGHT, Binding.Cut.BIAS)) {
            results.replaceAll(
                    (name, result) ->
                            result.binding().cut() == cut ? left.cut(result, tape) : result);
        }
        return List.copyOf(results.values());
    }

    private BindingResult result(String name, Binding binding) {
        List<BoundEdge> edges = new ArrayList<>();
        binding.on().value().pieceEdges().forEach(edge -> edges.add(edge(edge, binding)));
        Length sewn = Length.ZERO;
        Length curved = Length.ZERO;
        for (BoundEdge edge : edges) {
            Length all = edge.sewn().times(edge.count());
            sewn = sewn.plus(all);
            curved = edge.bends() == Bends.NOT ? curved : curved.plus(all);
        }
        return new BindingResult(
                name,
                binding,
                edges,
                width(binding, edges),
                sewn,
                curved.times(FOR_CURVES),
                FOR_ENDS.on(tape),
                Optional.empty());
    }

    private BoundEdge edge(PieceEdge edge, Binding binding) {
        Piece piece = fit.find(edge.piece()).orElseThrow();
        int count =
                binding.on().value().terms().stream()
                        .filter(term -> term.edge().equals(edge))
                        .mapToInt(EdgeSum.Term::count)
                        .sum();
        return new BoundEdge(
                edge,
                count,
                piece.timesRoundTheBody(),
                fit.after().edge(edge).orElseThrow(),
                bends(piece, edge.edge()),
                piece.allowance(edge.edge(), cutting.allowance()),
                piece.shape().isOpen(edge.edge()));
    }

    private static Bends bends(Piece piece, String edge) {
        return piece.shape()
                .asDrawn()
                .flatMap((PieceShape.Drawn drawn) -> drawn.find(edge))
                .map(EdgeLine::isStraight)
                .map(isStraight -> isStraight ? Bends.NOT : Bends.CURVED)
                .orElse(Bends.UNKNOWN);
    }

    private Optional<Length> width(Binding binding, List<BoundEdge> edges) {
        Length seam = binding.seam().orElse(StripRule.JOIN.on(tape));
        return switch (binding.kind()) {
            case DOUBLE_FOLD -> binding.finished().map(StripRule::doubleFold);
            case SINGLE_FOLD -> binding.finished().map(f -> StripRule.singleFold(f, seam));
            case BOUND_SEAM ->
                    binding.seam()
                            .or(() -> widest(edges))
                            .filter(Length::isPositive)
                            .map(StripRule::boundSeam);
        };
    }

    private static Optional<Length> widest(List<BoundEdge> edges) {
        return edges.stream().map(BoundEdge::allowance).reduce(Length::orLonger);
    }
}
