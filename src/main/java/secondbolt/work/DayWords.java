package secondbolt.work;

import java.time.LocalDate;
import java.util.Optional;
import secondbolt.task.WorkStep;

/**
 * The earliest day of a step in words.
 *
 * @param result the work in its order
 */
record DayWords(WorkResult result) {
    /** {@code day 4}, or {@code day 3 to 5} by the longer waits, each with its date if known. */
    String of(WorkStep step) {
        if (result.isDone(step)) {
            Optional<LocalDate> on = result.done().get(step.name());
            return on.map(day -> "done " + day).orElse("done");
        }
        int least = least(step);
        int most = most(step);
        return least == most
                ? "day " + least + date(least)
                : "day "
                        + least
                        + date(least)
                        + "; "
                        + most
                        + date(most)
                        + " with the longer waits";
    }

    private String date(int day) {
        return onDay(day).map(date -> " (" + date + ")").orElse("");
    }

    /** The date of a day, if it is told when she begins. */
    Optional<LocalDate> onDay(int day) {
        return result.begins().map(first -> first.plusDays(day - 1));
    }

    int least(WorkStep step) {
        return result.days().least().get(step.name());
    }

    int most(WorkStep step) {
        return result.days().most().get(step.name());
    }
}
