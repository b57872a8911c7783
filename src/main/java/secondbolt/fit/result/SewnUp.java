package secondbolt.fit.result;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import secondbolt.fit.seam.SeamCheck;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;
import secondbolt.pattern.EdgeSum;
import secondbolt.pattern.Seam;

/**
 * How long edges are once they are sewn: one that is gathered or eased into another comes to the
 * length of that one.
 *
 * <p>Derived: the seam holds all of the longer side on the shorter one, so each edge keeps its
 * share of it.
 */
public final class SewnUp {
    private SewnUp() {}

    /** All of a sum after the alterations, as it is sewn. */
    public static Length of(FitResult result, EdgeSum sum) {
        Length all = Length.ZERO;
        for (EdgeSum.Term term : sum.terms()) {
            all = all.plus(sewn(result, term));
        }
        return all;
    }

    private static Length sewn(FitResult result, EdgeSum.Term term) {
        Length flat = result.lengthAfter(new EdgeSum(List.of(term)));
        return drawnIn(result, term.edge())
                .map(SeamCheck::after)
                .filter(sides -> sides.first().isPositive())
                .mapToDouble(
                        sides ->
                                flat.millimetres()
                                        * sides.second().millimetres()
                                        / sides.first().millimetres())
                .filter(mm -> mm < flat.millimetres())
                .boxed()
                .min(Double::compare)
                .map(Length::ofComputedMillimetres)
                .orElse(flat);
    }

    /** The joins in which an edge is the side that is gathered or eased in. */
    private static Stream<SeamCheck> drawnIn(FitResult result, PieceEdge edge) {
        return result.seams().stream()
                .filter(check -> isDrawnIn(check.seam()))
                .filter(check -> check.seam().first().value().pieceEdges().contains(edge));
    }

    private static boolean isDrawnIn(Seam seam) {
        return seam.isGathered() || seam.ease().isPositive();
    }

    /** Whether an edge of a sum is gathered or eased into another. */
    public static boolean isDrawnIn(FitResult result, EdgeSum sum) {
        return sum.pieceEdges().stream()
                .anyMatch(edge -> drawnIn(result, edge).findAny().isPresent());
    }

    /** The edges of which it is not known whether the alterations changed them. */
    public static List<EdgeSum.Term> open(FitResult result, EdgeSum sum) {
        Set<EdgeSum.Term> open = new LinkedHashSet<>(result.open(sum));
        for (PieceEdge edge : sum.pieceEdges()) {
            drawnIn(result, edge).forEach(check -> open.addAll(check.open()));
        }
        return List.copyOf(open);
    }
}
