package secondbolt.work;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import secondbolt.bleach.BleachTopic;
import secondbolt.closure.ClosureTopic;
import secondbolt.cutting.CuttingTopic;
import secondbolt.dye.DyeTopic;
import secondbolt.file.Key;
import secondbolt.file.value.Placed;
import secondbolt.file.value.Trouble;
import secondbolt.fit.FitTopic;
import secondbolt.fit.result.FitResult;
import secondbolt.garment.GarmentKind;
import secondbolt.hem.HemTopic;
import secondbolt.lay.LayTopic;
import secondbolt.pattern.Pattern;
import secondbolt.prepare.PrepareTopic;
import secondbolt.sewing.SewingTopic;
import secondbolt.supply.SupplyTopic;
import secondbolt.task.Stage;
import secondbolt.task.WorkStep;
import secondbolt.topic.Bench;
import secondbolt.topic.Outcome;
import secondbolt.topic.Topic;
import secondbolt.topic.TopicName;
import secondbolt.trim.TrimTopic;
import secondbolt.wearer.WearerTopic;
import secondbolt.work.kind.BaseSteps;
import secondbolt.work.order.HerOrder;
import secondbolt.work.order.OrderOfWork;
import secondbolt.work.order.WorkDays;
import secondbolt.work.plan.OwnStep;
import secondbolt.work.plan.Ticked;
import secondbolt.work.plan.WorkPlan;
import secondbolt.work.plan.WorkSection;
import secondbolt.worksheet.Gives;

/**
 * The steps of all topics and of the maker in one order, with what they wait for and where they can
 * hurt.
 */
public final class WorkTopic implements Topic<WorkResult> {
    /** Its name. */
    public static final TopicName<WorkResult> NAME = new TopicName<>("work");

    /** Whose steps she may speak of. */
    private static final List<TopicName<?>> GIVING =
            List.of(
                    PrepareTopic.NAME,
                    FitTopic.NAME,
                    ClosureTopic.NAME,
                    HemTopic.NAME,
                    CuttingTopic.NAME,
                    LayTopic.NAME,
                    BleachTopic.NAME,
                    DyeTopic.NAME,
                    SewingTopic.NAME,
                    TrimTopic.NAME,
                    SupplyTopic.NAME);

    @Override
    public TopicName<WorkResult> name() {
        return NAME;
    }

    @Override
    public List<Key<?>> keys() {
        return List.of(WorkSection.GARMENT, WorkSection.KEY);
    }

    @Override
    public boolean isSupposed() {
        return false;
    }

    @Override
    public Outcome<WorkResult> work(Bench bench) {
        WorkPlan plan = bench.written(WorkSection.KEY).orElse(WorkPlan.NOTHING);
        BaseSteps base = base(bench, plan);
        Gives given = bench.given();
        RulesBetween rules = new RulesBetween(given.steps(), base.steps(), given.needs());
        Untied untied = Untied.of(rules.steps());
        WorkCheck check = new WorkCheck(plan, untied.steps());
        List<Trouble> troubles = new ArrayList<>(unknownNames(check, bench));
        troubles.addAll(check.others());
        if (!troubles.isEmpty()) {
            return Outcome.wrong(troubles);
        }
        if (untied.steps().isEmpty() && plan.own().isEmpty()) {
            return Outcome.nothing();
        }
        WorkResult result = result(plan, untied, check.notHere(), base, rules);
        boolean isChild =
                bench.came(WearerTopic.NAME)
                        .flatMap(wearer -> wearer.age())
                        .flatMap(age -> age.years())
                        .filter(years -> years < WorkWorksheet.CHILD_UNDER)
                        .isPresent();
        return Outcome.of(result, new WorkWorksheet(result, isChild).worksheet());
    }

    private static BaseSteps base(Bench bench, WorkPlan plan) {
        Optional<GarmentKind> kind = bench.written(WorkSection.GARMENT);
        Optional<Pattern> pattern = bench.came(FitTopic.NAME).map(FitResult::pattern);
        return new BaseSteps(kind, pattern, plan.order().stream().map(Placed::value).toList());
    }

    /**
     * What is spoken of and is no step. A topic that is held back by a mistake gives no steps; then
     * that mistake is to be told, and not this one.
     */
    private static List<Trouble> unknownNames(WorkCheck check, Bench bench) {
        List<Trouble> unknown = check.unknownNames();
        if (!unknown.isEmpty()) {
            GIVING.forEach(bench::came);
        }
        return unknown;
    }

    private static WorkResult result(
            WorkPlan plan,
            Untied untied,
            List<String> notHere,
            BaseSteps base,
            RulesBetween rules) {
        List<OwnStep> own = plan.own().stream().map(Placed::value).toList();
        List<WorkStep> all = OwnSteps.among(untied.steps(), own);
        Set<String> names = all.stream().map(WorkStep::name).collect(Collectors.toSet());
        List<String> order =
                plan.order().stream().map(Placed::value).filter(names::contains).toList();
        HerOrder hers = order.size() < 2 ? HerOrder.none(all) : HerOrder.of(all, order);
        List<WorkStep> sorted = OrderOfWork.of(hers.steps());
        Map<String, Optional<LocalDate>> done = done(plan, sorted);
        return new WorkResult(
                sorted,
                done,
                WorkDays.of(sorted, dayNumbers(done, plan.begins())),
                plan.begins(),
                base.source(),
                base.sleeveChoice(),
                hers,
                order,
                untied.circles(),
                notHere,
                rules.isThreadTaken());
    }

    /** In the order of the steps. */
    private static Map<String, Optional<LocalDate>> done(WorkPlan plan, List<WorkStep> sorted) {
        Map<String, Optional<LocalDate>> ticked = new LinkedHashMap<>();
        plan.done().stream()
                .map(Placed::value)
                .forEach((Ticked tick) -> ticked.put(tick.step(), tick.on()));
        Map<String, Optional<LocalDate>> done = new LinkedHashMap<>();
        for (WorkStep step : sorted) {
            if (ticked.containsKey(step.name()) || isStillDone(step, sorted, done.keySet())) {
                done.put(step.name(), ticked.getOrDefault(step.name(), Optional.empty()));
            }
        }
        return done;
    }

    /** What a topic takes for done is due again once the cloth gets wet after it. */
    private static boolean isStillDone(WorkStep step, List<WorkStep> sorted, Set<String> done) {
        boolean isWetAgain =
                step.stage() == Stage.PREPARING
                        && sorted.stream()
                                .filter(before -> before.isWet() && !done.contains(before.name()))
                                .anyMatch(
                                        before ->
                                                step.follows().stream()
                                                        .map(WorkStep.Follows::step)
                                                        .anyMatch(before.name()::equals));
        return step.isDone() && !isWetAgain;
    }

    /** Days counted from the first, which is 1; not known if it is not told which that is. */
    private static Map<String, Optional<Long>> dayNumbers(
            Map<String, Optional<LocalDate>> done, Optional<LocalDate> begins) {
        Map<String, Optional<Long>> numbers = new LinkedHashMap<>();
        done.forEach(
                (step, on) ->
                        numbers.put(
                                step,
                                begins.flatMap(
                                        first ->
                                                on.map(
                                                        day ->
                                                                ChronoUnit.DAYS.between(first, day)
                                                                        + 1))));
        return numbers;
    }
}
