package secondbolt.work.order;

import secondbolt.task.WorkStep;

/**
 * A rule between two steps.
 *
 * @param later the name of the step that follows
 * @param rule the step it follows, with the reason
 */
public record Link(String later, WorkStep.Follows rule) {
    /** The name of the step that comes first. */
    public String first() {
        return rule.step();
    }
}
