package secondbolt.dye;

import java.util.List;
import secondbolt.file.Key;
import secondbolt.topic.Bench;
import secondbolt.topic.Outcome;
import secondbolt.topic.Topic;
import secondbolt.topic.TopicName;

/** Dyeing: which class takes, the dye and what goes with it, the baths, the sheet it is done by. */
public final class DyeTopic implements Topic<Boolean> {
    /** Its name. */
    public static final TopicName<Boolean> NAME = new TopicName<>("dye");

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
