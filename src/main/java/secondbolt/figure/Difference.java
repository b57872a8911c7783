package secondbolt.figure;

import java.util.List;
import java.util.Optional;

/**
 * A figure that is not what it was.
 *
 * @param path the names that lead to it, outermost first; items of lists by their own names
 * @param before what it was; nothing if it is new
 * @param after what it is; nothing if it is no longer there
 */
public record Difference(List<String> path, Optional<Figure> before, Optional<Figure> after) {
    /** Copies the path. */
    public Difference {
        path = List.copyOf(path);
    }
}
