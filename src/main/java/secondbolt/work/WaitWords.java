package secondbolt.work;

import java.time.Duration;
import secondbolt.measure.Plural;
import secondbolt.task.Wait;
import secondbolt.worksheet.Sentence;

/** A wait in words, both its times told where there are two. */
final class WaitWords {
    private static final long TWO_DAYS_H = 48;

    private WaitWords() {}

    /** {@code It hangs: wait 24 h to 3 days.} */
    static String brief(Wait wait) {
        return Sentence.capital(wait.what()) + ": wait " + time(wait) + ".";
    }

    /** The same with why. */
    static String full(Wait wait) {
        return brief(wait) + (wait.why().isEmpty() ? "" : " " + wait.why());
    }

    private static String time(Wait wait) {
        String least = time(wait.least());
        return wait.least().equals(wait.most()) ? least : least + " to " + time(wait.most());
    }

    /** Whole days from two on, else hours, else minutes. */
    static String time(Duration time) {
        long minutes = time.toMinutes();
        long hours = time.toHours();
        if (minutes % 60 != 0) {
            return hours == 0 ? minutes + " min" : hours + " h " + minutes % 60 + " min";
        }
        return hours >= TWO_DAYS_H && hours % 24 == 0
                ? Plural.of((int) (hours / 24), "day")
                : hours + " h";
    }
}
