package secondbolt.textile.extent;

import java.util.List;
import java.util.function.Function;

/**
 * Something of each of the four sides, as the cloth lies right side up.
 *
 * @param left the left side
 * @param right the right side
 * @param top the upper side
 * @param bottom the lower side
 * @param <T> what of it
 */
public record Sides<T>(T left, T right, T top, T bottom) {
    /** Of each side what a function makes of it. */
    public <R> Sides<R> map(Function<T, R> change) {
        return new Sides<>(
                change.apply(left), change.apply(right), change.apply(top), change.apply(bottom));
    }

    /** In the order left, right, top, bottom. */
    public List<T> inOrder() {
        return List.of(left, right, top, bottom);
    }
}
