package secondbolt.dye.plan;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How long something lasts, in minutes.
 *
 * @param least at least, 1 or more
 * @param most at most, no less
 */
public record Lasting(int least, int most) {
    private static final Pattern TEXT =
            Pattern.compile("(\\d{1,4})(?: ?(?:to|-|–) ?(\\d{1,4}))? ?(min|minutes|h|hours?)");

    private static final int MINUTES_PER_HOUR = 60;
    private static final int LONGEST = 48 * MINUTES_PER_HOUR;

    /** Checks the order. */
    public Lasting {
        if (least < 1 || most < least) {
            throw new IllegalArgumentException("lasts " + least + " to " + most);
        }
    }

    /** So many minutes. */
    public static Lasting minutes(int count) {
        return new Lasting(count, count);
    }

    /** Reads a time such as {@code 45 min}, {@code 1 h} or {@code 30 to 60 min}, up to 48 h. */
    public static Optional<Lasting> parse(String text) {
        Matcher matcher = TEXT.matcher(text.strip());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        int each = matcher.group(3).startsWith("h") ? MINUTES_PER_HOUR : 1;
        int least = Integer.parseInt(matcher.group(1)) * each;
        int most = matcher.group(2) == null ? least : Integer.parseInt(matcher.group(2)) * each;
        return least >= 1 && most >= least && most <= LONGEST
                ? Optional.of(new Lasting(least, most))
                : Optional.empty();
    }

    /** {@code 45 min} or {@code 45 to 60 min}. */
    public String words() {
        return (least == most ? "" : least + " to ") + most + " min";
    }
}
