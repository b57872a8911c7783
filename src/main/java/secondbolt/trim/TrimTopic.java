package secondbolt.trim;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import secondbolt.cloth.ClothTopic;
import secondbolt.cutting.CuttingTopic;
import secondbolt.cutting.line.CuttingResult;
import secondbolt.file.Key;
import secondbolt.file.value.Trouble;
import secondbolt.fit.FitTopic;
import secondbolt.fit.result.FitResult;
import secondbolt.hem.plan.Hem;
import secondbolt.hem.plan.HemSection;
import secondbolt.lay.LayTopic;
import secondbolt.lay.design.DesignLay;
import secondbolt.lay.design.LayResult;
import secondbolt.lay.plan.Interfacing;
import secondbolt.lay.plan.LaySection;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.PatternSection;
import secondbolt.textile.ClothSection;
import secondbolt.topic.Bench;
import secondbolt.topic.Outcome;
import secondbolt.topic.Topic;
import secondbolt.topic.TopicName;
import secondbolt.trim.bound.BindingCalculation;
import secondbolt.trim.bound.BindingResult;
import secondbolt.trim.bound.ClothLeft;
import secondbolt.trim.fused.InterfacingCalculation;
import secondbolt.trim.fused.InterfacingResult;
import secondbolt.trim.gathered.ElasticCalculation;
import secondbolt.trim.gathered.ElasticResult;
import secondbolt.trim.plan.Binding;
import secondbolt.trim.plan.BindingSection;
import secondbolt.trim.plan.Elastic;
import secondbolt.trim.plan.ElasticSection;
import secondbolt.trim.plan.TrimCheck;
import secondbolt.wearer.WearerTopic;

/** What stiffens, binds and gathers: interfacing, binding, elastic. */
public final class TrimTopic implements Topic<TrimResult> {
    /** Its name. */
    public static final TopicName<TrimResult> NAME = new TopicName<>("trim");

    @Override
    public TopicName<TrimResult> name() {
        return NAME;
    }

    @Override
    public List<Key<?>> keys() {
        return List.of(BindingSection.KEY, ElasticSection.KEY);
    }

    @Override
    public boolean isSupposed() {
        return false;
    }

    @Override
    public Outcome<TrimResult> work(Bench bench) {
        Map<String, Binding> bindings = bench.written(BindingSection.KEY).orElse(Map.of());
        Map<String, Elastic> elastics = bench.written(ElasticSection.KEY).orElse(Map.of());
        Map<String, Hem> hems = bench.written(HemSection.KEY).orElse(Map.of());
        List<Trouble> troubles =
                bench.written(PatternSection.KEY)
                        .map(pattern -> troubles(bindings, elastics, pattern, hems, bench))
                        .orElseGet(() -> withoutPattern(bindings, elastics, bench));
        if (!troubles.isEmpty()) {
            return Outcome.wrong(troubles);
        }
        Optional<FitResult> fit = bench.came(FitTopic.NAME);
        Optional<CuttingResult> cutting = bench.came(CuttingTopic.NAME);
        Optional<DesignLay> made = bench.came(LayTopic.NAME).map(LayResult::made);
        TrimResult result =
                new TrimResult(
                        cutting.flatMap(c -> interfacing(c, made, bench)),
                        bindings(bindings, fit, cutting, made, bench),
                        elastics(
                                elastics,
                                new ElasticCalculation(
                                        bench.came(WearerTopic.NAME),
                                        fit,
                                        cutting,
                                        hems,
                                        bench.tape())),
                        hems.values().stream()
                                .flatMap(hem -> hem.edges().stream())
                                .collect(Collectors.toUnmodifiableSet()));
        return result.isEmpty()
                ? Outcome.nothing()
                : Outcome.of(result, new TrimWorksheet(result, made, bench.tape()).worksheet());
    }

    private static List<Trouble> troubles(
            Map<String, Binding> bindings,
            Map<String, Elastic> elastics,
            Pattern pattern,
            Map<String, Hem> hems,
            Bench bench) {
        return TrimCheck.of(
                bindings,
                elastics,
                pattern,
                hems.values(),
                bench.written(ClothSection.KEY).map(Map::keySet).orElseGet(Set::of));
    }

    private static List<Trouble> withoutPattern(
            Map<String, Binding> bindings, Map<String, Elastic> elastics, Bench bench) {
        List<Trouble> troubles = new ArrayList<>();
        if (!bindings.isEmpty()) {
            troubles.add(
                    new Trouble(
                            bench.place(BindingSection.KEY),
                            "binding without a pattern",
                            "`pattern` as well"));
        }
        elastics.values().stream()
                .flatMap(elastic -> elastic.on().stream())
                .map(
                        on ->
                                new Trouble(
                                        on.place(),
                                        "edges without a pattern",
                                        "`pattern` as well, or no `on`"))
                .forEach(troubles::add);
        return troubles;
    }

    private static Optional<InterfacingResult> interfacing(
            CuttingResult cutting, Optional<DesignLay> made, Bench bench) {
        Optional<Interfacing> told = bench.written(LaySection.INTERFACING);
        InterfacingResult result =
                InterfacingCalculation.work(
                        told,
                        cutting,
                        made,
                        bench.came(ClothTopic.NAME).orElse(List.of()),
                        bench.tape());
        return Optional.of(result).filter(r -> r.isWritten() || !r.pieces().isEmpty());
    }

    private static List<BindingResult> bindings(
            Map<String, Binding> bindings,
            Optional<FitResult> fit,
            Optional<CuttingResult> cutting,
            Optional<DesignLay> made,
            Bench bench) {
        if (bindings.isEmpty() || fit.isEmpty() || cutting.isEmpty()) {
            return List.of();
        }
        ClothLeft left = made.map(ClothLeft::of).orElseGet(ClothLeft::nothing);
        return BindingCalculation.all(bindings, fit.get(), cutting.get(), left, bench.tape());
    }

    private static List<ElasticResult> elastics(
            Map<String, Elastic> elastics, ElasticCalculation calculation) {
        return elastics.entrySet().stream()
                .map(entry -> calculation.of(entry.getKey(), entry.getValue()))
                .toList();
    }
}
