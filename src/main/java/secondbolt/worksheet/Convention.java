package secondbolt.worksheet;

import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/**
 * A length that a rule of the trade gives, once for each tape: neither is worked out from the
 * other.
 *
 * @param inch on an inch tape
 * @param metric on a metric one
 * @param source title, edition and page, or {@link #COMMON_PRACTICE}
 */
public record Convention(Length inch, Length metric, String source) {
    /** Where no published source is known. */
    public static final String COMMON_PRACTICE = "common practice, no source";

    /** A rule of the trade without a published source. */
    public static Convention common(Length inch, Length metric) {
        return new Convention(inch, metric, COMMON_PRACTICE);
    }

    /** What it is on a tape. */
    public Length on(Tape tape) {
        return tape == Tape.INCH ? inch : metric;
    }
}
