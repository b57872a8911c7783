package secondbolt.work.plan;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import secondbolt.file.value.Placed;

/**
 * A step of the maker's own.
 *
 * @param does what to do, in her words
 * @param told the name she gives it, if she does
 * @param after the names of the steps it follows
 * @param before the names of the steps that follow it
 * @param rest how long must pass after it, if anything must
 */
public record OwnStep(
        String does,
        Optional<String> told,
        List<Placed<String>> after,
        List<Placed<String>> before,
        Optional<Duration> rest) {
    /** As long as a name may be. */
    static final int LONGEST_NAME = 60;

    /** Copies the lists. */
    public OwnStep {
        after = List.copyOf(after);
        before = List.copyOf(before);
    }

    /** By which it is ticked: the name told, else what to do without its full stop, cut short. */
    public String name() {
        return told.orElseGet(() -> shortened(does.strip()));
    }

    private static String shortened(String does) {
        String plain =
                does.length() > 1 && does.endsWith(".")
                        ? does.substring(0, does.length() - 1).strip()
                        : does;
        if (plain.codePointCount(0, plain.length()) <= LONGEST_NAME) {
            return plain;
        }
        String head = plain.substring(0, plain.offsetByCodePoints(0, LONGEST_NAME));
        int space = head.lastIndexOf(' ');
        return (space > 0 ? head.substring(0, space) : head).strip();
    }
}
