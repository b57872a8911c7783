package secondbolt.supply.plan;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Set;

/**
 * The money that prices are in: a code of ISO 4217, or any short word or sign. It is never turned
 * into another.
 *
 * @param word as written
 */
public record Currency(String word) {
    /** Source: ISO 4217, list one, minor unit 0; from memory. */
    private static final Set<String> WHOLE =
            Set.of(
                    "BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW", "PYG", "RWF", "UGX",
                    "VND", "VUV", "XAF", "XOF", "XPF");

    /** Source: the same, minor unit 3. */
    private static final Set<String> THOUSANDTHS =
            Set.of("BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND");

    /** Money of which nothing is told. */
    public static final Currency UNTOLD = new Currency("");

    /** How many decimals a sum of it has; 2 unless its code is known to have others. */
    public int decimals() {
        return WHOLE.contains(word) ? 0 : THOUSANDTHS.contains(word) ? 3 : 2;
    }

    /** A sum, rounded half up to what can be paid. */
    public BigDecimal rounded(BigDecimal sum) {
        return sum.setScale(decimals(), RoundingMode.HALF_UP);
    }

    /** A part of a sum that several share, rounded the same way. */
    public BigDecimal shared(BigDecimal sum, int by) {
        return sum.divide(BigDecimal.valueOf(by), decimals(), RoundingMode.HALF_UP);
    }

    /** A sum in words: {@code 2.80 EUR}. */
    public String print(BigDecimal sum) {
        return (rounded(sum).toPlainString() + " " + word).strip();
    }

    /** A price as it is written, with at least the usual decimals: 0.015 stays. */
    public String printPrice(BigDecimal price) {
        BigDecimal plain = price.stripTrailingZeros();
        return (plain.setScale(Math.max(decimals(), plain.scale())).toPlainString() + " " + word)
                .strip();
    }
}
