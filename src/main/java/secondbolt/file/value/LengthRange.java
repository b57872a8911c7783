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

    /**
     * The range on a tape: as written on a metric one; on an inch one in inches, drawn in to the
     * marks, so that both ends lie in it.
     */
    public String words(Tape tape) {
        return tape == Tape.CENTIMETRE
                ? words()
                : tape.print(read(least).roundedUpTo(tape.mark()))
                        + " to "
                        + tape.print(read(most).roundedDownTo(tape.mark()));
    }

    /** Whether a number that is no length here on one tape would be one on another. */
    public boolean holds(String bare, Tape tape) {
        return Length.parse(bare, tape).fold(this::holds, refusal -> false);
    }

    /** Its lower end. */
    public Length shortest() {
        return read(least);
    }

    /** Its upper end. */
    public Length longest() {
        return read(most);
    }

    private static Length read(String words) {
        return Length.parse(words, Tape.CENTIMETRE).orThrow();
    }
}
