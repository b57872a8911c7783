package secondbolt.lay.search;

import java.util.List;
import secondbolt.shape.Box;
import secondbolt.shape.Region;

/**
 * A cloth to lay on.
 *
 * @param grades where figures may lie, by the number of their grade; at least one, and all beds of
 *     a lay have equally many
 */
public record Bed(List<Region> grades) {
    /** Copies the regions. */
    public Bed {
        grades = List.copyOf(grades);
    }

    /** A bed with one region for each grade. */
    public static Bed of(Region... grades) {
        return new Bed(List.of(grades));
    }

    /** A whole cloth, so wide and so long, good for figures of the first grade. */
    public static Bed whole(double widthMm, double lengthMm) {
        return of(Region.of(new Box(0, 0, widthMm, lengthMm)));
    }

    /** Where any figure may lie at all. */
    public Region any() {
        return grades.size() == 1 ? grades.get(0) : Region.union(grades);
    }
}
