package secondbolt.work.plan;

import java.time.Duration;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A time that must pass, as it is written: {@code 45 min}, {@code 24 h}, {@code 2 days}. */
final class RestWords {
    static final String RIGHT = "a time from 1 min to 60 days, such as 45 min, 24 h or 2 days";

    private static final Pattern TIME = Pattern.compile("(\\d{1,5}) ?(min|h|day|days)");
    private static final Duration MOST = Duration.ofDays(60);

    private RestWords() {}

    static Optional<Duration> parse(String text) {
        Matcher time = TIME.matcher(text);
        return Optional.of(time)
                .filter(Matcher::matches)
                .map(t -> time(Long.parseLong(t.group(1)), t.group(2)))
                .filter(t -> t.compareTo(Duration.ZERO) > 0 && t.compareTo(MOST) <= 0);
    }

    private static Duration time(long count, String unit) {
        return switch (unit) {
            case "min" -> Duration.ofMinutes(count);
            case "h" -> Duration.ofHours(count);
            default -> Duration.ofDays(count);
        };
    }
}
