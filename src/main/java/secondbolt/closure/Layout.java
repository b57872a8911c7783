package secondbolt.closure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.fit.FitResult;
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
public record Layout(Length length, List<Spot> meets, List<Spot> bulks) {
    /** Copies the lists. */
    public Layout {
        meets = List.copyOf(meets);
        bulks = List.copyOf(bulks);
    }

    /**
     * A place on the placket.
     *
     * @param at from the top
     * @param why what is there
     * @param clearAbove what stays free above it
     * @param clearBelow what stays free below it
     */
    public record Spot(Length at, String why, Length clearAbove, Length clearBelow) {
        /** A place with as much free on both sides. */
        public Spot(Length at, String why, Length clear) {
            this(at, why, clear, clear);
        }

        /** What stays free on the side where it is more. */
        Length clear() {
            return clearAbove.orLonger(clearBelow);
        }
    }

    /**
     * What stays free beside a seam or other bulk where nothing is told: 6 mm, a quarter of an inch
     * on an inch tape. Common practice, no source.
     */
    static Length usualClear(Tape tape) {
        return tape == Tape.INCH ? Length.ofInches(1, 4) : Length.ofMillimetres(6);
    }

    /** The placket of a closure; nothing while its length is unknown. */
    static Optional<Layout> of(Closure closure, Optional<FitResult> fit, Tape tape) {
        Placket placket = closure.placket();
        return placket.length(fit)
                .map(
                        length -> {
                            List<Spot> bulks = spots(closure.spread().bulks(), placket, fit);
                            for (Length join : placket.joins(fit)) {
                                bulks.add(new Spot(join, "the seam there", usualClear(tape)));
                            }
                            bulks.addAll(placket.hemmedEnds(fit));
                            return new Layout(
                                    length, spots(closure.spread().meets(), placket, fit), bulks);
                        });
    }

    /** The same placket as long as it was before the alterations, nothing lying on it. */
    static Optional<Layout> before(Closure closure, Optional<FitResult> fit) {
        return closure.placket()
                .lengthBefore(fit)
                .map(length -> new Layout(length, List.of(), List.of()));
    }

    private static List<Spot> spots(
            List<Spread.Spot> written, Placket placket, Optional<FitResult> fit) {
        List<Spot> spots = new ArrayList<>();
        for (Spread.Spot spot : written) {
            placket.place(spot.at().value(), fit)
                    .ifPresent(at -> spots.add(new Spot(at, spot.why(), spot.clear())));
        }
        return spots;
    }
}
