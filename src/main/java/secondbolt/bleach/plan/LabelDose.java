package secondbolt.bleach.plan;

import secondbolt.measure.Share;
import secondbolt.measure.Volume;

/**
 * What the label of her own bleach says; it comes before everything else.
 *
 * @param dose how much of the product, as a liquid
 * @param in how much water it goes into
 * @param minutes how long the cloth stays in at most
 */
public record LabelDose(Volume dose, Volume in, int minutes) {
    /** For so much water. */
    public Volume forBath(Volume water) {
        return dose.times(water.of(in));
    }

    /** How much of the water it is. */
    public Share strength() {
        return dose.of(in);
    }
}
