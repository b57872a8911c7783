package secondbolt.work.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.stream.Collectors;
import secondbolt.task.Stage;
import secondbolt.task.WorkStep;

/** Sorts the steps that topics contribute into one order. */
public final class OrderOfWork {
    /**
     * Where a step would stand if it followed nothing: by stage, then as given.
     *
     * @param stage of the work
     * @param given the number in the order given
     */
    private record Rank(Stage stage, int given) implements Comparable<Rank> {
        private static final Comparator<Rank> ORDER =
                Comparator.comparing(Rank::stage).thenComparingInt(Rank::given);

        @Override
        public int compareTo(Rank other) {
            return ORDER.compare(this, other);
        }
    }

    private OrderOfWork() {}

    /**
     * Each step behind all it follows; else stage by stage, and within a stage in the order given.
     * A step that one of an earlier rank follows takes that rank, so that a hem which must be done
     * before the band stands right before the band.
     *
     * @throws IllegalArgumentException naming the steps, if some follow each other in a circle or
     *     two share a name
     */
    public static List<WorkStep> of(List<WorkStep> given) {
        StepGraph graph = new StepGraph(given);
        Map<String, Rank> ranks = new HashMap<>();
        for (int i = 0; i < given.size(); i++) {
            ranks.put(given.get(i).name(), new Rank(given.get(i).stage(), i));
        }
        List<WorkStep> sorted = sorted(graph, ranks);
        for (int i = sorted.size() - 1; i >= 0; i--) {
            Rank rank = ranks.get(sorted.get(i).name());
            graph.follows(sorted.get(i).name())
                    .forEach(f -> ranks.merge(f.step(), rank, OrderOfWork::earlier));
        }
        return sorted(graph, ranks);
    }

    private static Rank earlier(Rank one, Rank other) {
        return one.compareTo(other) <= 0 ? one : other;
    }

    private static List<WorkStep> sorted(StepGraph graph, Map<String, Rank> ranks) {
        Map<String, Integer> open = new HashMap<>();
        Map<String, List<WorkStep>> followers = new HashMap<>();
        PriorityQueue<WorkStep> ready =
                new PriorityQueue<>(
                        Comparator.comparing((WorkStep step) -> ranks.get(step.name()))
                                .thenComparing(step -> graph.steps().indexOf(step)));
        for (WorkStep step : graph.steps()) {
            List<WorkStep.Follows> follows = graph.follows(step.name());
            open.put(step.name(), follows.size());
            follows.forEach(
                    f -> followers.computeIfAbsent(f.step(), s -> new ArrayList<>()).add(step));
            if (follows.isEmpty()) {
                ready.add(step);
            }
        }
        List<WorkStep> sorted = new ArrayList<>();
        while (!ready.isEmpty()) {
            WorkStep next = ready.poll();
            sorted.add(next);
            for (WorkStep follower : followers.getOrDefault(next.name(), List.of())) {
                if (open.merge(follower.name(), -1, Integer::sum) == 0) {
                    ready.add(follower);
                }
            }
        }
        if (sorted.size() < graph.steps().size()) {
            Set<WorkStep> left = new HashSet<>(graph.steps());
            sorted.forEach(left::remove);
            throw new IllegalArgumentException(
                    "steps follow each other: "
                            + graph.steps().stream()
                                    .filter(left::contains)
                                    .map(WorkStep::name)
                                    .collect(Collectors.joining(", ")));
        }
        return List.copyOf(sorted);
    }
}
