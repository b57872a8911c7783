package secondbolt.supply.plan;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import secondbolt.file.Form;
import secondbolt.file.form.Forms;
import secondbolt.measure.Parsed;

/**
 * Time spent at work, kept exactly.
 *
 * @param minutes never negative
 */
public record WorkTime(BigDecimal minutes) {
    /** None. */
    public static final WorkTime NONE = new WorkTime(BigDecimal.ZERO);

    private static final BigDecimal HOUR = BigDecimal.valueOf(60);
    private static final int MOST_HOURS = 10_000;
    private static final String RIGHT =
            "hours such as 1.5, `1 h 30 min` or `45 min`, from 0 to " + MOST_HOURS;
    private static final String NUMBER = "[0-9]{1,5}([.,][0-9]{1,4})?";
    private static final Pattern WORDS =
            Pattern.compile("(?:(" + NUMBER + ") ?h)?(?:(?:^| )([0-9]{1,6}) ?min)?");

    /** Hours as a number, or hours and minutes in words. */
    static final Form<WorkTime> FORM =
            Forms.either(
                    Forms.map(Forms.number("0", String.valueOf(MOST_HOURS)), WorkTime::ofHours),
                    Forms.phrase(
                            RIGHT,
                            "([0-9]{1,5}([.,][0-9]{1,4})? ?h)?( ?[0-9]{1,6} ?min)?",
                            WorkTime::parse));

    /** So many hours. */
    public static WorkTime ofHours(BigDecimal hours) {
        return new WorkTime(hours.multiply(HOUR));
    }

    private static Parsed<WorkTime> parse(String text) {
        Matcher words = WORDS.matcher(text);
        Optional<BigDecimal> minutes =
                words.matches() && !text.isEmpty()
                        ? Optional.of(
                                number(words.group(1)).multiply(HOUR).add(number(words.group(3))))
                        : Optional.empty();
        return minutes.filter(m -> m.compareTo(BigDecimal.valueOf(MOST_HOURS * 60L)) <= 0)
                .<Parsed<WorkTime>>map(m -> new Parsed.Value<>(new WorkTime(m)))
                .orElseGet(() -> new Parsed.Refusal<>("`" + text + "`", RIGHT));
    }

    private static BigDecimal number(String text) {
        return text == null ? BigDecimal.ZERO : new BigDecimal(text.replace(',', '.'));
    }

    /** The sum of both. */
    public WorkTime plus(WorkTime other) {
        return new WorkTime(minutes.add(other.minutes));
    }

    /** In hours, to a hundredth. */
    public double hours() {
        return minutes.divide(HOUR, 2, RoundingMode.HALF_UP).doubleValue();
    }

    /** To the minute: {@code 1 h 30 min}. */
    public String words() {
        long all = minutes.setScale(0, RoundingMode.HALF_UP).longValueExact();
        long hours = all / 60;
        long rest = all % 60;
        String minutesToo = rest == 0 ? "" : rest + " min";
        return hours == 0 && rest > 0 ? minutesToo : (hours + " h " + minutesToo).strip();
    }
}
