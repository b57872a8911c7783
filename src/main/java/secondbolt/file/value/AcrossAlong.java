package secondbolt.file.value;

import java.util.function.Function;

/**
 * A pair written {@code [across, along]}: crosswise from the left edge, lengthwise from the top.
 *
 * @param across crosswise
 * @param along lengthwise, with the grain
 */
public record AcrossAlong<T>(T across, T along) {
    /** Both turned into another. */
    public <R> AcrossAlong<R> map(Function<T, R> change) {
        return new AcrossAlong<>(change.apply(across), change.apply(along));
    }
}
