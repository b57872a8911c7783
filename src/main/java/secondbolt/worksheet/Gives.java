package secondbolt.worksheet;

import java.util.List;

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
}
