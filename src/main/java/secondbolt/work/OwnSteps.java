package secondbolt.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import secondbolt.file.value.Placed;
import secondbolt.task.Stage;
import secondbolt.task.Wait;
import secondbolt.task.WorkStep;
import secondbolt.work.order.StepGraph;
import secondbolt.work.plan.OwnStep;

/** The maker's own steps put among the others. */
final class OwnSteps {
    private static final String HERS = "You put it behind that step.";

    private OwnSteps() {}

    /**
     * All steps together; hers stand behind those they follow, in the stage of those.
     *
     * @param steps of the topics
     * @param own each of a name of its own
     */
    static List<WorkStep> among(List<WorkStep> steps, List<OwnStep> own) {
        StepGraph graph = new StepGraph(steps);
        List<WorkStep> inRow = new ArrayList<>(steps);
        own.forEach(step -> inRow.add(place(step, inRow, own), step(step, graph)));
        Map<String, WorkStep> all = new LinkedHashMap<>();
        inRow.forEach(step -> all.put(step.name(), step));
        for (OwnStep step : own) {
            for (Placed<String> before : step.before()) {
                all.computeIfPresent(
                        before.value(), (name, later) -> later.after(step.name(), HERS));
            }
        }
        return new ArrayList<>(all.values());
    }

    /** Behind the last of those it follows, and behind what she put there before. */
    private static int place(OwnStep own, List<WorkStep> inRow, List<OwnStep> all) {
        List<String> names = inRow.stream().map(WorkStep::name).toList();
        Set<String> hers = all.stream().map(OwnStep::name).collect(Collectors.toSet());
        int last =
                own.after().stream()
                        .mapToInt(after -> names.indexOf(after.value()))
                        .max()
                        .orElse(-1);
        int place = last < 0 ? names.size() : last + 1;
        while (place < names.size() && hers.contains(names.get(place))) {
            place++;
        }
        return place;
    }

    private static WorkStep step(OwnStep own, StepGraph graph) {
        WorkStep step =
                WorkStep.of(own.name(), stage(own, graph), own.does())
                        .following(
                                own.after().stream()
                                        .map(after -> new WorkStep.Follows(after.value(), HERS))
                                        .toList());
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
