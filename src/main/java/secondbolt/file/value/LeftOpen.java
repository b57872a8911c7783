package secondbolt.file.value;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A key under which a maker wrote {@code unknown}, and which is worked out as if it were left out,
 * or with a value that is taken meanwhile.
 *
 * @param path the section, the names of her own and the keys above it, from the outside in
 * @param what the key
 * @param meanwhile what is taken until she knows; empty if it is as if left out
 * @param findOut the cheapest way to find out
 */
public record LeftOpen(List<String> path, String what, String meanwhile, String findOut) {
    /** Copies the path. */
    public LeftOpen {
        path = List.copyOf(path);
    }

    /** Whether a value is taken for it meanwhile. */
    public boolean isTaken() {
        return !meanwhile.isEmpty();
    }

    /** All that is taken meanwhile among what is open, in one line; nothing if nothing is. */
    public static Optional<String> taken(List<LeftOpen> open) {
        return open.stream()
                .filter(LeftOpen::isTaken)
                .map(one -> one.inside() + ": " + one.meanwhile())
                .reduce((all, one) -> all + "; " + one);
    }

    /** What it is, within its section, as a maker says it: {@code front band: button, across}. */
    public String words() {
        List<String> names = path.isEmpty() ? List.of() : path.subList(0, Math.min(2, path.size()));
        return names.isEmpty() ? what : names.get(names.size() - 1) + ": " + inside();
    }

    /** The same without the name: {@code button, across}. */
    private String inside() {
        List<String> keys = new ArrayList<>(path.subList(Math.min(2, path.size()), path.size()));
        keys.add(what);
        return String.join(", ", keys);
    }
}
