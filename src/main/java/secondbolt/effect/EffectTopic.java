package secondbolt.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import secondbolt.figure.Differences;
import secondbolt.figure.Figure;
import secondbolt.file.Key;
import secondbolt.topic.Bench;
import secondbolt.topic.Outcome;
import secondbolt.topic.Topic;
import secondbolt.topic.TopicName;

/**
 * What follows from each alteration: the figures of all topics, whichever there are, with it and
 * without it.
 *
 * @param <A> an alteration
 */
public final class EffectTopic<A> implements Topic<List<AlterationEffects>> {
    private static final TopicName<List<AlterationEffects>> NAME = new TopicName<>("effects");

    /**
     * Everything is worked out again for each alteration, with all that come before it: more
     * figures than this, taken as often as there are two alterations, would take minutes.
     */
    private static final long MOST_FIGURES = 200_000;

    private final Key<List<A>> key;
    private final Function<A, String> words;

    /**
     * The topic.
     *
     * @param key the alterations in the project file, in the maker's order
     * @param words what an alteration is called
     */
    public EffectTopic(Key<List<A>> key, Function<A, String> words) {
        this.key = key;
        this.words = words;
    }

    @Override
    public TopicName<List<AlterationEffects>> name() {
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
    public Outcome<List<AlterationEffects>> work(Bench bench) {
        List<A> alterations = bench.written(key).orElse(List.of());
        if (alterations.isEmpty()) {
            return Outcome.nothing();
        }
        List<AlterationEffects> effects = new ArrayList<>();
        Map<String, Figure> before = with(bench, alterations.subList(0, 0));
        long pairs = (long) alterations.size() * alterations.size();
        if (pairs * before.size() > MOST_FIGURES) {
            return Outcome.of(List.of(), EffectWorksheet.tooMany(alterations.size()));
        }
        for (int i = 0; i < alterations.size(); i++) {
            Map<String, Figure> after = with(bench, alterations.subList(0, i + 1));
            effects.add(
                    AlterationEffects.of(
                            words.apply(alterations.get(i)), Differences.ofTold(before, after)));
            before = after;
        }
        List<AlterationEffects> all = List.copyOf(effects);
        return Outcome.of(all, new EffectWorksheet(all, bench.tape()).worksheet());
    }

    private Map<String, Figure> with(Bench bench, List<A> some) {
        return bench.supposing(key, List.copyOf(some)).told();
    }
}
