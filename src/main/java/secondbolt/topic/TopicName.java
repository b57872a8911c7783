package secondbolt.topic;

/**
 * The name of a topic, by which later ones ask what it came to.
 *
 * @param word one lower-case word
 * @param <R> what the topic comes to
 */
public record TopicName<R>(String word) {}
