package secondbolt.wearer;

import java.util.List;
import secondbolt.file.Key;
import secondbolt.topic.Bench;
import secondbolt.topic.Outcome;
import secondbolt.topic.Topic;
import secondbolt.topic.TopicName;

/** What is known of the wearer. It has no page of its own: others read it. */
public final class WearerTopic implements Topic<Wearer> {
    /** Its name. */
    public static final TopicName<Wearer> NAME = new TopicName<>("wearer");

    @Override
    public TopicName<Wearer> name() {
        return NAME;
    }

    @Override
    public List<Key<?>> keys() {
        return List.of(WearerSection.KEY);
    }

    @Override
    public Outcome<Wearer> work(Bench bench) {
        return bench.written(WearerSection.KEY).map(Outcome::of).orElseGet(Outcome::nothing);
    }
}
