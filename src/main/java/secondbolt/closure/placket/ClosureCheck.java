package secondbolt.closure.placket;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import secondbolt.closure.fastening.FastenerSpread;
import secondbolt.file.source.Place;
import secondbolt.file.value.Trouble;
import secondbolt.fit.result.FitResult;
import secondbolt.measure.Length;
import secondbolt.measure.Plural;
import secondbolt.measure.Tape;

/** Checks that the fasteners of a closure fit between its ends without touching. */
public final class ClosureCheck {
    private final Closure closure;
    private final Tape tape;
    private final List<Trouble> troubles = new ArrayList<>();

    private ClosureCheck(Closure closure, Tape tape) {
        this.closure = closure;
        this.tape = tape;
    }

    /**
     * What is wrong with a closure; of what depends on a length that is unknown, nothing is told.
     *
     * @param fit the altered pattern, if it lies on one
     */
    public static List<Trouble> of(Closure closure, Optional<FitResult> fit, Tape tape) {
        ClosureCheck check = new ClosureCheck(closure, tape);
        Optional<Length> length = closure.placket().length(fit);
        List<FastenerSpread.WrittenSpot> spots = new ArrayList<>(closure.spread().meets());
        spots.addAll(closure.spread().bulks());
        spots.forEach(spot -> check.spot(spot, fit, length));
        if (closure.spread().last().isEmpty()) {
            length.ifPresent(check::oneFits);
        } else {
            length.ifPresent(check::severalFit);
        }
        check.differingHoles();
        return List.copyOf(check.troubles);
    }

    /** What is told where there are more rows than can be looked through. */
    public static Trouble tooFree(Closure closure, Tape tape) {
        FastenerSpread.EndRange first = closure.spread().first();
        FastenerSpread.EndRange last = closure.spread().last().orElse(first);
        boolean isFirst = !range(last).isLongerThan(range(first));
        String word = closure.fastening().kind().word();
        if (!range(first).isPositive() && !range(last).isPositive()) {
            return new Trouble(
                    closure.places().count(),
                    "more rows of " + word + " than can be looked through",
                    "fewer " + word + ", or fewer places under `meet` and `bulk`");
        }
        return new Trouble(
                isFirst ? closure.places().first() : closure.places().last(),
                (isFirst ? "`first`" : "`last`")
                        + " anywhere in "
                        + tape.printBoth(range(isFirst ? first : last))
                        + ", which leaves the row too free: there are more than can be looked"
                        + " through",
                "a narrower range, or fewer " + word);
    }

    private static Length range(FastenerSpread.EndRange end) {
        return end.to().minus(end.from());
    }

    private void tell(Place place, String found, String right) {
        troubles.add(new Trouble(place, found, right));
    }

    private void spot(
            FastenerSpread.WrittenSpot spot, Optional<FitResult> fit, Optional<Length> length) {
        FastenerSpread.At at = spot.at().value();
        if (at.mark().isPresent() && closure.placket().edges().isEmpty()) {
            tell(
                    spot.at().place(),
                    "`" + at.mark().get() + "` on a placket by tape",
                    "a length from the top, or `on` with the edge of that piece");
        } else if (at.mark().isPresent()
                && fit.isPresent()
                && closure.placket().place(at, fit).isEmpty()) {
            tell(
                    spot.at().place(),
                    "`" + at.mark().get() + "`, which is no mark of a piece with an edge of `on`",
                    "a mark of one of these pieces, or a length from the top");
        }
        Optional<Length> was = closure.placket().lengthBefore(fit);
        if (at.printed().isPresent()
                && was.isPresent()
                && length.isPresent()
                && at.printed().get().isLongerThan(was.get())) {
            tell(
                    spot.at().place(),
                    "a place "
                            + print(at.printed().get())
                            + " down a placket of "
                            + print(was.get()),
                    "less than its length");
        }
    }

