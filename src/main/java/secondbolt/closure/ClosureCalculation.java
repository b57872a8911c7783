package secondbolt.closure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import secondbolt.fit.FitResult;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/**
 * Places buttons and holes: the first and the last are fixed, the others divide the distance
 * between them evenly.
 *
 * <p>Source: The New Dressmaker, Butterick, 1921, chapter 24: fix the top and bottom positions
 * first, then divide the distance between them into equal spaces. Each distance is worked out from
 * the top anew, so that roundings never add up.
 */
public final class ClosureCalculation {
    private ClosureCalculation() {}

    /**
     * How far a hole reaches past the button's centre: above it if upright, toward the edge if
     * level. An eighth of an inch on an inch tape, 3 mm on a metric one.
     *
     * <p>Source: Buttons and Buttonholes, Extension Bulletin 576, August 1965, for level holes; the
     * American dressmakers' standards (within an eighth of the top) for upright ones.
     */
    static Length reach(Tape tape) {
        return tape == Tape.INCH ? Length.ofInches(1, 8) : Length.ofMillimetres(3);
    }

    /**
     * All closures whose placket's length is known, in the maker's order.
     *
     * @param fit the altered pattern, if there is one; closures on its edges need it
     */
    public static List<ClosureResult> all(
            Map<String, Closure> closures, Optional<FitResult> fit, Tape tape) {
        List<ClosureResult> results = new ArrayList<>();
        closures.forEach(
                (name, closure) ->
                        closure.placket()
                                .length(fit)
                                .ifPresent(
                                        length -> results.add(work(name, closure, length, tape))));
        return results;
    }

    /** The closure worked out on a placket of this length. */
    static ClosureResult work(String name, Closure closure, Length length, Tape tape) {
        int spaces = closure.buttons() - 1;
        Length span =
                closure.last()
                        .map(last -> length.minus(last).minus(closure.first()))
                        .orElse(Length.ZERO);
        List<ClosureResult.ButtonMark> marks =
                IntStream.rangeClosed(0, spaces)
                        .mapToObj(i -> mark(i, spaces, span, closure, tape))
                        .toList();
        Optional<Length> gap = spaces == 0 ? Optional.empty() : Optional.of(span.dividedBy(spaces));
        return new ClosureResult(name, closure, length, closure.hole(), gap, marks);
    }

    private static ClosureResult.ButtonMark mark(
            int index, int spaces, Length span, Closure closure, Tape tape) {
        Length fromTop =
                spaces == 0
                        ? closure.first()
                        : closure.first().plus(span.times(index).dividedBy(spaces));
        Length from = closure.holes() == Closure.Holes.UPRIGHT ? fromTop : Length.ZERO;
        Length start = from.minus(reach(tape));
        return new ClosureResult.ButtonMark(index + 1, fromTop, start, start.plus(closure.hole()));
    }
}
