package secondbolt.measure;

import java.util.Optional;

/** An area of cloth, kept exactly in square millimetres. */
public final class Area implements Comparable<Area> {
    /** No area at all. */
    public static final Area ZERO = new Area(Exact.ZERO);

    private final Exact squareMillimetres;

    Area(Exact squareMillimetres) {
        this.squareMillimetres = squareMillimetres;
    }

    /**
     * An area that geometry computed.
     *
     * @throws IllegalArgumentException if the number is not finite
     */
    public static Area ofComputedSquareMillimetres(double squareMillimetres) {
        return new Area(Exact.ofComputed(squareMillimetres));
    }

    /** Reads an area such as {@code 1.5 m2}; its unit must be written. */
    public static Parsed<Area> parse(String text) {
        return new MeasureParser(UnitTable.AREA, Optional.empty()).parse(text).map(Area::new);
    }

    /** In square millimetres, to the nearest double. */
    public double squareMillimetres() {
        return squareMillimetres.asDouble();
    }

    Exact exactSquareMillimetres() {
        return squareMillimetres;
    }

    /** The sum of both. */
    public Area plus(Area other) {
        return new Area(squareMillimetres.plus(other.squareMillimetres));
    }

    /** This less the other. */
    public Area minus(Area other) {
        return new Area(squareMillimetres.minus(other.squareMillimetres));
    }

    /** A share of this. */
    public Area times(Share share) {
        return new Area(squareMillimetres.times(share.exact()));
    }

    /**
     * How long a strip of this width has this area.
     *
     * @throws IllegalArgumentException if the width is zero
     */
    public Length dividedBy(Length width) {
        return new Length(squareMillimetres.dividedBy(width.exactMillimetres()));
    }

    /** What share of the other this is. */
    public Share of(Area other) {
        return new Share(squareMillimetres.dividedBy(other.squareMillimetres));
    }

    /** Whether there is any. */
    public boolean isPositive() {
        return squareMillimetres.signum() > 0;
    }

    @Override
    public int compareTo(Area other) {
        return squareMillimetres.compareTo(other.squareMillimetres);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Area area && squareMillimetres.equals(area.squareMillimetres);
    }

    @Override
    public int hashCode() {
        return squareMillimetres.hashCode();
    }

    /** For messages of our own. */
    @Override
    public String toString() {
        return squareMillimetres.decimal(6) + " mm2";
    }
}
