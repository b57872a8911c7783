package secondbolt.sewing.thread;

import java.math.BigDecimal;
import java.math.RoundingMode;
import secondbolt.measure.Share;

/**
 * How many times its seam's length a stitch takes of thread.
 *
 * @param value all its threads together
 * @param source where it comes from
 */
public record ThreadRatio(Share value, String source) {
    /** As a page prints it, to two decimals. */
    public String words() {
        BigDecimal rounded = BigDecimal.valueOf(value.fraction()).setScale(2, RoundingMode.HALF_UP);
        return rounded.stripTrailingZeros().toPlainString();
    }
}
