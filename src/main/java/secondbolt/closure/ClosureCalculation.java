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
 * Decides how many fasteners a closure has, where they come and where their holes begin and end.
 */
public final class ClosureCalculation {
    private static final int MOST = 60;

    /** How many counts are tried for one that leaves no hole to be worked by hand. */
    private static final int CHOICE = 3;

    private final Closure closure;
    private final Layout layout;
    private final Machine machine;
    private final Tape tape;
    private final ClosureSpacing spacing;

    private ClosureCalculation(Closure closure, Layout layout, Machine machine, Tape tape) {
        this.closure = closure;
        this.layout = layout;
        this.machine = machine;
        this.tape = tape;
        this.spacing = new ClosureSpacing(closure, layout, machine, tape);
    }

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
            Map<String, Closure> closures, Optional<FitResult> fit, Machine machine, Tape tape) {
        List<ClosureResult> results = new ArrayList<>();
        closures.forEach(
                (name, closure) ->
                        Layout.of(closure, fit, tape)
                                .ifPresent(
                                        layout ->
                                                results.add(
                                                        work(
                                                                name, closure, layout, machine,
                                                                tape))));
        return results;
    }

    /**
     * The closure worked out on a placket.
     *
     * @throws IllegalArgumentException if its fasteners cannot be placed at all, which {@link
     *     ClosureCheck} tells
     */
    static ClosureResult work(
            String name, Closure closure, Layout layout, Machine machine, Tape tape) {
        return new ClosureCalculation(closure, layout, machine, tape).result(name);
    }

    private ClosureResult result(String name) {
        int count = count();
        Solved solved =
                spacing.solve(count)
                        .orElseThrow(
                                () ->
                                        new IllegalArgumentException(
                                                count + " cannot be placed on " + layout.length()));
        List<ClosureResult.Mark> marks =
                IntStream.range(0, count).mapToObj(i -> mark(i, solved)).toList();
        int added = closure.spread().count().map(told -> count - told).orElse(0);
        return new ClosureResult(
                name,
                closure,
                layout,
                solved,
                marks,
                added,
                solved.isClean() ? List.of() : new Remedies(spacing, count, solved, tape).words(),
                advice(count));
    }

    /** As told; more where the largest gap asks for it; the fewest that keep it if none is told. */
    private int count() {
        int told = closure.spread().count().orElse(2);
        Optional<Length> largest = closure.spread().largestGap();
        if (largest.isEmpty()) {
            return told;
        }
        List<Integer> possible =
                IntStream.rangeClosed(Math.max(2, told), MOST)
                        .filter(count -> spacing.isPossible(count, largest.get()))
                        .limit(CHOICE)
                        .boxed()
                        .toList();
        return possible.stream()
                .filter(count -> spacing.isClear(count, largest.get()))
                .findFirst()
                .orElse(possible.isEmpty() ? told : possible.get(0));
    }

    private ClosureResult.Mark mark(int index, Solved solved) {
        int number = index + 1;
        Fastening fastening = closure.fastening();
        Length fromTop = solved.fromTop().get(index);
        Fastening.Holes holes = fastening.holes(number);
        Length start =
                (holes == Fastening.Holes.UPRIGHT ? fromTop : Length.ZERO).minus(reach(tape));
        boolean isTooLong = fastening.hasHoles() && !machine.stitches(fastening.hole());
        boolean byHand = fastening.hasHoles() && (solved.byHand().contains(index) || isTooLong);
        return new ClosureResult.Mark(
                number, fromTop, holes, start, start.plus(fastening.hole()), byHand, why(fromTop));
    }

    /** What a fastener meets there, in the maker's words. */
    private Optional<String> why(Length fromTop) {
        return layout.meets().stream()
                .filter(meet -> meet.at().minus(fromTop).size().isShorterThan(tape.mark()))
                .map(Layout.Spot::why)
                .findFirst();
    }

    private List<ClosureResult.Advice> advice(int count) {
        List<ClosureResult.Advice> rows = new ArrayList<>();
        for (int other = Math.max(2, count - 3); other <= count + 3 && count > 1; other++) {
            int others = other;
            spacing.solve(other)
                    .ifPresent(solved -> rows.add(new ClosureResult.Advice(others, solved)));
        }
        return rows;
    }
}
