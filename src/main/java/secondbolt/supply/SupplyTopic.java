package secondbolt.supply;

import java.util.List;
import secondbolt.file.Key;
import secondbolt.topic.Bench;
import secondbolt.topic.Outcome;
import secondbolt.topic.Topic;
import secondbolt.topic.TopicName;

/** What is needed, what of it is to be bought, and what the garment costs. */
public final class SupplyTopic implements Topic<Boolean> {
    /** Its name. */
    public static final TopicName<Boolean> NAME = new TopicName<>("supply");

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
