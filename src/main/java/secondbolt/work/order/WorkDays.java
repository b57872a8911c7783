package secondbolt.work.order;

import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import secondbolt.task.Wait;
import secondbolt.task.WorkStep;

/**
 * The earliest day of each step, by what must pass between them. What the work itself takes is the
 * maker's, and is never guessed, so no step can come earlier and many will come later.
 *
 * <p>A working day is taken as {@value #LONGEST_DAY_H} hours: common practice, no source. What
 * rests longer than is left of the day is taken up again the next morning.
 *
 * @param least by name, by the shortest of the times that are told; the first day is 1
 * @param most the same by the longest
 */
public record WorkDays(Map<String, Integer> least, Map<String, Integer> most) {
    /** How many hours a working day has at most. */
    public static final int LONGEST_DAY_H = 12;

    private static final long DAY = Duration.ofDays(1).toMinutes();
    private static final long LONGEST_DAY = Duration.ofHours(LONGEST_DAY_H).toMinutes();

    /** Copies the maps. */
    public WorkDays {
        least = Map.copyOf(least);
        most = Map.copyOf(most);
    }

    /**
     * Of steps in an order.
     *
     * @param sorted each behind all it follows
     * @param done of the steps that are done, on which day, the first being 1, if that is told; of
     *     one whose day is not told what must pass after it has passed
     */
    public static WorkDays of(List<WorkStep> sorted, Map<String, Optional<Long>> done) {
        return new WorkDays(days(sorted, done, Wait::least), days(sorted, done, Wait::most));
    }

    private static Map<String, Integer> days(
            List<WorkStep> sorted,
            Map<String, Optional<Long>> done,
            Function<Wait, Duration> passes) {
        Map<String, Long> over = new HashMap<>();
        Map<String, Integer> days = new HashMap<>();
        for (WorkStep step : sorted) {
            long pause = step.pause().map(passes).orElse(Duration.ZERO).toMinutes();
            Optional<Long> on = done.getOrDefault(step.name(), Optional.empty());
            if (done.containsKey(step.name())) {
                over.put(step.name(), on.map(day -> settled((day - 1) * DAY + pause)).orElse(0L));
                continue;
            }
            long begins =
                    step.follows().stream()
                            .mapToLong(f -> over.getOrDefault(f.step(), 0L))
                            .max()
                            .orElse(0);
            long start = Math.max(0, begins);
            days.put(step.name(), (int) (start / DAY) + 1);
            over.put(step.name(), pause == 0 ? start : settled(start + pause));
        }
        return days;
    }

    /** The same minute, or the next morning if it is late. */
    private static long settled(long minute) {
        long ofDay = Math.floorMod(minute, DAY);
        return ofDay > LONGEST_DAY ? minute - ofDay + DAY : minute;
    }
}
