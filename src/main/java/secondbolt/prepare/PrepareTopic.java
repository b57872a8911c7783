package secondbolt.prepare;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import secondbolt.cloth.ClothTopic;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.file.Key;
import secondbolt.lay.plan.LaySection;
import secondbolt.prepare.due.Preparation;
import secondbolt.topic.Bench;
import secondbolt.topic.Outcome;
import secondbolt.topic.Topic;
import secondbolt.topic.TopicName;

/**
 * What is done to a cloth before it is cut or dyed: unpicking, freezing, washing, drying, pressing,
 * and what each tells of it.
 */
public final class PrepareTopic implements Topic<Preparation> {
    /** Its name. */
    public static final TopicName<Preparation> NAME = new TopicName<>("prepare");

    @Override
    public TopicName<Preparation> name() {
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
    public Outcome<Preparation> work(Bench bench) {
        List<ClothResult> cloths = bench.came(ClothTopic.NAME).orElse(List.of());
        if (cloths.isEmpty()) {
            return Outcome.nothing();
        }
        Set<String> cut =
                bench.written(LaySection.CUT_SO_FAR).orElse(List.of()).stream()
                        .map(placing -> placing.cloth().value())
                        .collect(Collectors.toSet());
        Preparation all = Preparation.of(cloths, cut);
        return Outcome.of(all, new PrepareWorksheet(all, bench.tape()).worksheet());
    }
}
