package secondbolt.worksheet;

import java.util.List;
import java.util.stream.Stream;
import secondbolt.task.Need;
import secondbolt.task.WorkStep;

/**
 * What a topic contributes to others without their knowing it.
 *
 * @param steps of the order of work
 * @param needs things needed
 * @param words of the trade that its page uses
 */
public record Gives(List<WorkStep> steps, List<Need> needs, List<Term> words) {
    /** Nothing. */
    public static final Gives NOTHING = new Gives(List.of(), List.of(), List.of());

    /** Copies the lists. */
    public Gives {
        steps = List.copyOf(steps);
        needs = List.copyOf(needs);
        words = List.copyOf(words);
    }

    /** These, and then the others. */
    public Gives and(Gives others) {
        return new Gives(
                both(steps, others.steps), both(needs, others.needs), both(words, others.words));
    }

    private static <T> List<T> both(List<T> first, List<T> then) {
        return Stream.concat(first.stream(), then.stream()).toList();
    }
}
