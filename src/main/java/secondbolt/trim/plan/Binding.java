package secondbolt.trim.plan;

import java.util.Optional;
import secondbolt.file.value.Placed;
import secondbolt.measure.Length;
import secondbolt.pattern.EdgeSum;

/**
 * Edges that are bound with a strip.
 *
 * @param on the edges, each as often as it is bound
 * @param finished how wide the binding is when it is sewn, if she knows; of no meaning for a seam
 * @param cut how the strip lies to the grain
 * @param kind how it is folded
 * @param seam how far inside its own edge the strip is sewn; of a bound seam, the allowance that is
 *     bound; if told
 * @param from where the strip comes from
 * @param cloth of which cloth the remnant is, if told
 */
public record Binding(
        Placed<EdgeSum> on,
        Optional<Length> finished,
        Cut cut,
        Kind kind,
        Optional<Length> seam,
        From from,
        Optional<Placed<String>> cloth) {
    /** How a strip lies to the grain. */
    public enum Cut {
        /** At 45 degrees: it goes round curves. */
        BIAS("bias"),
        /** With the threads: it does not. */
        STRAIGHT("straight");

        private final String word;

        Cut(String word) {
            this.word = word;
        }

        /** As written. */
        public String word() {
            return word;
        }
    }

    /** How a strip is folded. */
    public enum Kind {
        /** Both edges turned to the middle, then folded over the raw edge. */
        DOUBLE_FOLD("double fold"),
        /** Sewn on, folded over the raw edge, its other edge turned in. */
        SINGLE_FOLD("single fold"),
        /** One raw edge of a seam pressed open, bound flat. */
        BOUND_SEAM("bound seam");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** As written. */
        public String word() {
            return word;
        }
    }

    /** Where a strip comes from. */
    public enum From {
        /** What stays over of the cloth. */
        REMNANT("remnant"),
        /** A shop. */
        BOUGHT("bought");

        private final String word;

        From(String word) {
            this.word = word;
        }

        /** As written. */
        public String word() {
            return word;
        }
    }

    /** Whether it closes over the edge itself, which then needs no seam allowance. */
    public boolean closesOverTheEdge() {
        return kind != Kind.BOUND_SEAM;
    }
}
