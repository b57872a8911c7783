package secondbolt.sewing.seam;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import secondbolt.fit.result.FitResult;
import secondbolt.fit.seam.SeamCheck;
import secondbolt.garment.PieceEdge;
import secondbolt.garment.Role;
import secondbolt.measure.Length;
import secondbolt.pattern.Seam;
import secondbolt.pattern.piece.Piece;
import secondbolt.sewing.plan.SeamChoice;
import secondbolt.sewing.plan.SewingPlan;
import secondbolt.worksheet.Sentence;

/**
 * The joins of a pattern as they are sewn, and the layers that are left over.
 *
 * @param fit the altered pattern
 * @param shapes of its edges
 * @param supply how many there are of each edge
 * @param plan what she tells
 */
record JoinLines(FitResult fit, EdgeShapes shapes, EdgeSupply supply, SewingPlan plan) {
    List<JoinLine> all() {
        return fit.seams().stream().map(this::line).toList();
    }

    private JoinLine line(SeamCheck check) {
        Seam seam = check.seam();
        Set<PieceEdge> edges = seam.edges();
        EdgeSupply.Count count = supply.of(seam);
        SeamChoice choice = plan.choice(edges);
        Map<PieceEdge, Length> allowances = new LinkedHashMap<>();
        edges.forEach(edge -> allowances.put(edge, shapes.allowance(edge)));
        return new JoinLine(
                seam,
                new SewnLine(
                        SewnLine.Kind.SEAM,
                        Sentence.capital(heading(seam)),
                        role(edges),
                        edges,
                        length(check),
                        choice.times().orElse(count.times())),
                choice,
                allowances,
                shapes.of(edges),
                choice.times().isPresent() ? List.of() : count.lacking());
    }

    private static String heading(Seam seam) {
        return seam.first().value().heading() + " to " + seam.second().value().heading();
    }

    /**
     * How long one is. A side that is gathered or eased in is as long as the other then; a band
     * that is stretched on is as long as its edge; of sides that do not meet the longer is told.
     */
    private static Optional<Length> length(SeamCheck check) {
        if (!check.isKnown()) {
            return Optional.empty();
        }
        boolean isFuller = check.seam().isGathered() || check.seam().ease().isPositive();
        Length to = check.sewnTo();
        return Optional.of(isFuller ? to : to.orLonger(check.after().first()));
    }

    /** The lining's only where no edge is of another cloth. */
    private Role role(Set<PieceEdge> edges) {
        List<Role> roles =
                edges.stream()
                        .map(edge -> EdgeSupply.role(fit.find(edge.piece()).orElseThrow()))
                        .distinct()
                        .toList();
        return roles.size() == 1 ? roles.get(0) : Role.MAIN;
    }

    /**
     * Layers of an edge that its joins leave over: a facing or an inner collar stand that is turned
     * in and sewn down. Derived: of what is cut, what all its joins take is taken off.
     */
    List<SewnLine> layers(List<JoinLine> joins) {
        Map<PieceEdge, Integer> taken = new LinkedHashMap<>();
        for (JoinLine join : joins) {
            EdgeSupply.named(join.seam())
                    .forEach(
                            (edge, count) ->
                                    taken.merge(edge, count * join.line().times(), Integer::sum));
        }
        List<SewnLine> layers = new ArrayList<>();
        taken.forEach(
                (edge, count) -> {
                    int left = supply.of(edge) - count;
                    if (left > 0 && !isExcepted(edge)) {
                        layers.add(layer(edge, left));
                    }
                });
        return layers;
    }

    /** Where she says how often a join is sewn, what is over is not sewn. */
    private boolean isExcepted(PieceEdge edge) {
        return fit.pattern().seams().stream()
                .filter(seam -> seam.edges().contains(edge))
                .anyMatch(seam -> plan.choice(seam.edges()).times().isPresent());
    }

    private SewnLine layer(PieceEdge edge, int left) {
        Piece piece = fit.find(edge.piece()).orElseThrow();
        Optional<Length> once =
                piece.shape().isOpen(edge.edge()) ? Optional.empty() : fit.after().edge(edge);
        return new SewnLine(
                SewnLine.Kind.SECOND_LAYER,
                Sentence.capital(edge.heading()) + ", second layer",
                EdgeSupply.role(piece),
                Set.of(edge),
                once,
                left);
    }
}
