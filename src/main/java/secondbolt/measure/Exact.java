package secondbolt.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;

/**
 * An exact fraction of two whole numbers, in lowest terms with a positive denominator.
 *
 * <p>It keeps what the maker wrote exactly, so that rounding happens once, on paper, and a chain of
 * even gaps never gathers errors.
 */
record Exact(BigInteger over, BigInteger under) implements Comparable<Exact> {
    static final Exact ZERO = of(0);

    /** Nanometre steps: finer than any printer, coarser than the last bits of a double. */
    private static final int DECIMALS_KEPT_OF_A_DOUBLE = 6;

    /** Whole numbers of so many bits are doubles to the last bit. */
    private static final int BITS_OF_A_DOUBLE = 53;

    Exact {
        if (under.signum() == 0) {
            throw new IllegalArgumentException("under must not be zero");
        }
        BigInteger divisor = over.gcd(under).max(BigInteger.ONE);
        if (under.signum() < 0) {
            divisor = divisor.negate();
        }
        over = over.divide(divisor);
        under = under.divide(divisor);
    }

    static Exact of(long whole) {
        return new Exact(BigInteger.valueOf(whole), BigInteger.ONE);
    }

    static Exact of(long over, long under) {
        return new Exact(BigInteger.valueOf(over), BigInteger.valueOf(under));
    }

    /** Reads a plain decimal such as {@code 28.349523125}. */
    static Exact of(String decimal) {
        return of(new BigDecimal(decimal));
    }

    static Exact of(BigDecimal decimal) {
        return decimal.scale() <= 0
                ? new Exact(decimal.toBigIntegerExact(), BigInteger.ONE)
                : new Exact(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()));
    }

    /** Takes a computed number, rounded to six decimals. */
    static Exact ofComputed(double number) {
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException("number must be finite, was " + number);
        }
        return of(
                BigDecimal.valueOf(number)
                        .setScale(DECIMALS_KEPT_OF_A_DOUBLE, RoundingMode.HALF_EVEN));
    }

    Exact plus(Exact other) {
        return new Exact(
                over.multiply(other.under).add(other.over.multiply(under)),
                under.multiply(other.under));
    }

    Exact minus(Exact other) {
        return plus(other.negated());
    }

    Exact negated() {
        return new Exact(over.negate(), under);
    }

    Exact times(Exact other) {
        return new Exact(over.multiply(other.over), under.multiply(other.under));
    }

    Exact dividedBy(Exact other) {
        return new Exact(over.multiply(other.under), under.multiply(other.over));
    }

    Exact size() {
        return signum() < 0 ? negated() : this;
    }

    Exact orLarger(Exact other) {
        return compareTo(other) < 0 ? other : this;
    }

    int signum() {
        return over.signum();
    }

    /** The number of whole steps nearest to this, halves away from zero. */
    BigInteger steps(Exact step, RoundingMode mode) {
        Exact count = dividedBy(step);
        return new BigDecimal(count.over)
                .divide(new BigDecimal(count.under), 0, mode)
                .toBigIntegerExact();
    }

    /** This number rounded to whole steps. */
    Exact roundedTo(Exact step, RoundingMode mode) {
        return step.times(new Exact(steps(step, mode), BigInteger.ONE));
    }

    double asDouble() {
        if (under.equals(BigInteger.ONE) && over.bitLength() <= BITS_OF_A_DOUBLE) {
            return over.doubleValue();
        }
        return new BigDecimal(over)
                .divide(new BigDecimal(under), 18, RoundingMode.HALF_EVEN)
                .doubleValue();
    }

    /** A plain decimal with at most so many digits after the point and no trailing zeros. */
    String decimal(int digits) {
        BigDecimal rounded =
                new BigDecimal(over).divide(new BigDecimal(under), digits, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    @Override
    public int compareTo(Exact other) {
        return over.multiply(other.under).compareTo(other.over.multiply(under));
    }
}
