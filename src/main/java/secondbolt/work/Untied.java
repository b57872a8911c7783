package secondbolt.work;

import java.util.ArrayList;
import java.util.List;
import secondbolt.task.WorkStep;
import secondbolt.work.order.Link;
import secondbolt.work.order.StepGraph;

/**
 * Steps of topics without a circle. Topics do not know each other, so their rules can contradict
 * each other in a project nobody thought of: it is told, and the last rule of each circle is left
 * out, so that she still has an order.
 *
 * @param steps without a circle
 * @param circles each as the rules that it is of
 */
record Untied(List<WorkStep> steps, List<List<Link>> circles) {
    static Untied of(List<WorkStep> given) {
        List<List<Link>> circles = new ArrayList<>();
        List<WorkStep> steps = given;
        List<Link> circle = new StepGraph(steps).circle();
        while (!circle.isEmpty()) {
            circles.add(circle);
            Link last = circle.get(circle.size() - 1);
            steps = steps.stream().map(step -> without(step, last)).toList();
            circle = new StepGraph(steps).circle();
        }
        return new Untied(steps, circles);
    }

    private static WorkStep without(WorkStep step, Link link) {
        return step.name().equals(link.later())
                ? step.following(
                        step.follows().stream()
                                .filter(f -> !f.step().equals(link.first()))
                                .toList())
                : step;
    }
}
