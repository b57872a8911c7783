package secondbolt.project;

import java.util.List;
import secondbolt.bleach.BleachTopic;
import secondbolt.closure.ClosureTopic;
import secondbolt.closure.placket.LapTopic;
import secondbolt.cloth.ClothTopic;
import secondbolt.cutting.CuttingTopic;
import secondbolt.dye.DyeTopic;
import secondbolt.effect.EffectTopic;
import secondbolt.fit.FitTopic;
import secondbolt.fit.stretch.StretchTopic;
import secondbolt.hem.HemTopic;
import secondbolt.lay.LayTopic;
import secondbolt.lay.kept.LayDesk;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.AlterationSection;
import secondbolt.prepare.PrepareTopic;
import secondbolt.safety.SafetyTopic;
import secondbolt.sewing.SewingTopic;
import secondbolt.supply.SupplyTopic;
import secondbolt.topic.Topic;
import secondbolt.trim.TrimTopic;
import secondbolt.wearer.WearerTopic;
import secondbolt.work.WorkTopic;

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
                new PrepareTopic(),
                new StretchTopic(),
                new LapTopic(),
                new FitTopic(),
                new ClosureTopic(),
                new HemTopic(),
                new SafetyTopic(),
                new CuttingTopic(),
                new LayTopic(desk),
                new BleachTopic(),
                new DyeTopic(),
                new SewingTopic(),
                new TrimTopic(),
                new SupplyTopic(),
                new WorkTopic(),
                new EffectTopic<>(AlterationSection.KEY, Alteration::words));
    }
}
