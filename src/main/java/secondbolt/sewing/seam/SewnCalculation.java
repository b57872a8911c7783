package secondbolt.sewing.seam;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import secondbolt.cutting.line.CuttingResult;
import secondbolt.fit.result.FitResult;
import secondbolt.garment.PieceEdge;
import secondbolt.garment.Role;
import secondbolt.hem.plan.Hem;
import secondbolt.hem.turned.HemEdge;
import secondbolt.hem.turned.HemResult;
import secondbolt.measure.Length;
import secondbolt.sewing.plan.SewingPlan;
import secondbolt.worksheet.Sentence;

/** Gathers all there is to sew. */
public final class SewnCalculation {
    private SewnCalculation() {}

    /**
     * All there is to sew on a pattern.
     *
     * @param hems worked out on the same pattern
     */
    public static SewnLines work(
            FitResult fit, CuttingResult cutting, List<HemResult> hems, SewingPlan plan) {
        EdgeShapes shapes = new EdgeShapes(fit, cutting);
        EdgeSupply supply = EdgeSupply.of(fit);
        JoinLines joining = new JoinLines(fit, shapes, supply, plan);
        PieceLines pieces = new PieceLines(fit, shapes, supply, plan);
        List<JoinLine> joins = joining.all();
        Set<PieceEdge> hemmed = new HashSet<>();
        hems.forEach(hem -> hemmed.addAll(hem.hem().edges()));
        return new SewnLines(
                joins,
                joining.layers(joins),
                pieces.darts(),
                hems.stream().map(SewnCalculation::hem).toList(),
                pieces.own(),
                pieces.stays(),
                pieces.untold(hemmed));
    }

    /** What there is to sew without a pattern: lines of hers by tape. */
    public static SewnLines withoutPattern(SewingPlan plan) {
        List<SewnLine> own = new ArrayList<>();
        plan.also()
                .forEach(
                        line ->
                                own.add(
                                        new SewnLine(
                                                SewnLine.Kind.OWN,
                                                Sentence.capital(line.what()),
                                                Role.MAIN,
                                                Set.of(),
                                                line.length(),
                                                line.rows())));
        return new SewnLines(List.of(), List.of(), List.of(), List.of(), own, List.of(), List.of());
    }

    /** Its fold, or the line that it lands on where that is longer; of a facing the seam. */
    private static SewnLines.HemLine hem(HemResult result) {
        Length allRound =
                result.edges().stream()
                        .map(SewnCalculation::sewn)
                        .reduce(Length.ZERO, Length::plus);
        boolean isOpen =
                result.edges().stream().anyMatch(e -> e.piece().shape().isOpen(e.edge().edge()));
        Hem.Turned turned = result.hem().turned();
        SewnLine line =
                new SewnLine(
                        SewnLine.Kind.HEM,
                        Sentence.capital(result.name()),
                        Role.MAIN,
                        new HashSet<>(result.hem().edges()),
                        isOpen ? Optional.empty() : Optional.of(allRound),
                        1);
        return new SewnLines.HemLine(
                line,
                turned == Hem.Turned.BLIND,
                turned == Hem.Turned.ONCE || turned == Hem.Turned.BLIND);
    }

    private static Length sewn(HemEdge edge) {
        Length once = edge.landsOn().map(edge.fold()::orLonger).orElse(edge.fold());
        return once.times(edge.times());
    }
}
