package secondbolt.cloth;

/**
 * A part of the cloth that pieces keep off.
 *
 * @param what in the maker's words
 * @param patch where it lies on the cloth as measured
 * @param kind what pieces may do with it
 */
public record Flaw(String what, Patch patch, Kind kind) {
    /** What pieces may do with a flaw or a feature. */
    public enum Kind {
        /** No piece may lie on it. */
        UNSOUND,
        /** Pieces that are hidden in the finished garment may lie on it. */
        HIDDEN_USE,
        /** Sound, but not wanted in a piece: a border, an old seam. */
        FEATURE
    }
}
