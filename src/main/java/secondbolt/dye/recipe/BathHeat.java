package secondbolt.dye.recipe;

import secondbolt.dye.plan.Heat;
import secondbolt.measure.Tape;

/**
 * How hot a bath is, by one source.
 *
 * @param least at least
 * @param most at most
 * @param words what it is the heat of
 * @param source where it comes from
 */
public record BathHeat(Heat least, Heat most, String words, String source) {
    /** One heat. */
    static BathHeat of(Heat heat, String words, String source) {
        return new BathHeat(heat, heat, words, source);
    }

    /** With the maker's scale first. */
    public String told(Tape tape) {
        return least.equals(most)
                ? most.words(tape)
                : least.words(tape) + " to " + most.words(tape);
    }
}
