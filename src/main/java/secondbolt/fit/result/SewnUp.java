package secondbolt.fit.result;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import secondbolt.fit.seam.SeamCheck;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;
import secondbolt.pattern.EdgeSum;
import secondbolt.pattern.Seam;

/**
 * How long edges are once they are sewn: one that is gathered or eased into another comes to the
 * length of that one, and what laps past another side of its join closes over itself.
 *
 * <p>Derived: the seam holds all of the longer side on the shorter one, so each edge keeps its
 * share of it; of a side that laps it holds all but the lap.
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
        return Stream.concat(
                        drawnIn(result, term.edge()).map(c -> share(c, c.after().first())),
                        lapping(result, term.edge()).map(c -> share(c, c.after().second())))
                .flatMap(Optional::stream)
                .map(share -> Length.ofComputedMillimetres(flat.millimetres() * share))
                .filter(flat::isLongerThan)
                .min(Length::compareTo)
                .orElse(flat);
    }

    /** How much of a side the seam holds, as a share of it. */
    private static Optional<Double> share(SeamCheck check, Length side) {
        return side.isPositive()
                ? Optional.of(check.sewnTo().millimetres() / side.millimetres())
                : Optional.empty();
    }

    /** The joins in which an edge is of the side that laps. */
    private static Stream<SeamCheck> lapping(FitResult result, PieceEdge edge) {
        return result.seams().stream()
                .filter(check -> check.seam().isLapped())
                .filter(check -> check.seam().second().value().pieceEdges().contains(edge));
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
