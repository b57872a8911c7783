package secondbolt.measure.kitchen;

import java.util.Optional;
import secondbolt.measure.Mass;
import secondbolt.measure.Share;
import secondbolt.measure.Volume;

/**
 * Powders. They are weighed: how much of one a cup holds depends on its grain and on how it lies.
 */
@SuppressWarnings("ImmutableEnumChecker") // a mass never changes
public enum Powder {
    /** About 1.2 g to a millilitre, from memory. */
    TABLE_SALT(
            "1.2", "if no scale is at hand, and only table salt: at about 1.2 g/ml, from memory"),
    /** From 0.5 to 1.1 g to a millilitre, from memory. */
    SODA_ASH("", "weigh it: a cup of it varies two-fold, from 0.5 to 1.1 g/ml (from memory)"),
    /** Of which a few grams too many are another shade. */
    DYE("", "weigh it: no two dyes fill a spoon alike (common practice, no source)"),
    /** Any other. */
    OTHER("", "weigh it: a cup of a powder varies with its grain and how it lies");

    private static final Volume MILLILITRE = Volume.ofMillilitres("1");

    private final Optional<Mass> perMillilitre;
    private final String advice;

    Powder(String gramsPerMillilitre, String advice) {
        this.perMillilitre =
                gramsPerMillilitre.isEmpty()
                        ? Optional.empty()
                        : Optional.of(Mass.ofGrams(gramsPerMillilitre));
        this.advice = advice;
    }

    /** How to measure it, in a sentence that goes on after its mass. */
    public String advice() {
        return advice;
    }

    /** About how much room a mass of it takes; nothing of a powder that must be weighed. */
    public Optional<Volume> about(Mass mass) {
        return perMillilitre.map(
                grams -> {
                    Share millilitres = mass.of(grams);
                    return MILLILITRE.times(millilitres);
                });
    }
}
