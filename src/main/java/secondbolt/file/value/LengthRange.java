package secondbolt.file.value;

import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/**
 * The lengths a key takes, in a tape's sense.
 *
 * @param least the shortest, as written in words
 * @param most the longest, as written in words
 */
public record LengthRange(String least, String most) {
    /**
     * The lengths from one to the other, both included, such as {@code "1 mm"} and {@code "20 m"}.
     */
    public static LengthRange of(String least, String most) {
        return new LengthRange(least, most);
    }

    /** Whether a length lies in it, its ends included. */
    public boolean holds(Length length) {
        return !length.isShorterThan(read(least)) && !length.isLongerThan(read(most));
    }

    /** The range as it is told a maker. */
    public String words() {
        return least + " to " + most;
    }

    private static Length read(String words) {
        return Length.parse(words, Tape.CENTIMETRE).orThrow();
    }
}
