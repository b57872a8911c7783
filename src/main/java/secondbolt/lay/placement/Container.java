package secondbolt.lay.placement;

import java.util.List;
import secondbolt.shape.Box;
import secondbolt.shape.Region;

/**
 * What items are placed on, such as a cloth.
 *
 * @param grades where items may lie, by the number of their grade; at least one, and all containers
 *     of a lay have equally many
 */
public record Container(List<Region> grades) {
    /** Copies the regions. */
    public Container {
        grades = List.copyOf(grades);
    }

    /** A container with one region for each grade. */
    public static Container of(Region... grades) {
        return new Container(List.of(grades));
    }

    /** A rectangle without flaws, for items of grade 0. */
    public static Container whole(double widthMm, double lengthMm) {
        return of(Region.of(new Box(0, 0, widthMm, lengthMm)));
    }

    /** Where an item of any grade may lie. */
    public Region any() {
        return grades.size() == 1 ? grades.get(0) : Region.union(grades);
    }
}
