package secondbolt.measure.kitchen;

import java.util.Optional;
import secondbolt.measure.Share;
import secondbolt.measure.Tape;
import secondbolt.measure.Volume;

/**
 * Whose cups and spoons. They differ by a twentieth and more, so that a recipe must say which.
 *
 * <p>Besides these two there are rounded ones: cooking measurement equivalencies of the National
 * Institute of Standards and Technology take 240 ml for a cup, its Special Publication 430 takes
 * 237 ml, and the US food label (21 CFR 101.9) 240 ml.
 */
@SuppressWarnings("ImmutableEnumChecker") // a volume never changes
public enum Kitchen {
    /**
     * Of the US gallon of 231 cubic inches: a cup is a sixteenth of it, 236.5882365 ml.
     *
     * <p>Source: article on kitchen units, UK Metric Association, 2023; tablespoon and fluid ounce
     * derived, a sixteenth and an eighth of the cup.
     */
    CUSTOMARY(
            "236.5882365",
            "14.78676478125",
            "4.92892159375",
            "29.5735295625",
            "US customary: cup 236.6 ml, tablespoon 14.8 ml, teaspoon 4.9 ml"),
    /** Of the litre: a cup is a quarter of it. Source: the same article. */
    METRIC(
            "250",
            "15",
            "5",
            "",
            "metric: cup 250 ml, tablespoon 15 ml (20 ml in Australia), teaspoon 5 ml");

    private final Volume cup;
    private final Volume tablespoon;
    private final Volume teaspoon;
    private final Optional<Volume> fluidOunce;
    private final String said;

    Kitchen(String cup, String tablespoon, String teaspoon, String fluidOunce, String said) {
        this.cup = Volume.ofMillilitres(cup);
        this.tablespoon = Volume.ofMillilitres(tablespoon);
        this.teaspoon = Volume.ofMillilitres(teaspoon);
        this.fluidOunce =
                fluidOunce.isEmpty()
                        ? Optional.empty()
                        : Optional.of(Volume.ofMillilitres(fluidOunce));
        this.said = said;
    }

    /** The one that goes with a tape. */
    public static Kitchen of(Tape tape) {
        return tape == Tape.INCH ? CUSTOMARY : METRIC;
    }

    /** A cup. */
    public Volume cup() {
        return cup;
    }

    /** A tablespoon. */
    public Volume tablespoon() {
        return tablespoon;
    }

    /** A teaspoon. */
    public Volume teaspoon() {
        return teaspoon;
    }

    /** Which cup and spoons these are, to be told once on each sheet that names them. */
    public String said() {
        return said;
    }

    /**
     * A volume as one measures it out, in words such as {@code 1¾ cups, 1 tbsp}: below a teaspoon
     * to the nearest eighth of one, below a quarter cup to a quarter teaspoon, below two cups to a
     * teaspoon, below sixteen to a tablespoon, beyond to a quarter cup.
     *
     * @param volume more than nothing
     */
    public String print(Volume volume) {
        return KitchenMeasure.of(volume, this).words();
    }

    /** A volume in fluid ounces to the nearest half; metric kitchens have none. */
    public Optional<String> fluidOunces(Volume volume) {
        return fluidOunce.map(
                ounce ->
                        Parts.print(Parts.nearest(volume.of(ounce), Share.ofRatio(1, 2)), 2)
                                + " fl oz");
    }
}
