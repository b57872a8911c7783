package secondbolt.closure.placket;

import java.util.List;
import java.util.Map;
import secondbolt.file.Key;
import secondbolt.topic.Bench;
import secondbolt.topic.Outcome;
import secondbolt.topic.Topic;
import secondbolt.topic.TopicName;

/**
 * What the closures lap over. It has no page of its own; it stands before the fit, so that a button
 * more does not have the pattern worked out anew.
 */
public final class LapTopic implements Topic<DrawnLaps> {
    /** Its name. */
    public static final TopicName<DrawnLaps> NAME = new TopicName<>("laps");

    @Override
    public TopicName<DrawnLaps> name() {
        return NAME;
    }

    @Override
    public List<Key<?>> keys() {
        return List.of();
    }

    @Override
    public Outcome<DrawnLaps> work(Bench bench) {
        DrawnLaps laps = DrawnLaps.of(bench.written(ClosureSection.KEY).orElse(Map.of()));
        return laps.equals(DrawnLaps.NONE) ? Outcome.nothing() : Outcome.of(laps);
    }
}
