package secondbolt.pattern;

import secondbolt.garment.Serves;

/**
 * What an edge or a line serves, and how that is known.
 *
 * @param serves what it serves
 * @param how how it is known
 */
public record Meaning(Serves serves, How how) {
    /** How it is known. */
    public enum How {
        /** The maker says it. */
        TOLD,
        /** It follows from what it is sewn to, from its hem or from the piece it is on. */
        DERIVED,
        /** Its name has the trade's word for it. */
        NAMED
    }
}
