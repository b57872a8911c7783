package secondbolt.worksheet;

/**
 * Something the maker should know, with what to do about it.
 *
 * @param about the cloth, closure or sheet it is about
 * @param level how much hangs on it
 * @param text what was found
 * @param remedy what to do; empty for a mere note
 */
public record Finding(String about, Level level, String text, String remedy) {
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
}
