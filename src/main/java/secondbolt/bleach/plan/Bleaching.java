package secondbolt.bleach.plan;

import java.util.Optional;
import secondbolt.file.value.Answer;
import secondbolt.file.value.Placed;
import secondbolt.measure.Volume;

/**
 * What the maker means to do to one cloth.
 *
 * @param with what she takes; unknown while she has not decided
 * @param evidence what she knows of the cloth's colour and strength
 * @param bath what she has to do it in and with
 */
public record Bleaching(Placed<Answer<Agent>> with, Evidence evidence, Bath bath) {
    /**
     * What is known of the cloth.
     *
     * @param colour whether it has one, if told
     * @param dyedWith what it was dyed with, if told
     * @param triangle on its care label, if told
     * @param colourStays whether its colour stayed in the test on a hidden seam, if tested
     * @param held whether it held when it was pulled, if tested
     */
    public record Evidence(
            Optional<Colour> colour,
            Optional<DyedWith> dyedWith,
            Optional<Triangle> triangle,
            Optional<Boolean> colourStays,
            Optional<Boolean> held) {}

    /**
     * What it is done in and with.
     *
     * @param vessel how much water it takes with room for the cloth to move, if told
     * @param remover what the remover is made of, if told
     * @param label what the label of her bleach says, if told
     */
    public record Bath(
            Optional<Volume> vessel, Optional<Remover> remover, Optional<LabelDose> label) {}

    /** What she takes, if she has decided. */
    public Optional<Agent> agent() {
        return with.value().toOptional();
    }
}
