package secondbolt.work;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import secondbolt.task.WorkStep;

/**
 * The earliest day of a step in words.
 *
 * @param result the work in its order
 */
record DayWords(WorkResult result) {
    private static final String SPACE = "\u00A0";

    /** {@code day 4}, or {@code day 3 to 5} by the longer waits, each with its date if known. */
    String of(WorkStep step) {
        if (result.isDone(step)) {
            Optional<LocalDate> on = result.done().get(step.name());
            return on.map(day -> "done " + words(day)).orElse("done");
        }
        int least = least(step);
        int most = most(step);
        return least == most
                ? day(least)
                : day(least) + "; " + day(most) + " with the longer waits";
    }

    private String day(int day) {
        return "day" + SPACE + day + onDay(day).map(date -> " (" + words(date) + ")").orElse("");
    }

    /** {@code 28 Nov 2026}, which no column breaks. */
    private static String words(LocalDate date) {
        String month = date.getMonth().name();
        return date.getDayOfMonth()
                + SPACE
                + month.charAt(0)
                + month.substring(1, 3).toLowerCase(Locale.ROOT)
                + SPACE
                + date.getYear();
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
