package secondbolt.prepare.step;

import java.util.ArrayList;
import java.util.List;
import secondbolt.measure.Tape;
import secondbolt.prepare.due.Preparation;
import secondbolt.task.WorkStep;

/**
 * The steps of preparing.
 *
 * <p>Their order is derived: what spreads is dealt with before the cloth comes in, what has no way
 * back is measured before it, and what changes the size comes before the size is measured.
 */
public final class PrepareSteps {
    private PrepareSteps() {}

    /**
     * All of them, in order, each for the cloths that need it.
     *
     * @param tape to print with
     */
    public static List<WorkStep> of(Preparation all, Tape tape) {
        List<WorkStep> steps = new ArrayList<>(new DrySteps(all, tape).steps());
        steps.addAll(new WashSteps(all).steps());
        steps.addAll(new LastSteps(all).steps());
        return List.copyOf(steps);
    }
}
