package secondbolt.textile.extent;

import java.util.List;

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
    /** In the order left, right, top, bottom. */
    public List<T> inOrder() {
        return List.of(left, right, top, bottom);
    }
}
