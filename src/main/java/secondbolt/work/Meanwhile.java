package secondbolt.work;

import java.time.Duration;
import java.util.List;
import secondbolt.task.WorkStep;
import secondbolt.work.order.StepGraph;

/**
 * What can be done while something rests.
 *
 * @param result the work in its order
 * @param graph of its steps
 */
record Meanwhile(WorkResult result, StepGraph graph) {
    private static final Duration WORTH_IT = Duration.ofHours(2);
    private static final int MOST_NAMED = 4;

    static Meanwhile of(WorkResult result) {
        return new Meanwhile(result, new StepGraph(result.steps()));
    }

    /**
     * Names of steps that stand behind this one, need not wait for it, and whose own waits are over
     * by the day it is done; a few at most.
     */
    List<String> of(WorkStep step) {
        boolean isLong = step.pause().filter(p -> p.least().compareTo(WORTH_IT) >= 0).isPresent();
        if (!isLong || result.isDone(step)) {
            return List.of();
        }
        DayWords days = new DayWords(result);
        int behind = result.steps().indexOf(step) + 1;
        return result.steps().subList(behind, result.steps().size()).stream()
                .filter(other -> !result.isDone(other))
                .filter(other -> days.least(other) <= days.least(step))
                .map(WorkStep::name)
                .filter(name -> !graph.isAfter(name, step.name()))
                .limit(MOST_NAMED)
                .toList();
    }
}
