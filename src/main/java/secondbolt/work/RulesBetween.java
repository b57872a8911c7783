package secondbolt.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import secondbolt.task.Need;
import secondbolt.task.Stage;
import secondbolt.task.WorkStep;
import secondbolt.work.order.Gathered;
import secondbolt.work.order.LateBath;
import secondbolt.work.order.StepGraph;

/**
 * Rules that hold between the steps of several topics, none of which knows the others.
 *
 * @param given the steps of the topics
 * @param base the steps of the kind of garment
 * @param needs what is needed, with what must not be bought before a step
 */
record RulesBetween(List<WorkStep> given, List<WorkStep> base, List<Need> needs) {
    private static final String THREAD = "thread";
    private static final String DYE = "dye";
    private static final String SURVEY = "survey";
    private static final String CUT = "cut";
    private static final String GATHER = "gather";

    /** Sewn with thread that comes out again, or not sewn. */
    private static final Set<String> UNSEWN = Set.of("baste", "fit on", "last press");

    /** Where the seams pull a hem up or cross it, it is sewn after them. */
    private static final List<String> ABOVE = List.of(GATHER, "band", "assemble", "hang");

    /** All steps, each name once, with these rules. */
    List<WorkStep> steps() {
        List<WorkStep> sewn = base.stream().map(this::threaded).toList();
        List<WorkStep> all = LateBath.among(Gathered.of(inRow(sewn)));
        return pressedLast(gatheredLast(surveyed(all)));
    }

    /**
     * The topics' steps before those of the garment, but behind them what is sewn when all is
     * assembled: else it would draw the assembling before what else is sewn flat.
     */
    private List<WorkStep> inRow(List<WorkStep> sewn) {
        Predicate<WorkStep> isLate =
                step ->
                        step.stage() == Stage.SEWING
                                && step.follows().stream()
                                        .anyMatch(f -> f.step().equals("assemble"));
        return Stream.of(
                        given.stream().filter(isLate.negate()),
                        sewn.stream(),
                        given.stream().filter(isLate))
                .flatMap(steps -> steps)
                .toList();
    }

    /** Common practice, no source. */
    private static List<WorkStep> pressedLast(List<WorkStep> steps) {
        StepGraph graph = new StepGraph(steps);
        return changed(
                steps,
                "last press",
                press -> {
                    WorkStep ruled = press;
                    for (WorkStep step : steps) {
                        boolean isSewing =
                                step.stage() == Stage.CLOSING || step.stage() == Stage.HEMMING;
                        if (isSewing && !graph.isAfter(step.name(), "last press")) {
                            ruled =
                                    ruled.after(
                                            step.name(),
                                            "What is sewn on or turned up is pressed with it.");
                        }
                    }
                    return ruled;
                });
    }

    /** Whether nothing tells of the thread, so that it is taken to be polyester. */
    boolean isThreadTaken() {
        return !base.isEmpty()
                && given.stream().anyMatch(step -> step.name().equals(DYE))
                && threads().isEmpty();
    }

    private List<Need> threads() {
        return needs.stream().filter(need -> need.item().contains(THREAD)).toList();
    }

    /** Seams are sewn with thread that is not bought before the bath if it takes no dye. */
    private WorkStep threaded(WorkStep step) {
        if (UNSEWN.contains(step.name())) {
            return step;
        }
        if (isThreadTaken()) {
            return step.after(
                    DYE,
                    "Polyester thread takes no dye made for cotton and stays pale in every seam (a"
                            + " theatre costume dyer).");
        }
        WorkStep ruled = step;
        for (Need need : threads()) {
            Optional<WorkStep.Follows> after = need.buyAfter();
            ruled = after.isPresent() ? ruled.after(after.get().step(), after.get().why()) : ruled;
        }
        return ruled;
    }

    /**
     * A survey falls due after each wet step that does not itself come after it; common practice,
     * no source.
     */
    private static List<WorkStep> surveyed(List<WorkStep> steps) {
        List<WorkStep> all = new ArrayList<>(steps);
        StepGraph before = new StepGraph(steps);
        boolean isWet = steps.stream().anyMatch(WorkStep::isWet);
        if (isWet && before.find(CUT).isPresent() && before.find(SURVEY).isEmpty()) {
            all.add(
                    WorkStep.of(
                            SURVEY,
                            Stage.PREPARING,
                            "Look the dry cloth over against the light, and mark each flaw."));
        }
        StepGraph graph = new StepGraph(all);
        List<String> wet =
                all.stream()
                        .filter(WorkStep::isWet)
                        .map(WorkStep::name)
                        .filter(name -> !graph.isAfter(name, SURVEY))
                        .filter(name -> !graph.isAfter(name, CUT))
                        .toList();
        return changed(
                changed(all, SURVEY, survey -> following(survey, wet, graph)),
                CUT,
                cut ->
                        graph.isAfter(CUT, SURVEY)
                                ? cut
                                : cut.after(
                                        SURVEY, "A flaw that was not found is cut into a piece."));
    }

    private static WorkStep following(WorkStep survey, List<String> wet, StepGraph graph) {
        WorkStep ruled = survey;
        for (String name : wet) {
            if (!graph.isAfter(SURVEY, name)) {
                ruled =
                        ruled.after(
                                name,
                                "Each time the cloth is wet its size changes, thin places open and"
                                        + " stains show.");
            }
        }
        return ruled;
    }

    /**
     * A straight hem comes before the gathers: Text-Book on Domestic Art, aprons. Which hem that is
     * its topic knows: one that nothing above it holds back.
     */
    private static List<WorkStep> gatheredLast(List<WorkStep> steps) {
        StepGraph graph = new StepGraph(steps);
        Set<String> flat =
                steps.stream()
                        .filter(step -> step.stage() == Stage.HEMMING)
                        .map(WorkStep::name)
                        .filter(name -> name.startsWith("hem"))
                        .filter(name -> ABOVE.stream().noneMatch(a -> graph.isAfter(name, a)))
                        .collect(Collectors.toUnmodifiableSet());
        return changed(
                steps,
                GATHER,
                gather -> {
                    WorkStep ruled = gather;
                    for (WorkStep step : steps) {
                        if (flat.contains(step.name()) && !graph.isAfter(GATHER, step.name())) {
                            ruled =
                                    ruled.after(
                                            step.name(),
                                            "A straight edge is hemmed while it lies flat (Text-Book"
                                                    + " on Domestic Art).");
                        }
                    }
                    return ruled;
                });
    }

    private static List<WorkStep> changed(
            List<WorkStep> steps, String name, UnaryOperator<WorkStep> change) {
        return steps.stream()
                .map(step -> step.name().equals(name) ? change.apply(step) : step)
                .toList();
    }
}
