package secondbolt.sewing.plan;

import java.util.Optional;

/**
 * How a seam is sewn, as far as it is told.
 *
 * @param stitch which stitch joins it
 * @param finish what becomes of its edges
 * @param times how often it is sewn
 */
public record SeamChoice(
        Optional<Stitch> stitch, Optional<Finish> finish, Optional<Integer> times) {
    /** Nothing told. */
    public static final SeamChoice NOTHING =
            new SeamChoice(Optional.empty(), Optional.empty(), Optional.empty());

    /** The same, what it does not tell taken from another. */
    public SeamChoice or(SeamChoice general) {
        return new SeamChoice(
                stitch.or(general::stitch), finish.or(general::finish), times.or(general::times));
    }
}