    private void differingHoles() {
        int most = closure.spread().count().orElse(0);
        for (int number : closure.fastening().differing().keySet()) {
            if (number > most && closure.spread().largestGap().isEmpty()) {
                tell(
                        closure.places().count(),
                        "a hole with the number " + number + " among " + most,
                        "a number from 1 to " + most);
            }
        }
    }

    private void oneFits(Length length) {
        if (closure.spread().first().from().isLongerThan(length)) {
            tell(
                    closure.places().first(),
                    "`first` of "
                            + print(closure.spread().first().from())
                            + " on a placket of "
                            + print(length),
                    "less than the placket's length");
        }
    }

    private void severalFit(Length length) {
        FastenerSpread.EndRange first = closure.spread().first();
        FastenerSpread.EndRange last = closure.spread().last().orElseThrow();
        int count = closure.spread().count().orElse(2);
        if (count == 1) {
            oneAlone(length, last);
            return;
        }
        Length lastFromTop = length.minus(last.from());
        if (!lastFromTop.isLongerThan(first.from())) {
            tell(
                    closure.places().last(),
                    "`last` that puts the last "
                            + closure.fastening().kind().one()
                            + " "
                            + print(first.from().minus(lastFromTop))
                            + " above the first",
                    "less than " + print(length.minus(first.from())));
            return;
        }
        haveRoom(lastFromTop.minus(first.from()), count);
        Length shortest = length.minus(last.to()).minus(first.to());
        keepsTheLargestGap(lastFromTop.minus(first.from()), shortest, count);
    }

    /**
     * A largest gap that no count keeps, however the ends are moved.
     *
     * @param longest from the first to the last at the most
     * @param shortest at the least
     */
    private void keepsTheLargestGap(Length longest, Length shortest, int count) {
        Optional<Length> largest = closure.spread().largestGap();
        Length need = closure.fastening().apart();
        if (largest.isEmpty() || need.times(count - 1L).isLongerThan(longest)) {
            return;
        }
        boolean isKept =
                IntStream.range(Math.max(1, count - 1), FastenerSpread.MOST)
                        .filter(gaps -> !need.times(gaps).isLongerThan(longest))
                        .anyMatch(gaps -> !largest.get().times(gaps).isShorterThan(shortest));
        if (!isKept) {
            int most =
                    (int)
                            Math.min(
                                    FastenerSpread.MOST - 1L,
                                    longest.millimetres() / need.millimetres());
            Length least = need.orLonger(shortest.dividedBy(most)).roundedUpTo(tape.mark());
            String word = closure.fastening().kind().word();
            tell(
                    closure.places().count(),
                    "a largest gap of "
                            + print(largest.get())
                            + ", which no number of "
                            + word
                            + (closure.fastening().hasHoles()
                                    ? " keeps without their holes overlapping"
                                    : " keeps without overlapping"),
                    "`largest gap` of at least " + print(least));
        }
    }

    private void oneAlone(Length length, FastenerSpread.EndRange last) {
        Length first = closure.spread().first().middle();
        if (length.minus(last.middle()).minus(first).size().isLongerThan(Length.ofMillimetres(1))) {
            tell(
                    closure.places().last(),
                    "`last` for one "
                            + closure.fastening().kind().one()
                            + " alone, at another place than `first`",
                    "`first` alone");
        } else {
            oneFits(length);
        }
    }

    private void haveRoom(Length span, int count) {
        Length gap = span.dividedBy(count - 1L);
        Length need = closure.fastening().apart();
        if (gap.isShorterThan(need)) {
            int most = 1 + (int) (span.millimetres() / need.millimetres());
            String one = closure.fastening().kind().one();
            tell(
                    closure.places().count(),
                    count
                            + " "
                            + closure.fastening().kind().word()
                            + " every "
                            + print(gap)
                            + ", so that they"
                            + (closure.fastening().hasHoles() ? " or their holes" : "")
                            + " would overlap",
                    "at most " + Plural.of(most, one) + " on this length");
        }
    }

    private String print(Length length) {
        return tape.printBoth(length);
    }
}
