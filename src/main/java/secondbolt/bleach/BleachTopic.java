package secondbolt.bleach;

import java.util.List;
import secondbolt.file.Key;
import secondbolt.topic.Bench;
import secondbolt.topic.Outcome;
import secondbolt.topic.Topic;
import secondbolt.topic.TopicName;

/** Bleaching and taking colour out: what may be done to which fibre, how, and what it ruins. */
public final class BleachTopic implements Topic<Boolean> {
    /** Its name. */
    public static final TopicName<Boolean> NAME = new TopicName<>("bleach");

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
