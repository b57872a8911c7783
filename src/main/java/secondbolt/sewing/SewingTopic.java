package secondbolt.sewing;

import java.util.List;
import java.util.Optional;
import secondbolt.closure.ClosureTopic;
import secondbolt.cloth.ClothTopic;
import secondbolt.cutting.CuttingTopic;
import secondbolt.file.Key;
import secondbolt.file.value.Trouble;
import secondbolt.fit.FitTopic;
import secondbolt.fit.result.FitResult;
import secondbolt.hem.HemTopic;
import secondbolt.pattern.PatternSection;
import secondbolt.sewing.advice.SewnCloth;
import secondbolt.sewing.plan.SewingCheck;
import secondbolt.sewing.plan.SewingPlan;
import secondbolt.sewing.plan.SewingSection;
import secondbolt.sewing.seam.SewnCalculation;
import secondbolt.sewing.seam.SewnLines;
import secondbolt.sewing.thread.FastenerThread;
import secondbolt.task.WorkStep;
import secondbolt.topic.Bench;
import secondbolt.topic.Outcome;
import secondbolt.topic.Topic;
import secondbolt.topic.TopicName;

/** The seams as they are sewn: stitches, finishes, thread and needle. */
public final class SewingTopic implements Topic<SewingResult> {
    /** Its name; it comes to the sewing of a pattern, or of lines told by tape. */
    public static final TopicName<SewingResult> NAME = new TopicName<>("sewing");

    @Override
    public TopicName<SewingResult> name() {
        return NAME;
    }

    @Override
    public List<Key<?>> keys() {
        return List.of(SewingSection.KEY);
    }

    @Override
    public boolean isSupposed() {
        return false;
    }

    @Override
    public Outcome<SewingResult> work(Bench bench) {
        Optional<SewingPlan> written = bench.written(SewingSection.KEY);
        SewingPlan plan = written.orElse(SewingPlan.NOTHING);
        List<Trouble> troubles = SewingCheck.of(plan, bench.written(PatternSection.KEY));
        if (!troubles.isEmpty()) {
            return Outcome.wrong(troubles);
        }
        Optional<FitResult> fit = bench.came(FitTopic.NAME);
        if (fit.isEmpty() && written.isEmpty()) {
            return Outcome.nothing();
        }
        SewnLines lines =
                fit.map(f -> lines(f, plan, bench))
                        .orElseGet(() -> SewnCalculation.withoutPattern(plan));
        SewingResult result =
                SewingResult.of(
                        plan,
                        lines,
                        FastenerThread.of(bench.came(ClosureTopic.NAME).orElse(List.of())),
                        SewnCloth.of(bench.came(ClothTopic.NAME).orElse(List.of())),
                        dyed(bench),
                        bench.tape());
        return result.isAny() || written.isPresent()
                ? Outcome.of(result, new SewingWorksheet(result, bench.tape()).worksheet())
                : Outcome.nothing();
    }

    /** By what is to be done before, whichever topic tells of it. */
    private static SewingResult.Dyed dyed(Bench bench) {
        List<WorkStep> baths =
                bench.given().steps().stream().filter(step -> step.name().equals("dye")).toList();
        boolean isSewn =
                baths.stream()
                        .flatMap(step -> step.follows().stream())
                        .anyMatch(rule -> rule.step().equals("assemble"));
        if (baths.isEmpty()) {
            return SewingResult.Dyed.NEVER;
        }
        return isSewn ? SewingResult.Dyed.SEWN : SewingResult.Dyed.BEFORE;
    }

    private static SewnLines lines(FitResult fit, SewingPlan plan, Bench bench) {
        return SewnCalculation.work(
                fit,
                bench.came(CuttingTopic.NAME).orElseThrow(),
                bench.came(HemTopic.NAME).orElse(List.of()),
                plan);
    }
}
