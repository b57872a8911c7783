package secondbolt.closure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.closure.fastening.Machine;
import secondbolt.closure.placket.Closure;
import secondbolt.closure.placket.ClosureCheck;
import secondbolt.closure.placket.ClosureSection;
import secondbolt.closure.row.ClosureCalculation;
import secondbolt.closure.row.ClosureResult;
import secondbolt.file.Key;
import secondbolt.file.value.Placed;
import secondbolt.file.value.Trouble;
import secondbolt.fit.FitTopic;
import secondbolt.fit.result.FitCheck;
import secondbolt.fit.result.FitResult;
import secondbolt.hem.plan.HemSection;
import secondbolt.hem.plan.TurnedUp;
import secondbolt.pattern.AlterationSection;
import secondbolt.pattern.EdgeSum;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.PatternSection;
import secondbolt.topic.Bench;
import secondbolt.topic.Outcome;
import secondbolt.topic.Topic;
import secondbolt.topic.TopicName;
import secondbolt.wearer.Wearer;
import secondbolt.wearer.WearerTopic;

/** Buttons and other closures, on the altered lengths. */
public final class ClosureTopic implements Topic<List<ClosureResult>> {
    /** Its name; it comes to each closure whose length is known, in the maker's order. */
    public static final TopicName<List<ClosureResult>> NAME = new TopicName<>("closures");

    @Override
    public TopicName<List<ClosureResult>> name() {
        return NAME;
    }

    @Override
    public List<Key<?>> keys() {
        return List.of(Machine.KEY, ClosureSection.KEY);
    }

    @Override
    public Outcome<List<ClosureResult>> work(Bench bench) {
        Optional<Map<String, Closure>> written = bench.written(ClosureSection.KEY);
        if (written.isEmpty()) {
            return Outcome.nothing();
        }
        List<Trouble> missing = missing(written.get(), bench);
        if (!missing.isEmpty()) {
            return Outcome.wrong(missing);
        }
        Optional<FitResult> fit = bench.came(FitTopic.NAME);
        List<Trouble> troubles = new ArrayList<>();
        written.get()
                .values()
                .forEach(closure -> troubles.addAll(ClosureCheck.of(closure, fit, bench.tape())));
        if (!troubles.isEmpty()) {
            return Outcome.wrong(troubles);
        }
        Map<String, Closure> closures = new LinkedHashMap<>();
        List<TurnedUp> hems = turnedUp(bench);
        written.get().forEach((name, closure) -> closures.put(name, closure.with(hems)));
        ClosureCalculation.All all =
                ClosureCalculation.all(
                        closures,
                        fit,
                        bench.written(Machine.KEY).orElse(Machine.UNKNOWN),
                        bench.tape());
        if (!all.tooFree().isEmpty()) {
            return Outcome.wrong(
                    all.tooFree().stream()
                            .map(closure -> ClosureCheck.tooFree(closure, bench.tape()))
                            .toList());
        }
        List<ClosureResult> results = followed(all.results(), bench);
        Optional<Wearer.Age> age = bench.came(WearerTopic.NAME).flatMap(Wearer::age);
        return Outcome.of(
                results, new ClosureWorksheet(closures, results, age, bench.tape()).worksheet());
    }

    /**
     * With what lies elsewhere than it would without the alterations. Where the closures could not
     * be worked out without them, nothing is known of that.
     */
    private static List<ClosureResult> followed(List<ClosureResult> results, Bench bench) {
        boolean isAltered =
                bench.written(AlterationSection.KEY).filter(a -> !a.isEmpty()).isPresent();
        if (!isAltered || results.stream().allMatch(r -> r.change().before().isEmpty())) {
            return List.copyOf(results);
        }
        Bench without = bench.supposing(AlterationSection.KEY, List.of());
        List<ClosureResult> unaltered = without.came(NAME).orElse(List.of());
        Optional<FitResult> fit = without.came(FitTopic.NAME);
        return results.stream()
                .map(
                        result ->
                                ClosureCheck.of(result.closure(), fit, bench.tape()).isEmpty()
                                        ? followed(result, unaltered)
                                        : result.onlyAltered())
                .toList();
    }

    private static ClosureResult followed(ClosureResult result, List<ClosureResult> unaltered) {
        return unaltered.stream()
                .filter(was -> was.name().equals(result.name()))
                .findFirst()
                .map(result::movedFrom)
                .orElse(result);
    }

    /** A closure on edges of the pattern must name some that are there. */
    private static List<Trouble> missing(Map<String, Closure> closures, Bench bench) {
        Optional<Pattern> pattern = bench.written(PatternSection.KEY);
        List<Trouble> troubles = new ArrayList<>();
        for (Closure closure : closures.values()) {
            Optional<Placed<EdgeSum>> edges = closure.placket().edges();
            if (edges.isPresent()) {
                troubles.addAll(
                        pattern.map(p -> FitCheck.of(p, edges.get(), bench.tape()))
                                .orElseGet(
                                        () ->
                                                List.of(
                                                        new Trouble(
                                                                edges.get().place(),
                                                                "an edge of no pattern",
                                                                "`pattern` as well, or"
                                                                        + " `length`"))));
            }
        }
        return troubles;
    }

    /** What the hems turn up, where a placket may end. */
    private static List<TurnedUp> turnedUp(Bench bench) {
        List<TurnedUp> turned = new ArrayList<>();
        bench.written(HemSection.KEY)
                .orElse(Map.of())
                .forEach((name, hem) -> turned.addAll(hem.turnedUp(name)));
        return turned;
    }
}
