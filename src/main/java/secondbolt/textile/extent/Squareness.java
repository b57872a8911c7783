package secondbolt.textile.extent;

import java.util.Optional;
import secondbolt.measure.Length;

/**
 * How far from square a cloth with four sides is.
 *
 * @param left the left side
 * @param right the right side
 * @param lean how far the bottom right corner lies to the right of where a square corner would be,
 *     to the left if negative; nothing if no diagonal was measured
 */
public record Squareness(Length left, Length right, Optional<Length> lean) {
    /**
     * By the diagonal from the top left corner to the bottom right one.
     *
     * <p>Derived: with the width w, the right side r and the diagonal d, d² = w² + r² + 2 w s,
     * where s is how far the bottom right corner has moved across.
     */
    static Squareness of(Length across, Length left, Length right, Optional<Length> diagonal) {
        return new Squareness(
                left,
                right,
                diagonal.map(
                        d ->
                                d.times(d)
                                        .minus(across.times(across))
                                        .minus(right.times(right))
                                        .dividedBy(across.times(2))));
    }

    /** How much longer one side is than the other. */
    public Length slant() {
        return left.minus(right).size();
    }
}
