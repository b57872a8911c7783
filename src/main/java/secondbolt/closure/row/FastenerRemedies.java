package secondbolt.closure.row;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import secondbolt.closure.fastening.FastenerSpread;
import secondbolt.closure.spacing.Steps;
import secondbolt.closure.spacing.TooFree;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Convention;

/**
 * What would meet all that is asked of a closure. Each is tried as the maker would write it: by
 * marks of her tape, with the count that her file then comes to, and within the largest gap.
 *
 * @param input what the closure is worked out from
 * @param count how many fasteners it has
 * @param row how they lie now
 * @param steps that all are looked for in; what is not found in them is not told
 */
record FastenerRemedies(ClosureInput input, int count, FastenerRow row, Steps steps) {
    private static final int FURTHEST_COUNT = 6;

    /** Coarse enough to be written and measured. */
    private static final Convention STRIDE =
            Convention.common(Length.ofInches(1, 16), Length.ofMillimetres(1));

    private static final Convention FURTHEST =
            Convention.common(Length.ofInches(15, 4), Length.ofMillimetres(120));

    /** One sentence for each, the one that changes least first. */
    List<String> words() {
        List<String> words = new ArrayList<>();
        found(this::nearestCount)
                .ifPresent(
                        other ->
                                words.add(
                                        "With "
                                                + other
                                                + " instead of "
                                                + count
                                                + " all holes are clear and all places met."));
        found(() -> shift().or(this::lowerFirst)).ifPresent(words::add);
        if (!row.byHand().isEmpty()) {
            String work = "ork what cannot be stitched by hand, as the sheet marks it.";
            words.add(words.isEmpty() ? "W" + work : "Or w" + work);
        }
        return words;
    }

    private static <T> Optional<T> found(Supplier<Optional<T>> search) {
        try {
            return search.get();
        } catch (TooFree e) {
            return Optional.empty();
        }
    }

    private FastenerSpread spread() {
        return input.closure().spread();
    }

    private Optional<Integer> nearestCount() {
        return IntStream.rangeClosed(1, FURTHEST_COUNT)
                .flatMap(far -> IntStream.of(count + far, count - far))
                .filter(this::isTaken)
                .filter(other -> serves(spread().counting(other), other))
                .boxed()
                .findFirst();
    }

    /** Whether the file may say so many: two need two ends, and a hole that differs its button. */
    private boolean isTaken(int other) {
        return other >= 2
                && other <= FastenerSpread.MOST
                && spread().last().isPresent()
                && input.closure().fastening().differing().keySet().stream()
                        .allMatch(number -> number <= other);
    }

    /** Whether a spread comes to so many, and they lie cleanly. */
    private boolean serves(FastenerSpread other, int asked) {
        ClosureSpacing spacing = new ClosureSpacing(input.with(other), steps);
        return new FastenerCount(other, spacing).taken() == asked && spacing.isClean(asked);
    }

    /** All ways to move an end by, the shortest first. */
    private List<Length> strides() {
        Length stride = STRIDE.on(input.tape());
        int most = (int) (FURTHEST.on(input.tape()).millimetres() / stride.millimetres());
        return IntStream.rangeClosed(1, most).mapToObj(stride::times).toList();
    }

    private Optional<String> shift() {
        Optional<FastenerSpread.EndRange> last = spread().last();
        if (count < 2 || last.isEmpty()) {
            return Optional.empty();
        }
        for (Length by : strides()) {
            if (servesEnding(last.get().plus(by))) {
                return Optional.of(moved(by, "higher", "larger"));
            }
            if (servesEnding(last.get().plus(Length.ZERO.minus(by)))) {
                return Optional.of(moved(by, "lower", "smaller"));
            }
        }
        return Optional.empty();
    }

    private boolean servesEnding(FastenerSpread.EndRange last) {
        if (last.from().isNegative() || !last.to().isShorterThan(input.plan().length())) {
            return false;
        }
        FastenerSpread other = spread().ending(last);
        return new ClosureSpacing(input.with(other), steps).keepsOnThePlacket(count)
                && serves(other, count);
    }

    /** A first one in bulk at the top is out of it lower down. */
    private Optional<String> lowerFirst() {
        return count < 2
                ? Optional.empty()
                : strides().stream()
                        .filter(by -> serves(spread().beginning(spread().first().plus(by)), count))
                        .findFirst()
                        .map(
                                by ->
                                        "With the first "
                                                + tape().printSmall(by)
                                                + " lower (`first` larger by as much) too.");
    }

    private String moved(Length by, String way, String size) {
        return "With the last "
                + tape().printSmall(by)
                + " "
                + way
                + " (`last` "
                + size
                + " by as much) too.";
    }

    private Tape tape() {
        return input.tape();
    }
}
