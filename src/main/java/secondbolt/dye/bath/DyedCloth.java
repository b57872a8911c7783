package secondbolt.dye.bath;

import java.util.Optional;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.dye.take.ClothUptake;
import secondbolt.file.value.Answer;
import secondbolt.measure.Mass;
import secondbolt.textile.Textile;
import secondbolt.textile.fibre.Fibre;

/**
 * A cloth that is dyed.
 *
 * @param cloth as it was worked out
 * @param uptake what the dye does on it; nothing if its fibre or the class is not known
 */
public record DyedCloth(ClothResult cloth, Optional<ClothUptake> uptake) {
    /** The maker's name for it. */
    public String name() {
        return cloth.name();
    }

    /** What it is made of, if known. */
    public Optional<Fibre> fibre() {
        return cloth.cloth().textile().fibre().flatMap(Answer::toOptional);
    }

    /** What it weighs dry, all of it, untrimmed, if known. */
    public Optional<Mass> mass() {
        return cloth.heaviness().mass();
    }

    /** Whether that was weighed, and not reckoned from its weight by area. */
    public boolean isWeighed() {
        return cloth.cloth().textile().mass().flatMap(Answer::toOptional).isPresent();
    }

    /** Whether its fibre is only guessed. */
    public boolean isGuessed() {
        return cloth.cloth().textile().knownBy().equals(Optional.of(Textile.KnownBy.GUESS));
    }
}
