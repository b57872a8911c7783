package secondbolt.work;

import java.util.List;
import secondbolt.file.Key;
import secondbolt.topic.Bench;
import secondbolt.topic.Outcome;
import secondbolt.topic.Topic;
import secondbolt.topic.TopicName;

/**
 * The steps of all topics and of the maker in one order, with what they wait for and where they can
 * hurt.
 */
public final class WorkTopic implements Topic<Boolean> {
    /** Its name. */
    public static final TopicName<Boolean> NAME = new TopicName<>("work");

    @Override
    public TopicName<Boolean> name() {
        return NAME;
    }

    @Override
    public List<Key<?>> keys() {
        return List.of();
    }

    @Override
    public boolean isSupposed() {
        return false;
    }

    @Override
    public Outcome<Boolean> work(Bench bench) {
        return Outcome.nothing();
    }
}
