package secondbolt.cloth.yields;

import secondbolt.measure.Area;
import secondbolt.shape.Region;

/**
 * A part of a cloth and how much that is.
 *
 * @param region where it lies, in millimetres
 * @param area what it covers
 */
public record Surface(Region region, Area area) {
    static Surface of(Region region) {
        return new Surface(region, Area.ofComputedSquareMillimetres(region.areaMm2()));
    }
}
