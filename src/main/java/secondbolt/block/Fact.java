package secondbolt.block;

import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/**
 * Something that is so.
 *
 * @param label what it is
 * @param value on both tapes
 */
public record Fact(String label, Both value) {
    /** A fact in words that no tape changes. */
    public static Fact of(String label, String value) {
        return new Fact(label, Both.words(value));
    }

    /** A length to the tape's marks. */
    public static Fact of(String label, Tape tape, Length length) {
        return new Fact(label, Both.of(tape, length));
    }
}
