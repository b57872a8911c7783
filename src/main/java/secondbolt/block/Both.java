package secondbolt.block;

import java.util.Optional;
import java.util.function.Function;
import secondbolt.measure.Area;
import secondbolt.measure.ClothWeight;
import secondbolt.measure.Length;
import secondbolt.measure.Mass;
import secondbolt.measure.Tape;

/**
 * Text on the maker's tape, and the same on the other.
 *
 * @param own on the maker's tape
 * @param other on the other tape; empty if it is the same or there is none
 */
public record Both(String own, String other) {
    /** Words that no tape changes. */
    public static Both words(String text) {
        return new Both(text, "");
    }

    /** Whatever a tape prints, on both; once if both print the same. */
    public static Both of(Tape tape, Function<Tape, String> print) {
        String own = print.apply(tape);
        String other = print.apply(tape.other());
        return new Both(own, other.equals(own) ? "" : other);
    }

    /** A length to the tape's marks. */
    public static Both of(Tape tape, Length length) {
        return of(tape, t -> t.print(length));
    }

    /** A length to the tape's marks; these words if it is not known. */
    public static Both of(Tape tape, Optional<Length> length, String unknown) {
        return length.map(l -> of(tape, l)).orElse(words(unknown));
    }

    /** An area. */
    public static Both of(Tape tape, Area area) {
        return of(tape, t -> t.print(area));
    }

    /** A mass. */
    public static Both of(Tape tape, Mass mass) {
        return of(tape, t -> t.print(mass));
    }

    /** The weight of a cloth. */
    public static Both of(Tape tape, ClothWeight weight) {
        return of(tape, t -> t.print(weight));
    }
}
