package secondbolt.work.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import secondbolt.file.value.Placed;

/**
 * What the maker says of the order of work.
 *
 * @param own steps of her own, as written
 * @param done what she has done, as written
 * @param order steps in an order of her own; empty if she has none
 * @param begins the day she begins or goes on, if told
 */
public record WorkPlan(
        List<Placed<OwnStep>> own,
        List<Placed<Ticked>> done,
        List<Placed<String>> order,
        Optional<LocalDate> begins) {
    /** Nothing is said. */
    public static final WorkPlan NOTHING =
            new WorkPlan(List.of(), List.of(), List.of(), Optional.empty());

    /** Copies the lists. */
    public WorkPlan {
        own = List.copyOf(own);
        done = List.copyOf(done);
        order = List.copyOf(order);
    }
}
