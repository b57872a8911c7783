package secondbolt.measure;

import java.math.RoundingMode;
import java.util.Optional;

/**
 * A length, kept exactly as written or computed.
 *
 * <p>Sums, differences and shares stay exact; rounding to the tape's marks happens once, when
 * {@link Tape} prints it. A length may be negative where it is a position or a difference.
 */
public final class Length implements Comparable<Length> {
    /** No length at all. */
    public static final Length ZERO = new Length(Exact.ZERO);

    /** As many as a file may have behind the point. */
    private static final int WRITTEN_DECIMALS = 9;

    private final Exact millimetres;

    Length(Exact millimetres) {
        this.millimetres = millimetres;
    }

    /** A length of whole millimetres. */
    public static Length ofMillimetres(long millimetres) {
        return new Length(Exact.of(millimetres));
    }

    /**
     * A length that geometry computed, rounded to a millionth of a millimetre.
     *
     * @throws IllegalArgumentException if the number is not finite
     */
    public static Length ofComputedMillimetres(double millimetres) {
        return new Length(Exact.ofComputed(millimetres));
    }

    /** A length of so many fractions of an inch: {@code ofInches(5, 8)} is five eighths. */
    public static Length ofInches(long over, long under) {
        return new Length(UnitTable.MM_PER_INCH.times(Exact.of(over, under)));
    }

    /**
     * Reads a length in any unit of the trade.
     *
     * @param text as the maker wrote it
     * @param bare the tape a bare number is read on
     */
    public static Parsed<Length> parse(String text, Tape bare) {
        Optional<Unit> unit = Optional.of(UnitTable.LENGTH.get(bare.symbol()));
        return new MeasureParser(UnitTable.LENGTH, unit).parse(text).map(Length::new);
    }

    /** In millimetres, to the nearest double. */
    public double millimetres() {
        return millimetres.asDouble();
    }

    Exact exactMillimetres() {
        return millimetres;
    }

    /** The sum of both. */
    public Length plus(Length other) {
        return new Length(millimetres.plus(other.millimetres));
    }

    /** This less the other; negative if the other is longer. */
    public Length minus(Length other) {
        return new Length(millimetres.minus(other.millimetres));
    }

    /** So many times this. */
    public Length times(long count) {
        return new Length(millimetres.times(Exact.of(count)));
    }

    /** A share of this. */
    public Length times(Share share) {
        return new Length(millimetres.times(share.exact()));
    }

    /**
     * This in so many equal parts, exactly.
     *
     * @throws IllegalArgumentException if {@code parts} is zero
     */
    public Length dividedBy(long parts) {
        return new Length(millimetres.dividedBy(Exact.of(parts)));
    }

    /**
     * This divided by a share: what to cut so that the share of it is this.
     *
     * @throws IllegalArgumentException if the share is nothing
     */
    public Length dividedBy(Share share) {
        return new Length(millimetres.dividedBy(share.exact()));
    }

    /** The rectangle with these sides. */
    public Area times(Length other) {
        return new Area(millimetres.times(other.millimetres));
    }

    /** Whether it is below zero. */
    public boolean isNegative() {
        return millimetres.signum() < 0;
    }

    /** Whether it is above zero. */
    public boolean isPositive() {
        return millimetres.signum() > 0;
    }

    /** Whether this is shorter than the other. */
    public boolean isShorterThan(Length other) {
        return compareTo(other) < 0;
    }

    /** Whether this is longer than the other. */
    public boolean isLongerThan(Length other) {
        return compareTo(other) > 0;
    }

    /** The shorter of both. */
    public Length orShorter(Length other) {
        return isShorterThan(other) ? this : other;
    }

    /** The longer of both. */
    public Length orLonger(Length other) {
        return isLongerThan(other) ? this : other;
    }

    /** Without its sign. */
    public Length size() {
        return isNegative() ? new Length(millimetres.negated()) : this;
    }

    /** Rounded to whole steps, halves away from zero. */
    public Length roundedTo(Length step) {
        return new Length(millimetres.roundedTo(step.millimetres, RoundingMode.HALF_UP));
    }

    /** Rounded up to whole steps, as shops cut. */
    public Length roundedUpTo(Length step) {
        return new Length(millimetres.roundedTo(step.millimetres, RoundingMode.CEILING));
    }

    /** Rounded down to whole steps, as is safe for what one has. */
    public Length roundedDownTo(Length step) {
        return new Length(millimetres.roundedTo(step.millimetres, RoundingMode.FLOOR));
    }

    @Override
    public int compareTo(Length other) {
        return millimetres.compareTo(other.millimetres);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Length length && millimetres.equals(length.millimetres);
    }

    @Override
    public int hashCode() {
        return millimetres.hashCode();
    }

    /**
     * With its unit, as a file takes it and gives it back exactly: a decimal of millimetres where
     * there is one, else a fraction of an inch or of a millimetre.
     */
    public String written() {
        String decimal = millimetres.decimal(WRITTEN_DECIMALS);
        if (Exact.of(decimal).equals(millimetres)) {
            return decimal + " mm";
        }
        Exact inches = millimetres.dividedBy(ofInches(1, 1).millimetres);
        boolean isShort = inches.under().compareTo(millimetres.under()) < 0;
        return isShort ? fraction(inches) + " in" : fraction(millimetres) + " mm";
    }

    private static String fraction(Exact number) {
        return number.over() + "/" + number.under();
    }

    /** For messages of our own: exact millimetres to six decimals. */
    @Override
    public String toString() {
        return millimetres.decimal(6) + " mm";
    }
}
