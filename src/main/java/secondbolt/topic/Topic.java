package secondbolt.topic;

import java.util.List;
import secondbolt.file.Key;

/**
 * One topic of the notebook: its name, its keys in the project file, and how it is worked out.
 *
 * @param <R> what it comes to: an immutable value that is compared by what it holds
 */
public interface Topic<R> {
    /** Its name. */
    TopicName<R> name();

    /** The sections of the project file that are its own; none if it only reads others'. */
    List<Key<?>> keys();

    /**
     * Works it out. The step is pure: it depends on what it reads from the bench and on nothing
     * else.
     *
     * @param bench what is written, and what topics that stand before it came to
     */
    Outcome<R> work(Bench bench);

    /** Whether it is worked out again to see what an alteration changes. A long search is not. */
    default boolean isSupposed() {
        return true;
    }
}
