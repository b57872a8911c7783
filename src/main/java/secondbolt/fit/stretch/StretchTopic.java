package secondbolt.fit.stretch;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.Key;
import secondbolt.garment.Role;
import secondbolt.measure.Share;
import secondbolt.textile.Cloth;
import secondbolt.textile.ClothSection;
import secondbolt.textile.Stretch;
import secondbolt.topic.Bench;
import secondbolt.topic.Outcome;
import secondbolt.topic.Topic;
import secondbolt.topic.TopicName;

/**
 * How far the cloths of each role stretch, by the least of them. It has no page of its own; it
 * stands between the cloth and the fit, so that a flaw more does not have the pattern worked out
 * anew.
 */
public final class StretchTopic implements Topic<Map<Role, Stretch>> {
    /** Its name; it comes to the roles that stretch. */
    public static final TopicName<Map<Role, Stretch>> NAME = new TopicName<>("stretch");

    @Override
    public TopicName<Map<Role, Stretch>> name() {
        return NAME;
    }

    @Override
    public List<Key<?>> keys() {
        return List.of();
    }

    @Override
    public Outcome<Map<Role, Stretch>> work(Bench bench) {
        Map<Role, Stretch> least = new EnumMap<>(Role.class);
        for (Cloth cloth : bench.written(ClothSection.KEY).orElse(Map.of()).values()) {
            least.merge(
                    cloth.textile().roleOrMain(),
                    cloth.textile().stretchOrNone(),
                    StretchTopic::lesser);
        }
        least.values().removeIf(stretch -> !stretch.isAny());
        return least.isEmpty() ? Outcome.nothing() : Outcome.of(Map.copyOf(least));
    }

    /** What both do. */
    static Stretch lesser(Stretch one, Stretch two) {
        return new Stretch(lesser(one.across(), two.across()), lesser(one.along(), two.along()));
    }

    /** What both ways or both cloths do; nothing if one does not. */
    static Optional<Share> lesser(Optional<Share> one, Optional<Share> two) {
        return one.isPresent() && two.isPresent()
                ? Optional.of(one.get().compareTo(two.get()) <= 0 ? one.get() : two.get())
                : Optional.empty();
    }
}
