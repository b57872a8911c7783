package secondbolt.measure;

import java.util.Optional;

/** How heavy a cloth is by area, kept exactly in grams per square metre. */
public final class ClothWeight implements Comparable<ClothWeight> {
    private final Exact gramsPerSquareMetre;

    ClothWeight(Exact gramsPerSquareMetre) {
        this.gramsPerSquareMetre = gramsPerSquareMetre;
    }

    /** Reads a weight such as {@code 190 g/m2} or {@code 5.6 oz/yd2}; its unit must be written. */
    public static Parsed<ClothWeight> parse(String text) {
        return new MeasureParser(UnitTable.CLOTH_WEIGHT, Optional.empty())
                .parse(text)
                .map(ClothWeight::new);
    }

    static Exact squareMetres(Area area) {
        return area.exactSquareMillimetres().dividedBy(Exact.of(1_000_000));
    }

    /** In grams per square metre, to the nearest double. */
    public double gramsPerSquareMetre() {
        return gramsPerSquareMetre.asDouble();
    }

    Exact exactGramsPerSquareMetre() {
        return gramsPerSquareMetre;
    }

    /** What so much of this cloth weighs. */
    public Mass times(Area area) {
        return new Mass(gramsPerSquareMetre.times(squareMetres(area)));
    }

    /** The weight once the cloth has drawn in to a share of its area. */
    public ClothWeight dividedBy(Share areaLeft) {
        return new ClothWeight(gramsPerSquareMetre.dividedBy(areaLeft.exact()));
    }

    @Override
    public int compareTo(ClothWeight other) {
        return gramsPerSquareMetre.compareTo(other.gramsPerSquareMetre);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ClothWeight weight
                && gramsPerSquareMetre.equals(weight.gramsPerSquareMetre);
    }

    @Override
    public int hashCode() {
        return gramsPerSquareMetre.hashCode();
    }

    /** For messages of our own. */
    @Override
    public String toString() {
        return gramsPerSquareMetre.decimal(6) + " g/m2";
    }
}
