package secondbolt.dye.plan;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import secondbolt.measure.Tape;

/**
 * How hot a bath is, in whole degrees of both scales.
 *
 * @param celsius in degrees Celsius
 * @param fahrenheit in degrees Fahrenheit
 */
public record Heat(int celsius, int fahrenheit) {
    private static final Pattern TEXT =
            Pattern.compile("(\\d{1,3}) ?°? ?([CF]|Celsius|Fahrenheit)");

    private static final int COLDEST_C = 5;
    private static final int HOTTEST_C = 100;

    /** One that a rule gives in degrees Celsius. */
    public static Heat ofCelsius(int degrees) {
        return new Heat(degrees, (int) Math.rint(degrees * 9 / 5.0 + 32));
    }

    /** One that a rule gives in degrees Fahrenheit. */
    public static Heat ofFahrenheit(int degrees) {
        return new Heat((int) Math.rint((degrees - 32) * 5 / 9.0), degrees);
    }

    /** Reads a heat such as {@code 40 C} or {@code 104 F}, of 5 to 100 °C. */
    public static Optional<Heat> parse(String text) {
        Matcher matcher = TEXT.matcher(text.strip());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        int degrees = Integer.parseInt(matcher.group(1));
        Heat heat = matcher.group(2).startsWith("C") ? ofCelsius(degrees) : ofFahrenheit(degrees);
        return Optional.of(heat).filter(h -> h.celsius() >= COLDEST_C && h.celsius() <= HOTTEST_C);
    }

    /** Whether it is hotter than the other. */
    public boolean isAbove(Heat other) {
        return celsius > other.celsius;
    }

    /** With the maker's scale first: {@code 40 °C (104 °F)}. */
    public String words(Tape tape) {
        String metric = celsius + " °C";
        String inch = fahrenheit + " °F";
        return tape == Tape.INCH ? inch + " (" + metric + ")" : metric + " (" + inch + ")";
    }
}
