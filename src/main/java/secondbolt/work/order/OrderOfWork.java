package secondbolt.work.order;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import secondbolt.task.WorkStep;

/** Sorts the steps that topics contribute into one order. */
public final class OrderOfWork {
    private OrderOfWork() {}

    /**
     * Each step behind all it follows, else in the order given.
     *
     * @throws IllegalArgumentException naming the steps, if some follow each other in a circle or
     *     two share a name
     */
    public static List<WorkStep> of(List<WorkStep> given) {
        Set<String> names = given.stream().map(WorkStep::name).collect(Collectors.toSet());
        if (names.size() < given.size()) {
            throw new IllegalArgumentException("two steps of one name in " + names(given));
        }
        List<WorkStep> left = new ArrayList<>(given);
        List<WorkStep> sorted = new ArrayList<>();
        Set<String> done = new HashSet<>();
        while (!left.isEmpty()) {
            WorkStep next =
                    left.stream()
                            .filter(step -> isReady(step, names, done))
                            .findFirst()
                            .orElseThrow(
                                    () ->
                                            new IllegalArgumentException(
                                                    "steps follow each other: " + names(left)));
            left.remove(next);
            sorted.add(next);
            done.add(next.name());
        }
        return List.copyOf(sorted);
    }

    private static boolean isReady(WorkStep step, Set<String> names, Set<String> done) {
        return step.follows().stream()
                .map(WorkStep.Follows::step)
                .filter(names::contains)
                .allMatch(done::contains);
    }

    private static String names(List<WorkStep> steps) {
        return steps.stream().map(WorkStep::name).collect(Collectors.joining(", "));
    }
}
