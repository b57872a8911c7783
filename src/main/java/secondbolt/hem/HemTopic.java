package secondbolt.hem;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.Key;
import secondbolt.file.value.Trouble;
import secondbolt.fit.FitTopic;
import secondbolt.fit.result.FitResult;
import secondbolt.hem.plan.Hem;
import secondbolt.hem.plan.HemCheck;
import secondbolt.hem.plan.HemSection;
import secondbolt.hem.turned.HemCalculation;
import secondbolt.hem.turned.HemResult;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.PatternSection;
import secondbolt.textile.Cloth;
import secondbolt.textile.ClothSection;
import secondbolt.topic.Bench;
import secondbolt.topic.Outcome;
import secondbolt.topic.Topic;
import secondbolt.topic.TopicName;

/** The hems. */
public final class HemTopic implements Topic<List<HemResult>> {
    /** Its name; it comes to each hem worked out, in the maker's order. */
    public static final TopicName<List<HemResult>> NAME = new TopicName<>("hems");

    @Override
    public TopicName<List<HemResult>> name() {
        return NAME;
    }

    @Override
    public List<Key<?>> keys() {
        return List.of(HemSection.KEY);
    }

    @Override
    public Outcome<List<HemResult>> work(Bench bench) {
        Map<String, Hem> hems = bench.written(HemSection.KEY).orElse(Map.of());
        if (hems.isEmpty()) {
            return Outcome.nothing();
        }
        Optional<Pattern> pattern = bench.written(PatternSection.KEY);
        List<Trouble> troubles =
                pattern.map(p -> HemCheck.of(hems, p, bench.tape()))
                        .orElseGet(
                                () ->
                                        List.of(
                                                new Trouble(
                                                        bench.place(HemSection.KEY),
                                                        "hems without a pattern",
                                                        "`pattern` as well")));
        if (!troubles.isEmpty()) {
            return Outcome.wrong(troubles);
        }
        FitResult fit = bench.came(FitTopic.NAME).orElseThrow();
        Map<String, Cloth> cloths = bench.written(ClothSection.KEY).orElse(Map.of());
        List<HemResult> results = HemCalculation.all(fit, hems, cloths.values(), bench.tape());
        return Outcome.of(
                results,
                new HemWorksheet(results, fit.pattern().seams(), cloths, bench.tape()).worksheet());
    }
}
