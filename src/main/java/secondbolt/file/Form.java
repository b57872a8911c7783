package secondbolt.file;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.source.Node;
import secondbolt.measure.Tape;

/**
 * How a value is written: reads it, says in words what is right, and says the same in JSON Schema.
 *
 * @param <T> what it is read as
 */
public interface Form<T> {
    /** Reads a node; if it is wrong, tells the mistake and returns nothing. */
    Optional<T> read(Node node, Reading reading);

    /**
     * Whether the node has the kind of this form, so that a mistake in it is this form's to tell.
     */
    boolean suits(Node node);

    /** What is right, as a mistake says it: {@code a length from 1 mm to 20 m}. */
    String words();

    /** The same with its measures on a tape: {@code a length from 1/16 in to 787 3/8 in}. */
    default String words(Tape tape) {
        return words();
    }

    /** The same in JSON Schema, as ordered maps and lists. */
    Map<String, Object> schema();

    /**
     * Whether {@code none} and {@code no} may stand for it under a key that may be left out, which
     * then is left out.
     */
    default boolean mayBeNone() {
        return false;
    }

    /** The keys inside, for the reference; none if it has none. */
    default List<Key<?>> keys() {
        return List.of();
    }
}
