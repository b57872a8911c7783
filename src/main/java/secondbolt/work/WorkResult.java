package secondbolt.work;

import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.task.WorkStep;
import secondbolt.work.order.HerOrder;
import secondbolt.work.order.Link;
import secondbolt.work.order.WorkDays;

/**
 * The work in its order.
 *
 * @param steps each behind all it follows
 * @param done by name, what is done, with the day if it is told
 * @param days of those that are not
 * @param begins the first day, if told
 * @param source where the order of the sewing comes from; empty if there is no choice in it
 * @param hers an order of the maker's own, held against the rules
 * @param order the names in that order; empty if she has none
 * @param circles rules of topics that contradict each other
 * @param notHere names of the trade that she speaks of and that are no step of this project
 * @param isThreadTaken whether the thread is taken to be polyester
 */
public record WorkResult(
        List<WorkStep> steps,
        Map<String, Optional<LocalDate>> done,
        WorkDays days,
        Optional<LocalDate> begins,
        String source,
        HerOrder hers,
        List<String> order,
        List<List<Link>> circles,
        List<String> notHere,
        boolean isThreadTaken) {
    /** Copies the lists. */
    public WorkResult {
        steps = List.copyOf(steps);
        done = Collections.unmodifiableMap(new LinkedHashMap<>(done));
        order = List.copyOf(order);
        circles = circles.stream().map(List::copyOf).toList();
        notHere = List.copyOf(notHere);
    }

    /** Whether a step is done. */
    boolean isDone(WorkStep step) {
        return done.containsKey(step.name());
    }

    /** Whether there is a step of this name. */
    boolean has(String name) {
        return steps.stream().anyMatch(step -> step.name().equals(name));
    }

    /** What a step follows, of the steps there are. */
    List<WorkStep.Follows> follows(WorkStep step) {
        return step.follows().stream().filter(f -> has(f.step())).toList();
    }

    /** The next thing to do; nothing if all is done. */
    Optional<WorkStep> next() {
        return steps.stream()
                .filter(step -> !isDone(step))
                .filter(step -> follows(step).stream().allMatch(f -> done.containsKey(f.step())))
                .findFirst();
    }
}
