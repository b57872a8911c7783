package secondbolt.file;

import java.util.List;
import java.util.Optional;
import secondbolt.file.source.Node;
import secondbolt.measure.Tape;

/**
 * One key of the project file, described once.
 *
 * @param name as written
 * @param form how its value is written
 * @param need whether it must be there
 * @param meaning what it is for, in a sentence
 * @param example a value as it may be written
 * @param isPrivate whether it is the maker's own affair, and not published unless she shows it
 * @param findOut the cheapest way to find out what she wrote {@code unknown} for; empty if its
 *     meaning says that too
 * @param <T> what its value is read as
 */
public record Key<T>(
        String name,
        Form<T> form,
        Need need,
        String meaning,
        String example,
        boolean isPrivate,
        String findOut) {
    /** What makers write while they do not know. */
    static final String UNKNOWN = "unknown";

    /** What makers write where there is none of a thing. */
    static final List<String> NONE = List.of("none", "no");

    /** Whether a key must be there. */
    public enum Need {
        /** It must be written. */
        REQUIRED,
        /** It may be left out; its meaning says what then holds. */
        OPTIONAL,
        /** It is part of the project file, but this version does not work it out. */
        LATER
    }

    /** A key that must be written. */
    public static <T> Key<T> required(String name, Form<T> form, String meaning, String example) {
        return new Key<>(name, form, Need.REQUIRED, meaning, example, false, "");
    }

    /** A key that may be left out. */
    public static <T> Key<T> optional(String name, Form<T> form, String meaning, String example) {
        return new Key<>(name, form, Need.OPTIONAL, meaning, example, false, "");
    }

    /** A key that is known but refused, so that it is never read and ignored. */
    public static Key<String> later(String name, String meaning) {
        return new Key<>(name, new LaterForm(), Need.LATER, meaning, "", false, "");
    }

    /** The same key, kept private. */
    public Key<T> kept() {
        return new Key<>(name, form, need, meaning, example, true, findOut);
    }

    /**
     * The same key, which takes {@code unknown} also where it must be written: what is taken
     * meanwhile is its section's to say.
     *
     * @param how the cheapest way to find out, in a sentence
     */
    public Key<T> asking(String how) {
        return new Key<>(name, form, need, meaning, example, isPrivate, how);
    }

    /** A value as it may be written in a file on a tape; the example itself is on a metric one. */
    public String example(Tape tape) {
        return Example.text(this, tape);
    }

    /** The whole line as it may be written in a file on a tape, to be pasted. */
    public String line(Tape tape) {
        return "`" + name + ": " + example(tape) + "`";
    }

    /**
     * The same where nothing of hers is known: of a few words all are told, for the one of the
     * example would be a guess.
     */
    public String asked(Tape tape) {
        boolean isChoice = form.schema().containsKey("enum");
        return line(tape) + (isChoice ? ", " + form.words(tape) : "");
    }

    /** Whether {@code none} and {@code no} leave this key out. */
    boolean mayBeNone() {
        return need == Need.OPTIONAL && form.mayBeNone();
    }

    /** Whether a value says that there is none of it. */
    boolean isNone(Node node) {
        return mayBeNone() && node.asText().filter(text -> NONE.contains(text.text())).isPresent();
    }

    /** Whether {@code unknown} leaves this key open. */
    boolean mayBeOpen() {
        return need == Need.OPTIONAL || !findOut.isEmpty();
    }

    /** Whether a value says that she does not know, and the form has no answer of its own to it. */
    boolean isOpen(Node node, Reading reading) {
        return mayBeOpen()
                && node.asText().filter(text -> text.text().equals(UNKNOWN)).isPresent()
                && form.read(node, reading.silent()).isEmpty();
    }

    Optional<T> read(Node node, Reading reading) {
        return reading.under(Example.of(this, reading.tape()), () -> form.read(node, reading));
    }
}
