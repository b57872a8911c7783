package secondbolt.closure.row;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import secondbolt.closure.fastening.Fastening;
import secondbolt.closure.fastening.Machine;
import secondbolt.closure.placket.Closure;
import secondbolt.closure.placket.PlacketPlan;
import secondbolt.closure.placket.PlacketSpot;
import secondbolt.closure.spacing.TooFree;
import secondbolt.fault.Fault;
import secondbolt.fit.result.FitResult;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/**
 * Decides how many fasteners a closure has, where they come and where their holes begin and end.
 */
public final class ClosureCalculation {
    /** How many more and how many fewer are tried beside the count taken. */
    private static final int BESIDE = 3;

    private final ClosureInput input;
    private final Closure closure;
    private final ClosureSpacing spacing;

    private ClosureCalculation(ClosureInput input) {
        this.input = input;
        this.closure = input.closure();
        this.spacing = new ClosureSpacing(input, input.steps());
    }

    /**
     * All closures whose placket's length is known, in the maker's order.
     *
     * @param fit the altered pattern, if there is one; closures on its edges need it
     */
    public static All all(
            Map<String, Closure> closures, Optional<FitResult> fit, Machine machine, Tape tape) {
        List<ClosureResult> results = new ArrayList<>();
        List<Closure> tooFree = new ArrayList<>();
        closures.forEach(
                (name, closure) ->
                        Fault.during(
                                name,
                                () -> {
                                    PlacketPlan.of(closure, fit, tape)
                                            .map(
                                                    plan ->
                                                            new ClosureInput(
                                                                    name, closure, plan, machine,
                                                                    tape))
                                            .map(input -> input.among(closures.size()))
                                            .ifPresent(input -> add(input, fit, results, tooFree));
                                    return true;
                                }));
        return new All(results, tooFree);
    }

    private static void add(
            ClosureInput input,
            Optional<FitResult> fit,
            List<ClosureResult> results,
            List<Closure> tooFree) {
        try {
            results.add(work(input, PlacketChange.of(input, fit)));
        } catch (TooFree e) {
            tooFree.add(input.closure());
        }
    }

    /**
     * All closures of a garment.
     *
     * @param results of those that were worked out, in the maker's order
     * @param tooFree those whose best row was not found in the steps that a closure has
     */
    public record All(List<ClosureResult> results, List<Closure> tooFree) {
        /** Copies the lists. */
        public All {
            results = List.copyOf(results);
            tooFree = List.copyOf(tooFree);
        }
    }

    /**
     * One closure.
     *
     * @param change what the alterations did to its placket
     * @throws IllegalArgumentException if its fasteners cannot be placed at all, which {@link
     *     ClosureCheck} tells
     * @throws TooFree if its best row was not found in the steps that it has
     */
    public static ClosureResult work(ClosureInput input, PlacketChange change) {
        return new ClosureCalculation(input).result(change);
    }

    private ClosureResult result(PlacketChange change) {
        int count = new FastenerCount(closure.spread(), spacing).taken();
        FastenerRow row =
                spacing.solve(count)
                        .orElseThrow(
                                () ->
                                        new IllegalArgumentException(
                                                count
                                                        + " cannot be placed on "
                                                        + input.plan().length()));
        return new ClosureResult(
                input,
                row,
                IntStream.range(0, count).mapToObj(i -> mark(i, row)).toList(),
                closure.spread().count().map(told -> count - told).orElse(0),
                new Advice(
                        input,
                        count,
                        () ->
                                row.isClean()
                                        ? List.of()
                                        : new FastenerRemedies(input, count, row, input.steps())
                                                .words(),
                        () -> counts(count)),
                change);
    }

    private FastenerMark mark(int index, FastenerRow row) {
        int number = index + 1;
        Fastening fastening = closure.fastening();
        Length fromTop = row.fromTop().get(index);
        Fastening.Holes holes = fastening.holes(number);
        Length start =
                (holes == Fastening.Holes.UPRIGHT ? fromTop : Length.ZERO)
                        .minus(holes.reach().on(input.tape()));
        boolean isTooLong = fastening.hasHoles() && !input.machine().stitches(fastening.hole());
        boolean byHand = fastening.hasHoles() && (row.byHand().contains(index) || isTooLong);
        return new FastenerMark(
                number, fromTop, holes, start, start.plus(fastening.hole()), byHand, why(fromTop));
    }

    /** What a fastener meets there, in the maker's words. */
    private Optional<String> why(Length fromTop) {
        return input.plan().meets().stream()
                .filter(meet -> meet.at().minus(fromTop).size().isShorterThan(input.tape().mark()))
                .map(PlacketSpot::why)
                .findFirst();
    }

    private static Optional<FastenerRow> found(ClosureSpacing spacing, int count) {
        try {
            return spacing.solve(count);
        } catch (TooFree e) {
            return Optional.empty();
        }
    }

    /** Of those that keep the largest gap, as far as there are steps to look for them. */
    private List<OtherCount> counts(int taken) {
        if (taken < 2) {
            return List.of();
        }
        ClosureSpacing others = new ClosureSpacing(input, input.steps());
        List<OtherCount> counts = new ArrayList<>();
        for (int other = Math.max(2, taken - BESIDE); other <= taken + BESIDE; other++) {
            int count = other;
            found(others, count).ifPresent(row -> counts.add(new OtherCount(count, row)));
        }
        return List.copyOf(counts);
    }
}
