package secondbolt.file.value;

import java.util.Collection;
import java.util.List;
import java.util.TreeSet;

/**
 * A name that is spoken of and that nothing bears: spelt amiss there, or where it was given.
 *
 * @param name as it is spoken of
 * @param known the names of that kind that there are
 */
public record UnknownName(String name, Collection<String> known) {
    /** Copies the names, in alphabetical order. */
    public UnknownName {
        known = List.copyOf(new TreeSet<>(known));
    }
}
