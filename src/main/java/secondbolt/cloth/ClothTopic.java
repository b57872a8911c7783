package secondbolt.cloth;

import java.util.List;
import secondbolt.cloth.yields.ClothCalculation;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.file.Key;
import secondbolt.textile.ClothSection;
import secondbolt.topic.Bench;
import secondbolt.topic.Outcome;
import secondbolt.topic.Topic;
import secondbolt.topic.TopicName;

/** How much sound cloth there is. */
public final class ClothTopic implements Topic<List<ClothResult>> {
    /** Its name; it comes to each cloth worked out, in the maker's order. */
    public static final TopicName<List<ClothResult>> NAME = new TopicName<>("cloth");

    @Override
    public TopicName<List<ClothResult>> name() {
        return NAME;
    }

    @Override
    public List<Key<?>> keys() {
        return List.of(ClothSection.KEY);
    }

    @Override
    public Outcome<List<ClothResult>> work(Bench bench) {
        return bench.written(ClothSection.KEY)
                .map(ClothCalculation::work)
                .map(r -> Outcome.of(r, new ClothWorksheet(r, bench.tape()).worksheet()))
                .orElseGet(Outcome::nothing);
    }
}
