package secondbolt.closure.placket;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.closure.fastening.FastenerSpread;
import secondbolt.fit.result.FitResult;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/**
 * A placket with what lies on it, after the alterations; all places from the top.
 *
 * @param length from its finished top edge to its finished bottom edge
 * @param meets where a fastener must come
 * @param bulks where no hole can be stitched, the joins of its edges and hems at its ends among
 *     them
 */
public record PlacketPlan(Length length, List<PlacketSpot> meets, List<PlacketSpot> bulks) {
    /** Copies the lists. */
    public PlacketPlan {
        meets = List.copyOf(meets);
        bulks = List.copyOf(bulks);
    }

    /** The placket of a closure; nothing while its length is unknown. */
    public static Optional<PlacketPlan> of(Closure closure, Optional<FitResult> fit, Tape tape) {
        Placket placket = closure.placket();
        return placket.length(fit)
                .map(
                        length -> {
                            List<PlacketSpot> bulks = spots(closure.spread().bulks(), placket, fit);
                            for (Length join : placket.joins(fit)) {
                                bulks.add(
                                        new PlacketSpot(
                                                join,
                                                "the seam there",
                                                FastenerSpread.USUAL_CLEAR.on(tape)));
                            }
                            bulks.addAll(placket.hemmedEnds(fit));
                            return new PlacketPlan(
                                    length, spots(closure.spread().meets(), placket, fit), bulks);
                        });
    }

    private static List<PlacketSpot> spots(
            List<FastenerSpread.WrittenSpot> written, Placket placket, Optional<FitResult> fit) {
        List<PlacketSpot> spots = new ArrayList<>();
        for (FastenerSpread.WrittenSpot spot : written) {
            placket.place(spot.at().value(), fit)
                    .ifPresent(at -> spots.add(new PlacketSpot(at, spot.why(), spot.clear())));
        }
        return spots;
    }
}
