package secondbolt.project;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import secondbolt.closure.ClosureTopic;
import secondbolt.closure.TurnedUp;
import secondbolt.cloth.ClothTopic;
import secondbolt.cutting.CuttingTopic;
import secondbolt.effect.EffectTopic;
import secondbolt.fit.Alteration;
import secondbolt.fit.AlterationSection;
import secondbolt.fit.FitTopic;
import secondbolt.fit.Pattern;
import secondbolt.fit.size.WearerTopic;
import secondbolt.hem.Hem;
import secondbolt.hem.HemAllowances;
import secondbolt.hem.HemSection;
import secondbolt.hem.HemTopic;
import secondbolt.lay.LayTopic;
import secondbolt.lay.stock.LayDesk;
import secondbolt.topic.Bench;
import secondbolt.topic.Topic;

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
