package secondbolt.measure;

import java.util.Optional;

/**
 * A volume of liquid, kept exactly in millilitres. Spoons, cups and gallons are US measures, which
 * the sheet says.
 */
public final class Volume implements Comparable<Volume> {
    /** A litre. */
    public static final Volume LITRE = new Volume(Exact.of(1000));

    private final Exact millilitres;

    Volume(Exact millilitres) {
        this.millilitres = millilitres;
    }

    /** A volume that a rule gives in millilitres, such as {@code 236.5882365}. */
    public static Volume ofMillilitres(String decimal) {
        return new Volume(Exact.of(decimal));
    }

    /** Reads a volume such as {@code 12 l} or {@code 2 tbsp}; its unit must be written. */
    public static Parsed<Volume> parse(String text) {
        return new MeasureParser(UnitTable.VOLUME, Optional.empty()).parse(text).map(Volume::new);
    }

    /** In millilitres, to the nearest double. */
    public double millilitres() {
        return millilitres.asDouble();
    }

    /** The sum of both. */
    public Volume plus(Volume other) {
        return new Volume(millilitres.plus(other.millilitres));
    }

    /** A share of this; more than the whole for several of it. */
    public Volume times(Share share) {
        return new Volume(millilitres.times(share.exact()));
    }

    /**
     * What share of the other this is.
     *
     * @throws IllegalArgumentException if the other is nothing
     */
    public Share of(Volume other) {
        return new Share(millilitres.dividedBy(other.millilitres));
    }

    Exact exactMillilitres() {
        return millilitres;
    }

    @Override
    public int compareTo(Volume other) {
        return millilitres.compareTo(other.millilitres);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Volume volume && millilitres.equals(volume.millilitres);
    }

    @Override
    public int hashCode() {
        return millilitres.hashCode();
    }

    /** For messages of our own. */
    @Override
    public String toString() {
        return millilitres.decimal(6) + " ml";
    }
}
