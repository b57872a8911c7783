package secondbolt.worksheet;

import java.util.List;
import java.util.regex.Pattern;

/**
 * Something the maker should know, with what to do about it.
 *
 * @param code what kind of finding it is, lower-case words with hyphens that never change, so that
 *     tests and other programs need no prose
 * @param about what it is about
 * @param level how much hangs on it
 * @param text what was found
 * @param remedy what to do; empty for a mere note
 * @param sources further sources than the one its text names, with what each says; a page numbers
 *     them and lists them at its end
 */
public record Finding(
        String code, Subject about, Level level, String text, String remedy, List<String> sources) {
    private static final Pattern CODE = Pattern.compile("[a-z]+(-[a-z]+)*");

    /** How much hangs on a finding, least first. */
    public enum Level {
        /** Good to know. */
        NOTE,
        /** Look twice. */
        CAUTION,
        /** It will likely go wrong if nothing is done. */
        WARNING,
        /** Do not cut. */
        STOP
    }

    /** One without further sources. */
    public Finding(String code, Subject about, Level level, String text, String remedy) {
        this(code, about, level, text, remedy, List.of());
    }

    /** The same with further sources. */
    public Finding citing(List<String> further) {
        return new Finding(code, about, level, text, remedy, further);
    }

    /** Checks the code and copies the sources. */
    public Finding {
        sources = List.copyOf(sources);
        if (!CODE.matcher(code).matches()) {
            throw new IllegalArgumentException("not a code: " + code);
        }
    }

    /** Whether it must be read before what it is about is used, though it forbids nothing. */
    public boolean isWarning() {
        return level == Level.CAUTION || level == Level.WARNING;
    }

    /** Whether nothing it touches may be cut. */
    public boolean isStop() {
        return level == Level.STOP;
    }
}
