package secondbolt.work.order;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import secondbolt.task.Stage;
import secondbolt.task.WorkStep;

/**
 * Baths that cut or sewn cloth is given. What usually follows a bath, such as looking the cloth
 * over before it is cut, cannot follow one that comes later: the topic of the bath tells what that
 * costs, and the rule is left out here.
 */
public final class LateBath {
    private final List<WorkStep> steps;
    private final Set<String> late;

    private LateBath(List<WorkStep> steps) {
        this.steps = steps;
        this.late =
                steps.stream()
                        .filter(WorkStep::isWet)
                        .filter(LateBath::followsTheShears)
                        .map(WorkStep::name)
                        .collect(Collectors.toCollection(HashSet::new));
        for (WorkStep step : steps) {
            if (step.stage() == Stage.DYEING && step.follows().stream().anyMatch(this::isLate)) {
                late.add(step.name());
            }
        }
    }

    /** The same steps; none that a late bath waits for waits for that bath. */
    public static List<WorkStep> among(List<WorkStep> steps) {
        return new LateBath(steps).all();
    }

    private static boolean followsTheShears(WorkStep step) {
        return step.follows().stream()
                .map(WorkStep.Follows::step)
                .anyMatch(name -> name.equals("cut") || name.equals("assemble"));
    }

    private boolean isLate(WorkStep.Follows rule) {
        return late.contains(rule.step());
    }

    private List<WorkStep> all() {
        if (late.isEmpty()) {
            return steps;
        }
        StepGraph early =
                new StepGraph(
                        steps.stream()
                                .map(s -> late.contains(s.name()) ? s : without(s, this::isLate))
                                .toList());
        Set<String> before =
                late.stream()
                        .flatMap(name -> early.needs(name).stream())
                        .filter(name -> !late.contains(name))
                        .collect(Collectors.toUnmodifiableSet());
        return steps.stream()
                .map(s -> before.contains(s.name()) ? without(s, this::isLate) : s)
                .toList();
    }

    private static WorkStep without(WorkStep step, Predicate<WorkStep.Follows> rule) {
        return step.following(step.follows().stream().filter(rule.negate()).toList());
    }
}
