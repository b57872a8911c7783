package secondbolt.lay.placement;

import java.util.List;
import java.util.OptionalInt;

/**
 * One orientation an item is allowed, with the positions it is allowed in it.
 *
 * @param orientation how it is turned, and which side is up
 * @param across the allowed positions of its origin across
 * @param along the allowed positions of its origin along
 * @param container the number of the only container it is allowed on in this orientation, from 0;
 *     nothing if on any
 */
public record PlacementRule(
        Orientation orientation,
        AllowedPositions across,
        AllowedPositions along,
        OptionalInt container) {
    /** Turned by so many degrees, the side up that it is drawn with, at any position. */
    public static PlacementRule turned(int degrees) {
        return new PlacementRule(
                Orientation.turned(degrees),
                AllowedPositions.ANY,
                AllowedPositions.ANY,
                OptionalInt.empty());
    }

    /** One rule for each of these turns in degrees, at any position. */
    public static List<PlacementRule> turned(List<Integer> degrees) {
        return degrees.stream().map(PlacementRule::turned).toList();
    }

    /** The same orientation at these positions only. */
    public PlacementRule at(AllowedPositions newAcross, AllowedPositions newAlong) {
        return new PlacementRule(orientation, newAcross, newAlong, container);
    }

    /** The same positions with the other side up. */
    public PlacementRule mirrored() {
        return new PlacementRule(orientation.mirrored(), across, along, container);
    }

    /** The same on one container only. */
    public PlacementRule onContainer(int number) {
        return new PlacementRule(orientation, across, along, OptionalInt.of(number));
    }

    /** Whether it allows a container. */
    public boolean allows(int number) {
        return container.isEmpty() || container.getAsInt() == number;
    }

    /**
     * Whether it allows a placement.
     *
     * @param toleranceMm how far off an allowed position it may be, zero or more
     */
    public boolean allows(Placement placement, double toleranceMm) {
        return allows(placement.container())
                && orientation.equals(placement.orientation())
                && across.holds(placement.acrossMm(), toleranceMm)
                && along.holds(placement.alongMm(), toleranceMm);
    }
}
