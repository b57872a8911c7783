package secondbolt.measure;

import java.util.function.Function;

/**
 * What came of reading a measure: the value, or why the text was refused and what would be right.
 *
 * @param <T> the kind of measure
 */
public sealed interface Parsed<T> {
    /**
     * The text was read.
     *
     * @param value the measure
     */
    record Value<T>(T value) implements Parsed<T> {}

    /**
     * The text was refused.
     *
     * @param found what stands there, and what is the matter with it
     * @param right a form that would be right
     */
    record Refusal<T>(String found, String right) implements Parsed<T> {}

    /**
     * Answers with the one function that fits.
     *
     * @param value called with the measure if the text was read
     * @param refusal called if it was refused
     */
    default <R> R fold(Function<T, R> value, Function<Refusal<T>, R> refusal) {
        // Java 17 has no pattern switch; this is the one place that asks which of the two it is.
        return this instanceof Value<T> read
                ? value.apply(read.value())
                : refusal.apply((Refusal<T>) this);
    }

    /** The same with the value turned into another. */
    default <R> Parsed<R> map(Function<T, R> change) {
        return fold(
                value -> new Value<>(change.apply(value)),
                refusal -> new Refusal<>(refusal.found(), refusal.right()));
    }

    /**
     * The value.
     *
     * @throws IllegalArgumentException with the refusal's words if the text was refused
     */
    default T orThrow() {
        return fold(
                value -> value,
                refusal -> {
                    throw new IllegalArgumentException(refusal.found() + "; " + refusal.right());
                });
    }
}
