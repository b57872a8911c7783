package secondbolt.work.order;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import secondbolt.task.Stage;
import secondbolt.task.WorkStep;

/**
 * An order of the maker's own, held against the rules.
 *
 * @param steps what is sorted: with her order in it, or without it if it is refused
 * @param broken the rules it breaks, in the order of her steps
 * @param isRefused whether a step of hers itself asks for one that she puts behind it; an order
 *     that only leads to a rule elsewhere, as dyeing what is sewn leads to another survey, is
 *     followed
 */
public record HerOrder(List<WorkStep> steps, List<Link> broken, boolean isRefused) {
    private static final String HERS = "Your own order.";

    /** Copies the lists. */
    public HerOrder {
        steps = List.copyOf(steps);
        broken = List.copyOf(broken);
    }

    /** The same steps without an order of hers. */
    public static HerOrder none(List<WorkStep> steps) {
        return new HerOrder(steps, List.of(), false);
    }

    /**
     * Holds an order against the rules.
     *
     * @param steps without a circle
     * @param names of some of them, each once, in her order
     */
    public static HerOrder of(List<WorkStep> steps, List<String> names) {
        List<Link> broken = new ArrayList<>();
        List<WorkStep> left = steps;
        List<Link> found = broken(left, names);
        while (!found.isEmpty()) {
            broken.addAll(found);
            left = without(left, Set.copyOf(found));
            found = broken(left, names);
        }
        boolean isRefused = isRefused(new StepGraph(steps), broken, names);
        return new HerOrder(isRefused ? steps : inRow(left, names), broken, isRefused);
    }

    private static List<Link> broken(List<WorkStep> steps, List<String> names) {
        StepGraph graph = new StepGraph(steps);
        Set<Link> broken = new LinkedHashSet<>();
        for (int i = 0; i < names.size(); i++) {
            Set<String> needs = graph.needs(names.get(i));
            for (int j = i + 1; j < names.size(); j++) {
                if (needs.contains(names.get(j))) {
                    broken.addAll(graph.reasons(names.get(i), names.get(j)));
                }
            }
        }
        return List.copyOf(broken);
    }

    private static boolean isRefused(StepGraph graph, List<Link> broken, List<String> names) {
        return broken.stream()
                .anyMatch(
                        link ->
                                names.contains(link.later())
                                        && !isCut(graph.find(link.later()).orElseThrow()));
    }

    /** What is cut before it is dyed can still be measured again; it is told, and followed. */
    private static boolean isCut(WorkStep step) {
        return step.stage() == Stage.CUTTING || step.stage() == Stage.PREPARING;
    }

    private static List<WorkStep> without(List<WorkStep> steps, Set<Link> links) {
        return steps.stream()
                .map(
                        step ->
                                step.following(
                                        step.follows().stream()
                                                .filter(
                                                        f ->
                                                                !links.contains(
                                                                        new Link(step.name(), f)))
                                                .toList()))
                .toList();
    }

    private static List<WorkStep> inRow(List<WorkStep> steps, List<String> names) {
        return steps.stream()
                .map(
                        step -> {
                            int at = names.indexOf(step.name());
                            return at > 0 ? step.after(names.get(at - 1), HERS) : step;
                        })
                .toList();
    }
}
