package secondbolt.textile;

import java.util.List;
import java.util.Optional;
import secondbolt.file.value.Answer;
import secondbolt.measure.Length;
import secondbolt.textile.extent.Extent;
import secondbolt.textile.extent.Flaw;
import secondbolt.textile.extent.Sides;
import secondbolt.textile.state.State;

/**
 * One cloth as the maker wrote it.
 *
 * @param textile what kind of cloth it is
 * @param extent how large it is, before anything is trimmed or washed
 * @param edging what its edges are, and what is cut away
 * @param prewash how it changes in the wash, if written
 * @param condition its flaws and features
 * @param state what came with it, how it was finished, what its care label says
 * @param isInchLike whether its size without a unit, in centimetres, is that of a sheet in inches
 */
public record Cloth(
        Textile textile,
        Answer<Extent> extent,
        Edging edging,
        Optional<Prewash> prewash,
        Condition condition,
        State state,
        boolean isInchLike) {
    /**
     * Its four edges.
     *
     * @param names what each is, such as a selvage, a hem or a cut edge
     * @param trim what is cut away before anything else, zero or more, on the cloth as measured
     * @param isTold whether that is told of the side, if only that it is nothing
     */
    public record Edging(
            Sides<Optional<String>> names, Sides<Length> trim, Sides<Boolean> isTold) {}

    /** What a maker tells of flaws. */
    public enum Flaws {
        /** All there are, or that there are none. */
        TOLD,
        /** Nothing. */
        NOT_TOLD,
        /** That nobody has looked. */
        UNKNOWN
    }

    /**
     * How sound it is.
     *
     * @param survey how it was looked over, if written
     * @param flaws in the order written, features after them
     * @param told whether the maker tells of flaws, if only that there are none
     * @param clear what is kept clear round each of them, on the finished cloth, if written
     */
    public record Condition(
            Optional<Survey> survey, List<Flaw> flaws, Flaws told, Optional<Length> clear) {
        /** Copies the flaws. */
        public Condition {
            flaws = List.copyOf(flaws);
        }

        /** Whether the maker tells of flaws, if only that there are none. */
        public boolean areFlawsTold() {
            return told == Flaws.TOLD;
        }

        /** What is kept clear, nothing if not written. */
        public Length clearOrZero() {
            return clear.orElse(Length.ZERO);
        }
    }
}
