package secondbolt.fit;

import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/** A length as the maker writes it in her file: to the tape's marks, without the unit. */
final class BareLength {
    private BareLength() {}

    static String of(Tape tape, Length length) {
        return tape.print(length).replaceAll("\\s*[a-z]+$", "");
    }
}
