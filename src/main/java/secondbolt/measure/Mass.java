package secondbolt.measure;

import java.util.Optional;

/** A mass, of dry cloth or of dye, kept exactly in grams. */
public final class Mass implements Comparable<Mass> {
    /** No mass at all. */
    public static final Mass ZERO = new Mass(Exact.ZERO);

    /** A kilogram. */
    public static final Mass KILOGRAM = new Mass(Exact.of(1000));

    private final Exact grams;

    Mass(Exact grams) {
        this.grams = grams;
    }

    /** A mass that a rule gives in grams, such as {@code 2.5}. */
    public static Mass ofGrams(String decimal) {
        return new Mass(Exact.of(decimal));
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

    /** This less the other. */
    public Mass minus(Mass other) {
        return new Mass(grams.minus(other.grams));
    }

    /**
     * What share of the other this is.
     *
     * @throws IllegalArgumentException if the other is nothing
     */
    public Share of(Mass other) {
        return new Share(grams.dividedBy(other.grams));
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
