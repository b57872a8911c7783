package secondbolt.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.file.value.Placed;
import secondbolt.task.Stage;
import secondbolt.task.Wait;
import secondbolt.task.WorkStep;
import secondbolt.work.order.StepGraph;
import secondbolt.work.plan.OwnStep;

/** The maker's own steps put among the others. */
final class OwnSteps {
    private OwnSteps() {}

    /**
     * All steps together; hers stand behind those they follow, in the stage of those.
     *
     * @param steps of the topics
     * @param own each of a name of its own
     */
    static List<WorkStep> among(List<WorkStep> steps, List<OwnStep> own) {
        StepGraph graph = new StepGraph(steps);
        Map<String, WorkStep> all = new LinkedHashMap<>();
        steps.forEach(step -> all.put(step.name(), step));
        own.forEach(step -> all.put(step.name(), step(step, graph)));
        for (OwnStep step : own) {
            for (Placed<String> before : step.before()) {
                all.computeIfPresent(
                        before.value(),
                        (name, later) -> later.after(step.name(), "You put it behind that step."));
            }
        }
        return new ArrayList<>(all.values());
    }

    private static WorkStep step(OwnStep own, StepGraph graph) {
        WorkStep step = WorkStep.of(own.name(), stage(own, graph), own.does());
        for (Placed<String> after : own.after()) {
            step = step.after(after.value(), "You put it behind that step.");
        }
        Optional<Wait> rest =
                own.rest()
                        .map(time -> new Wait("it rests", time, time, "So long you let it rest."));
        return rest.isPresent() ? step.waiting(rest.get()) : step;
    }

    private static Stage stage(OwnStep own, StepGraph graph) {
        return Stream.concat(own.after().stream(), own.before().stream())
                .flatMap(name -> graph.find(name.value()).stream())
                .map(WorkStep::stage)
                .findFirst()
                .orElse(Stage.SEWING);
    }
}
