package secondbolt.file.value;

import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * What a maker answered: a value, or {@code unknown}, which leaves open what depends on it.
 *
 * @param <T> the kind of value
 */
public sealed interface Answer<T> {
    /**
     * She knows it.
     *
     * @param value what she wrote
     */
    record Known<T>(T value) implements Answer<T> {}

    /** She wrote {@code unknown}. */
    record Unknown<T>() implements Answer<T> {}

    /** A known answer. */
    static <T> Answer<T> known(T value) {
        return new Known<>(value);
    }

    /** An open answer. */
    static <T> Answer<T> unknown() {
        return new Unknown<>();
    }

    /** The value, if she knows it. */
    default Optional<T> toOptional() {
        return this instanceof Known<T> known ? Optional.of(known.value()) : Optional.empty();
    }

    /** The same with the value turned into another. */
    default <R> Answer<R> map(Function<T, R> change) {
        return toOptional().map(change).map(Answer::known).orElseGet(Answer::unknown);
    }

    /** The value worked out from two answers; unknown if either is. */
    default <S, R> Answer<R> with(Answer<S> other, BiFunction<T, S, R> combine) {
        return toOptional().isPresent() && other.toOptional().isPresent()
                ? known(combine.apply(toOptional().get(), other.toOptional().get()))
                : unknown();
    }
}
