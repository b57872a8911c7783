package secondbolt.lay.nofit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.lay.placement.Container;
import secondbolt.shape.Box;
import secondbolt.shape.Outline;
import secondbolt.shape.Region;

/**
 * A container in the plane of the search, which holds all containers side by side. All in
 * millimetres; along, a search may use less of it than there is.
 *
 * @param left of its box
 * @param low of its box
 * @param right of its box
 * @param high of its box
 * @param originX where in the plane the container's own measuring across begins
 * @param originY where in the plane the container's own measuring along begins
 * @param outside what shapes must not lie on, in convex parts; one list for each grade of item, the
 *     empty list if the whole box is sound
 */
public record PlaneContainer(
        double left,
        double low,
        double right,
        double high,
        double originX,
        double originY,
        List<List<ConvexPolygon>> outside) {
    /** What is between two containers, and round each as a border. */
    private static final double BESIDE_MM = 100;

    /** So far beyond its inner fit a shape may still be asked for. */
    private static final double BORDER_MM = 1;

    /** Copies the lists. */
    public PlaneContainer {
        outside = outside.stream().map(List::copyOf).toList();
    }

    /** A rectangle without flaws at the origin, for items of one grade. */
    public static PlaneContainer rectangle(double widthMm, double lengthMm) {
        return new PlaneContainer(0, 0, widthMm, lengthMm, 0, 0, List.of(List.of()));
    }

    /**
     * Containers side by side, from the left.
     *
     * @param toleranceMm how much larger a flaw may be made to be simple; zero or more
     */
    public static List<PlaneContainer> sideBySide(List<Container> containers, double toleranceMm) {
        List<PlaneContainer> all = new ArrayList<>();
        double left = 0;
        for (Container container : containers) {
            all.add(at(left, container, toleranceMm));
            left += CoordinateGrid.rounded(container.any().box().widthMm()) + BESIDE_MM;
        }
        return all;
    }

    private static PlaneContainer at(double left, Container container, double toleranceMm) {
        Box box = container.any().box();
        return new PlaneContainer(
                left,
                0,
                left + CoordinateGrid.rounded(box.widthMm()),
                CoordinateGrid.rounded(box.heightMm()),
                left - box.leftMm(),
                -box.topMm(),
                container.grades().stream()
                        .map(sound -> outside(sound, box, left, toleranceMm))
                        .toList());
    }

    private static List<ConvexPolygon> outside(
            Region sound, Box box, double left, double toleranceMm) {
        Region rest = Region.of(box).minus(sound);
        if (rest.isEmpty()) {
            return List.of();
        }
        // A border round the box, so that what is beyond it is as bad as a flaw at its edge.
        Region beyond = Region.of(box.grown(BESIDE_MM)).minus(Region.of(box)).with(rest);
        List<ConvexPolygon> parts = new ArrayList<>();
        for (Outline part : beyond.loosened(toleranceMm).convexParts()) {
            Outline moved = part.map(p -> p.moved(-box.leftMm(), -box.topMm()));
            parts.add(ConvexPolygon.of(CoordinateGrid.rounded(moved), left, 0));
        }
        return parts;
    }

    /** How many grades of item it tells apart. */
    public int grades() {
        return outside.size();
    }

    /** The area of its box. */
    public double areaMm2() {
        return (right - left) * (high - low);
    }

    /** Where a shape of a grade must not be on it; nothing if its whole box is sound. */
    public Optional<NoFitRegion> noFit(OrientedShape shape, int grade) {
        if (outside.get(grade).isEmpty()) {
            return Optional.empty();
        }
        double[] box = {
            left - BORDER_MM,
            low - BORDER_MM,
            right - shape.widthMm() + BORDER_MM,
            high - shape.heightMm() + BORDER_MM
        };
        return Optional.of(NoFitRegion.within(outside.get(grade), shape.bare(), box));
    }
}
