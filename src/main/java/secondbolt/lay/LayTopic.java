package secondbolt.lay;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.cloth.ClothTopic;
import secondbolt.cutting.CuttingTopic;
import secondbolt.cutting.line.CuttingResult;
import secondbolt.file.Key;
import secondbolt.file.source.Place;
import secondbolt.file.value.Trouble;
import secondbolt.lay.design.LayCalculation;
import secondbolt.lay.design.LayResult;
import secondbolt.lay.kept.LayDesk;
import secondbolt.lay.plan.LayCheck;
import secondbolt.lay.plan.LayPlan;
import secondbolt.lay.plan.LaySection;
import secondbolt.pattern.AlterationSection;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.PatternSection;
import secondbolt.textile.ClothSection;
import secondbolt.topic.Bench;
import secondbolt.topic.Outcome;
import secondbolt.topic.Topic;
import secondbolt.topic.TopicName;

/** Where every piece is cut from which cloth. */
public final class LayTopic implements Topic<LayResult> {
    /** Its name. */
    public static final TopicName<LayResult> NAME = new TopicName<>("lay");

    private final LayDesk desk;

    /**
     * The topic.
     *
     * @param desk what lays are worked out with
     */
    public LayTopic(LayDesk desk) {
        this.desk = desk;
    }

    @Override
    public TopicName<LayResult> name() {
        return NAME;
    }

    @Override
    public List<Key<?>> keys() {
        return LaySection.KEYS;
    }

    @Override
    public boolean isSupposed() {
        return false;
    }

    @Override
    public Outcome<LayResult> work(Bench bench) {
        LayPlan plan = LaySection.plan(bench::written);
        Optional<Pattern> pattern = bench.written(PatternSection.KEY);
        List<Trouble> troubles =
                pattern.map(
                                p ->
                                        LayCheck.of(
                                                plan,
                                                p,
                                                bench.written(ClothSection.KEY).orElse(Map.of())))
                        .orElseGet(() -> withoutPattern(plan, bench));
        if (!troubles.isEmpty()) {
            return Outcome.wrong(troubles);
        }
        return bench.came(CuttingTopic.NAME)
                .filter(cutting -> !cutting.pieces().isEmpty() || !cutting.taped().isEmpty())
                .map(cutting -> work(cutting, plan, bench))
                .orElseGet(Outcome::nothing);
    }

    private static List<Trouble> withoutPattern(LayPlan plan, Bench bench) {
        if (plan.equals(LayPlan.NONE)) {
            return List.of();
        }
        Key<?> key =
                Stream.of(LaySection.DESIGNS, LaySection.LAY, LaySection.INTERFACING)
                        .filter(one -> bench.written(one).isPresent())
                        .findFirst()
                        .orElse(LaySection.LAY);
        Place place =
                Stream.concat(plan.soFar().stream(), plan.pinned().stream())
                        .findFirst()
                        .filter(cut -> bench.written(key).isEmpty())
                        .map(cut -> cut.piece().place())
                        .orElseGet(() -> bench.place(key));
        return List.of(
                new Trouble(
                        place,
                        key.equals(LaySection.INTERFACING)
                                ? "interfacing without a pattern"
                                : "a lay without a pattern",
                        "`pattern` as well"));
    }

    private Outcome<LayResult> work(CuttingResult cutting, LayPlan plan, Bench bench) {
        LayResult result =
                LayCalculation.work(
                        bench.came(ClothTopic.NAME).orElse(List.of()),
                        cutting,
                        plan,
                        bench.tape(),
                        desk);
        return Outcome.of(
                result,
                new LayWorksheet(
                                result,
                                cutting,
                                bench.written(AlterationSection.KEY).orElse(List.of()),
                                bench.tape())
                        .worksheet());
    }
}
