package secondbolt.topic;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.Fields;

/**
 * Works out a project's topics, each when it is first asked for. What a step read is noted, and
 * what it came to is used again while all of that is equal: in the same run and, as long as the
 * engine is kept, in the next ones. Mistakes are never used again, for their places move.
 *
 * <p>Not safe to share between threads.
 */
public final class Engine {
    private final List<Topic<?>> topics;
    private final Map<String, Topic<?>> byName = new HashMap<>();
    private final Shelf shelf = new Shelf();
    private final Map<String, Integer> worked = new HashMap<>();

    /**
     * An engine for one project.
     *
     * @param topics in the order of working; a topic reads only those before it
     * @throws IllegalArgumentException if two share a name
     */
    public Engine(List<Topic<?>> topics) {
        this.topics = List.copyOf(topics);
        for (Topic<?> topic : topics) {
            if (byName.putIfAbsent(topic.name().word(), topic) != null) {
                throw new IllegalArgumentException("two topics called " + topic.name().word());
            }
        }
    }

    /**
     * Works out all topics.
     *
     * @param sections the project file as read
     * @return what each came to, in the order of working
     */
    public List<Outcome<?>> run(Fields sections) {
        worked.clear();
        shelf.begin();
        WorkingOut run = new WorkingOut(this, sections);
        List<Outcome<?>> all =
                topics.stream().<Outcome<?>>map(t -> run.outcome(t, Supposed.NOTHING)).toList();
        shelf.end();
        return all;
    }

    /** How often the last run worked out a topic, as written or as supposed. */
    public int timesWorked(String topic) {
        return worked.getOrDefault(topic, 0);
    }

    void count(Topic<?> topic) {
        worked.merge(topic.name().word(), 1, Integer::sum);
    }

    Shelf shelf() {
        return shelf;
    }

    /**
     * The topic of a name, for one that stands behind it.
     *
     * @throws IllegalStateException if there is none, or it does not stand before the asking one
     */
    Topic<?> before(Topic<?> asking, String name) {
        return Optional.ofNullable(byName.get(name))
                .filter(topic -> topics.indexOf(topic) < topics.indexOf(asking))
                .orElseThrow(
                        () ->
                                new IllegalStateException(
                                        asking.name().word() + " asks for " + name));
    }

    List<Topic<?>> before(Topic<?> asking) {
        return topics.subList(0, topics.indexOf(asking));
    }

    List<Topic<?>> supposedBefore(Topic<?> asking) {
        return before(asking).stream().filter(Topic::isSupposed).toList();
    }
}
