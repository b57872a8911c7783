package secondbolt.project;

import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Key;

/**
 * A project, as the maker wrote it: nothing in it is computed.
 *
 * @param heading what it says of itself
 * @param sections all its sections, each read by the topic it belongs to
 */
public record Project(Heading heading, Fields sections) {
    /** What stands under a key, if it is written. */
    public <T> Optional<T> get(Key<T> key) {
        return sections.get(key);
    }
}
