package secondbolt.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Numbers are written alike everywhere. */
class DecimalsTest {
    @Test
    void writesThousandthsWithoutTrailingZeros() {
        assertEquals("215.9", Decimals.text(215.9));
        assertEquals("0.001", Decimals.text(0.0012));
        assertEquals("-0.5", Decimals.text(-0.5));
        assertEquals("12345678", Decimals.text(12_345_678));
    }

    @Test
    void writesNoMinusBeforeZero() {
        assertEquals("0", Decimals.text(-0.0));
        assertEquals("0", Decimals.text(-0.0004));
    }

    @Test
    void refusesWhatIsNoNumber() {
        assertThrows(IllegalArgumentException.class, () -> Decimals.text(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Decimals.text(Double.POSITIVE_INFINITY));
    }

    /** Against the decimal arithmetic of the JDK. */
    @Test
    void agreesWithDecimalArithmetic() {
        SplittableRandom random = new SplittableRandom(17);
        for (int i = 0; i < 10_000; i++) {
            double mm = random.nextDouble(-3000, 3000);
            BigDecimal rounded = new BigDecimal(mm).setScale(3, RoundingMode.HALF_UP);
            assertEquals(0, rounded.compareTo(new BigDecimal(Decimals.text(mm))), () -> "" + mm);
        }
    }
}
