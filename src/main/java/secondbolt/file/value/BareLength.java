package secondbolt.file.value;

import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/** A length as the maker writes it in her file: to the tape's marks, without the unit. */
public final class BareLength {
    private BareLength() {}

    /** The length to the tape's marks, without its unit. */
    public static String of(Tape tape, Length length) {
        return tape.print(length).replaceAll("\\s*[a-z]+$", "");
    }
}
