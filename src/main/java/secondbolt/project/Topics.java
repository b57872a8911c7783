package secondbolt.project;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import secondbolt.closure.ClosureTopic;
import secondbolt.cloth.ClothTopic;
import secondbolt.cutting.CuttingTopic;
import secondbolt.effect.EffectTopic;
import secondbolt.fit.FitTopic;
import secondbolt.hem.HemTopic;
import secondbolt.hem.plan.Hem;
import secondbolt.hem.plan.HemAllowances;
import secondbolt.hem.plan.HemSection;
import secondbolt.hem.plan.TurnedUp;
import secondbolt.lay.LayTopic;
import secondbolt.lay.kept.LayDesk;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.AlterationSection;
import secondbolt.pattern.Pattern;
import secondbolt.topic.Bench;
import secondbolt.topic.Topic;
import secondbolt.wearer.WearerTopic;

/** The hand-written list of topics. */
public final class Topics {
    private Topics() {}

    /**
     * All topics in the order of working, which is that of their keys in the reference and of their
     * pages.
     *
     * @param desk what lays are worked out with
     */
    public static List<Topic<?>> all(LayDesk desk) {
        return List.of(
                new WearerTopic(),
                new ClothTopic(),
                new FitTopic(Topics::sewn),
                new ClosureTopic(Topics::turned),
                new HemTopic(),
                new CuttingTopic(),
                new LayTopic(desk),
                new EffectTopic<>(AlterationSection.KEY, Alteration::words));
    }

    private static Pattern sewn(Pattern pattern, Bench bench) {
        return HemAllowances.included(pattern, hems(bench), bench.tape());
    }

    private static List<TurnedUp> turned(Bench bench) {
        List<TurnedUp> turned = new ArrayList<>();
        hems(bench).forEach((name, hem) -> turned.addAll(hem.turnedUp(name)));
        return turned;
    }

    private static Map<String, Hem> hems(Bench bench) {
        return bench.written(HemSection.KEY).orElse(Map.of());
    }
}
