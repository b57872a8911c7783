package secondbolt.measure;

import java.math.RoundingMode;
import java.util.Optional;

/** A share of a whole, kept exactly: a fibre's part of a blend, or the length left after a wash. */
public final class Share implements Comparable<Share> {
    /** The whole. */
    public static final Share WHOLE = new Share(Exact.of(1));

    private final Exact share;

    Share(Exact share) {
        this.share = share;
    }

    /** So many hundredths. */
    public static Share ofPercent(long percent) {
        return new Share(Exact.of(percent, 100));
    }

    /**
     * One number of another: {@code ofRatio(1, 2)} is the half, {@code ofRatio(20, 1)} twenty
     * times.
     */
    public static Share ofRatio(long over, long under) {
        return new Share(Exact.of(over, under));
    }

    /** As many of the whole as a rule says, such as {@code 0.0156}, or {@code 2.5} for more. */
    public static Share ofDecimal(String decimal) {
        return new Share(Exact.of(decimal));
    }

    /**
     * What share of a length is left.
     *
     * @throws IllegalArgumentException if {@code before} is zero
     */
    public static Share left(Length now, Length before) {
        return new Share(now.exactMillimetres().dividedBy(before.exactMillimetres()));
    }

    /** Reads a share such as {@code 65 %}; the sign must be written. */
    public static Parsed<Share> parse(String text) {
        return new MeasureParser(UnitTable.SHARE, Optional.empty()).parse(text).map(Share::new);
    }

    Exact exact() {
        return share;
    }

    /** As a fraction of one, to the nearest double. */
    public double fraction() {
        return share.asDouble();
    }

    /** The share of a share. */
    public Share times(Share other) {
        return new Share(share.times(other.share));
    }

    /**
     * How often the other goes into this.
     *
     * @throws IllegalArgumentException if the other is nothing
     */
    public Share dividedBy(Share other) {
        return new Share(share.dividedBy(other.share));
    }

    /** The least whole number that is no smaller, as of packets or spools. */
    public int roundedUp() {
        return share.steps(Exact.of(1), RoundingMode.CEILING).intValueExact();
    }

    /** The sum of both. */
    public Share plus(Share other) {
        return new Share(share.plus(other.share));
    }

    /** What is missing from the whole; negative if this is more than the whole. */
    public Share lost() {
        return new Share(Exact.of(1).minus(share));
    }

    /** In hundredths with at most so many decimals, such as {@code 6.67 %}. */
    public String percent(int decimals) {
        return share.times(Exact.of(100)).decimal(decimals) + " %";
    }

    @Override
    public int compareTo(Share other) {
        return share.compareTo(other.share);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Share that && share.equals(that.share);
    }

    @Override
    public int hashCode() {
        return share.hashCode();
    }

    /** For messages of our own. */
    @Override
    public String toString() {
        return percent(6);
    }
}
