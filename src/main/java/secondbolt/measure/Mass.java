package secondbolt.measure;

import java.util.Optional;

/** A mass, of dry cloth or of dye, kept exactly in grams. */
public final class Mass implements Comparable<Mass> {
    private final Exact grams;

    Mass(Exact grams) {
        this.grams = grams;
    }

    /** Reads a mass such as {@code 650 g} or {@code 1 lb 4 oz}; its unit must be written. */
    public static Parsed<Mass> parse(String text) {
        return new MeasureParser(UnitTable.MASS, Optional.empty()).parse(text).map(Mass::new);
    }

    /** In grams, to the nearest double. */
    public double grams() {
        return grams.asDouble();
    }

    Exact exactGrams() {
        return grams;
    }

    /** The sum of both. */
    public Mass plus(Mass other) {
        return new Mass(grams.plus(other.grams));
    }

    /** A share of this, such as the dye for a depth of colour. */
    public Mass times(Share share) {
        return new Mass(grams.times(share.exact()));
    }

    /**
     * What this cloth weighs by area.
     *
     * @throws IllegalArgumentException if the area is zero
     */
    public ClothWeight over(Area area) {
        return new ClothWeight(grams.dividedBy(ClothWeight.squareMetres(area)));
    }

    /** Whether there is any. */
    public boolean isPositive() {
        return grams.signum() > 0;
    }

    @Override
    public int compareTo(Mass other) {
        return grams.compareTo(other.grams);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Mass mass && grams.equals(mass.grams);
    }

    @Override
    public int hashCode() {
        return grams.hashCode();
    }

    /** For messages of our own. */
    @Override
    public String toString() {
        return grams.decimal(6) + " g";
    }
}
