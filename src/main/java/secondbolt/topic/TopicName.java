package secondbolt.topic;

import java.util.Optional;

/**
 * The name of a topic, by which later ones ask what it came to.
 *
 * @param word one lower-case word
 * @param <R> what the topic comes to
 */
public record TopicName<R>(String word) {
    /** What an outcome of the topic of this name, and of no other, holds. */
    @SuppressWarnings("unchecked") // the name of a topic carries what it comes to
    public Optional<R> in(Outcome<?> outcome) {
        return (Optional<R>) outcome.result();
    }
}
