package secondbolt.task;

import java.time.Duration;

/**
 * What must pass after a step before anything that follows it.
 *
 * @param what happens meanwhile, as in "it hangs"
 * @param least how long at least
 * @param most how long where sources ask for longer, or the cloth does; never less than the least
 * @param why where the times come from, and when the longer one holds
 */
public record Wait(String what, Duration least, Duration most, String why) {
    /** Checks the times. */
    public Wait {
        if (least.isNegative() || most.compareTo(least) < 0) {
            throw new IllegalArgumentException("waits " + least + " to " + most);
        }
    }

    /** One of hours that all sources agree on. */
    public static Wait hours(String what, int hours, String why) {
        return new Wait(what, Duration.ofHours(hours), Duration.ofHours(hours), why);
    }
}
