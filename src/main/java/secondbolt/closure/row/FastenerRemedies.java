package secondbolt.closure.row;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import secondbolt.closure.spacing.Zone;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/**
 * What would meet all that is asked of a closure.
 *
 * @param spacing places its fasteners
 * @param count how many it has
 * @param row how they lie now
 * @param tape the maker's
 */
record FastenerRemedies(ClosureSpacing spacing, int count, FastenerRow row, Tape tape) {
    private static final int FURTHEST_COUNT = 6;

    /** Looked for in steps of two: a millimetre, or a thirty-second of an inch. */
    private static final int STRIDE = 2;

    private static final int FURTHEST_STEPS = 240;

    /** One sentence for each, the one that changes least first. */
    List<String> words() {
        List<String> words = new ArrayList<>();
        nearestCount()
                .ifPresent(
                        other ->
                                words.add(
                                        "With "
                                                + other
                                                + " instead of "
                                                + count
                                                + " all holes are clear and all places met."));
        shift().or(this::lowerFirst).ifPresent(words::add);
        if (!row.byHand().isEmpty()) {
            String work = "ork what cannot be stitched by hand, as the sheet marks it.";
            words.add(words.isEmpty() ? "W" + work : "Or w" + work);
        }
        return words;
    }

    private Optional<Integer> nearestCount() {
        return IntStream.rangeClosed(1, FURTHEST_COUNT)
                .flatMap(far -> IntStream.of(count + far, count - far))
                .filter(other -> other >= 2)
                .filter(other -> spacing.isClean(other, spacing.first(), spacing.last()))
                .boxed()
                .findFirst();
    }

    private Optional<String> shift() {
        return count < 2
                ? Optional.empty()
                : IntStream.rangeClosed(1, FURTHEST_STEPS / STRIDE)
                        .map(i -> i * STRIDE)
                        .flatMap(steps -> IntStream.of(-steps, steps))
                        .filter(this::isCleanWhenMoved)
                        .boxed()
                        .findFirst()
                        .map(this::moved);
    }

    private boolean isCleanWhenMoved(int steps) {
        Zone last = spacing.lastMoved(steps);
        return last.from() > 0
                && spacing.keepsOnThePlacket(count, last)
                && spacing.isClean(count, spacing.first(), last);
    }

    /** A first one in bulk at the top is out of it lower down. */
    private Optional<String> lowerFirst() {
        return count < 2
                ? Optional.empty()
                : IntStream.rangeClosed(1, FURTHEST_STEPS / STRIDE)
                        .map(i -> i * STRIDE)
                        .filter(
                                steps ->
                                        spacing.isClean(
                                                count,
                                                spacing.first().moved(steps),
                                                spacing.last()))
                        .boxed()
                        .findFirst()
                        .map(
                                steps ->
                                        "With the first "
                                                + tape.printSmall(spacing.length(steps))
                                                + " lower (`first` larger by as much) too.");
    }

    private String moved(int steps) {
        Length by = spacing.length(Math.abs(steps));
        return "With the last "
                + tape.printSmall(by)
                + (steps < 0 ? " higher" : " lower")
                + " (`last` "
                + (steps < 0 ? "larger" : "smaller")
                + " by as much) too.";
    }
}
