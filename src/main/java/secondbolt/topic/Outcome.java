package secondbolt.topic;

import java.util.List;
import java.util.Optional;
import secondbolt.file.value.Trouble;
import secondbolt.worksheet.Worksheet;

/**
 * What a step of working out ended in.
 *
 * @param result what the topic came to, if there was something to work out and no mistake
 * @param worksheet its page and sheets, if it has any
 * @param troubles mistakes in what is written
 * @param <R> what the topic comes to
 */
public record Outcome<R>(
        Optional<R> result, Optional<Worksheet> worksheet, List<Trouble> troubles) {
    /** Copies the mistakes. */
    public Outcome {
        troubles = List.copyOf(troubles);
    }

    /** Nothing is written that the topic could work out. */
    public static <R> Outcome<R> nothing() {
        return new Outcome<>(Optional.empty(), Optional.empty(), List.of());
    }

    /** A result that no page shows. */
    public static <R> Outcome<R> of(R result) {
        return new Outcome<>(Optional.of(result), Optional.empty(), List.of());
    }

    /** A result with its page and sheets. */
    public static <R> Outcome<R> of(R result, Worksheet worksheet) {
        return new Outcome<>(Optional.of(result), Optional.of(worksheet), List.of());
    }

    /** The same with another page and other sheets. */
    public Outcome<R> showing(Worksheet other) {
        return new Outcome<>(result, Optional.of(other), troubles);
    }

    /**
     * Mistakes.
     *
     * @throws IllegalArgumentException if there are none
     */
    public static <R> Outcome<R> wrong(List<Trouble> troubles) {
        if (troubles.isEmpty()) {
            throw new IllegalArgumentException("wrong without a mistake");
        }
        return new Outcome<>(Optional.empty(), Optional.empty(), troubles);
    }
}
