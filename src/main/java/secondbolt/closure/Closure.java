package secondbolt.closure;

import java.util.Optional;
import secondbolt.file.source.Place;
import secondbolt.measure.Length;

/**
 * A buttoned closure, as the maker wrote it.
 *
 * @param placket where it lies, from its finished top edge to its finished bottom edge
 * @param extension from the centre line to the finished edge
 * @param buttons how many
 * @param button which
 * @param first from the top edge to the centre of the first button
 * @param last from the bottom edge to the centre of the last; not needed for one alone
 * @param holes which way they run
 * @param laps which side lies over, and so has the holes
 * @param ease what the hole is made longer for thick cloth, if told
 * @param places where it is written, for checks that look further
 */
public record Closure(
        Placket placket,
        Length extension,
        int buttons,
        Button button,
        Length first,
        Optional<Length> last,
        Holes holes,
        Laps laps,
        Optional<Length> ease,
        Places places) {
    /**
     * Where a closure is written.
     *
     * @param buttons the count
     * @param first the first button's distance
     * @param last the last button's distance
     */
    public record Places(Place buttons, Place first, Place last) {}

    /** Which way buttonholes run. */
    public enum Holes {
        /** Along the centre line. */
        UPRIGHT("upright"),
        /** At right angles to the edge. */
        LEVEL("level");

        private final String word;

        Holes(String word) {
            this.word = word;
        }

        /** As written. */
        public String word() {
            return word;
        }
    }

    /** Which front lies over the other, named from the wearer. */
    public enum Laps {
        /** The wearer's right front has the holes. */
        RIGHT_OVER_LEFT("right over left"),
        /** The wearer's left front has the holes. */
        LEFT_OVER_RIGHT("left over right");

        private final String word;

        Laps(String word) {
            this.word = word;
        }

        /** As written. */
        public String word() {
            return word;
        }
    }

    /** The length of its holes, with the ease. */
    public Length hole() {
        return button.hole().plus(ease.orElse(Length.ZERO));
    }
}
