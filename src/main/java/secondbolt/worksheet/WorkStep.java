package secondbolt.worksheet;

import java.util.Set;

/**
 * Something to do.
 *
 * @param name a word or two, its own in the project, by which others follow it
 * @param text what to do, in a sentence or two
 * @param follows the names of the steps that must be done before; one that no topic contributes is
 *     not waited for
 */
public record WorkStep(String name, String text, Set<String> follows) {
    /** Copies the names. */
    public WorkStep {
        follows = Set.copyOf(follows);
    }
}
