package secondbolt.trim.plan;

import java.util.Optional;
import secondbolt.file.value.Placed;
import secondbolt.measure.Length;
import secondbolt.measure.Share;
import secondbolt.pattern.EdgeSum;
import secondbolt.wearer.BodyMeasure;
import secondbolt.wearer.Passage;

/**
 * An elastic that draws an edge in.
 *
 * @param width of the elastic
 * @param round what of the body it sits on, if told
 * @param over what of the body it is pulled over, if told
 * @param on the edges that are drawn in, each as often as it goes round; if told
 * @param fit how long it is
 * @param stretched how long it becomes at most, as a share of its length at rest; if tested
 * @param casing what it runs in
 */
public record Elastic(
        Length width,
        Optional<BodyMeasure> round,
        Optional<Passage> over,
        Optional<Placed<EdgeSum>> on,
        Fit fit,
        Optional<Share> stretched,
        Casing casing) {
    /**
     * How long it is.
     *
     * @param loop how long it is round when it is joined, at rest; if she tried it on
     * @param less how much shorter than the body; if told, and not together with the loop
     * @param overlap of its ends, if told
     */
    public record Fit(Optional<Length> loop, Optional<Length> less, Optional<Length> overlap) {}

    /** What an elastic runs in. */
    public enum Casing {
        /** The edge itself, folded down. */
        FOLDED("folded"),
        /** A strip sewn on. */
        STRIP("strip");

        private final String word;

        Casing(String word) {
            this.word = word;
        }

        /** As written. */
        public String word() {
            return word;
        }
    }
}
