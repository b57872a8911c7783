package secondbolt.trim.strip;

import secondbolt.measure.Length;

/**
 * Strips that are wanted, to be joined into one.
 *
 * @param width of the strip as cut, more than zero
 * @param need how long the joined strip must be
 * @param shortest strips shorter than this are not worth a join
 */
public record StripWish(Length width, Length need, Length shortest) {
    /** Checks the width. */
    public StripWish {
        if (!width.isPositive()) {
            throw new IllegalArgumentException("width must be more than zero: " + width);
        }
    }
}
