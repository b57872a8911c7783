package secondbolt.measure;

import java.util.Optional;

/**
 * A volume of liquid, kept exactly in millilitres. Spoons, cups and gallons are US measures, which
 * the sheet says.
 */
public final class Volume implements Comparable<Volume> {
    private final Exact millilitres;

    Volume(Exact millilitres) {
        this.millilitres = millilitres;
    }

    /** Reads a volume such as {@code 12 l} or {@code 2 tbsp}; its unit must be written. */
    public static Parsed<Volume> parse(String text) {
        return new MeasureParser(UnitTable.VOLUME, Optional.empty()).parse(text).map(Volume::new);
    }

    /** In millilitres, to the nearest double. */
    public double millilitres() {
        return millilitres.asDouble();
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
