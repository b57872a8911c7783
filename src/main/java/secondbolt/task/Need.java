package secondbolt.task;

import java.util.Optional;

/**
 * A thing needed.
 *
 * @param item what it is, by which the maker prices it
 * @param amount how much
 * @param why what for
 * @param buyAfter the step before which it should not be bought, with the reason, if there is one
 */
public record Need(String item, Amount amount, String why, Optional<WorkStep.Follows> buyAfter) {
    /** One that can be bought at any time. */
    public static Need of(String item, Amount amount, String why) {
        return new Need(item, amount, why, Optional.empty());
    }

    /** The same, not to be bought before a step. */
    public Need boughtAfter(String step, String reason) {
        return new Need(item, amount, why, Optional.of(new WorkStep.Follows(step, reason)));
    }
}
