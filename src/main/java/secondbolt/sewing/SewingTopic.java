package secondbolt.sewing;

import java.util.List;
import secondbolt.file.Key;
import secondbolt.topic.Bench;
import secondbolt.topic.Outcome;
import secondbolt.topic.Topic;
import secondbolt.topic.TopicName;

/** The seams as they are sewn: stitches, finishes, thread and needle. */
public final class SewingTopic implements Topic<Boolean> {
    /** Its name. */
    public static final TopicName<Boolean> NAME = new TopicName<>("sewing");

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
