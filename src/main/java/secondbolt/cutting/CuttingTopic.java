package secondbolt.cutting;

import java.util.List;
import java.util.Map;
import secondbolt.cutting.line.CuttingCalculation;
import secondbolt.cutting.line.CuttingResult;
import secondbolt.file.Key;
import secondbolt.fit.FitTopic;
import secondbolt.fit.result.FitResult;
import secondbolt.hem.plan.HemSection;
import secondbolt.topic.Bench;
import secondbolt.topic.Outcome;
import secondbolt.topic.Topic;
import secondbolt.topic.TopicName;

/** The pieces with their cutting lines. */
public final class CuttingTopic implements Topic<CuttingResult> {
    /** Its name. */
    public static final TopicName<CuttingResult> NAME = new TopicName<>("cutting");

    @Override
    public TopicName<CuttingResult> name() {
        return NAME;
    }

    @Override
    public List<Key<?>> keys() {
        return List.of();
    }

    @Override
    public Outcome<CuttingResult> work(Bench bench) {
        return bench.came(FitTopic.NAME).map(fit -> work(fit, bench)).orElseGet(Outcome::nothing);
    }

    private static Outcome<CuttingResult> work(FitResult fit, Bench bench) {
        CuttingResult result =
                CuttingCalculation.work(
                        fit, bench.written(HemSection.KEY).orElse(Map.of()), bench.tape());
        return Outcome.of(result, new CuttingWorksheet(result, bench.tape()).worksheet());
    }
}
