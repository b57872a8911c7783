package secondbolt.lay.search;

import secondbolt.shape.Box;
import secondbolt.shape.Region;

/**
 * A cloth to lay on.
 *
 * @param sound where any figure may lie
 * @param soundForHidden where figures may lie that are hidden in wear
 */
public record Bed(Region sound, Region soundForHidden) {
    /** A whole cloth, so wide and so long. */
    public static Bed whole(double widthMm, double lengthMm) {
        Region whole = Region.of(new Box(0, 0, widthMm, lengthMm));
        return new Bed(whole, whole);
    }
}
