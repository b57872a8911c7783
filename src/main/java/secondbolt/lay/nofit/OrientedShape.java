package secondbolt.lay.nofit;

import java.util.ArrayList;
import java.util.List;
import secondbolt.lay.placement.Orientation;
import secondbolt.shape.Box;
import secondbolt.shape.Outline;
import secondbolt.shape.Region;

/**
 * A shape in one orientation, ready for the search. Its position is that of the left low corner of
 * its box.
 *
 * @param widthMm of its box
 * @param heightMm of its box
 * @param leftMm where that box begins across, from the origin the shape was turned about
 * @param lowMm where it begins along
 * @param parts the shape with its half of the gap, in convex parts from the corner of its box
 * @param bare the shape without the gap, in convex parts from the same corner
 * @param areaMm2 its area without the gap
 */
public record OrientedShape(
        double widthMm,
        double heightMm,
        double leftMm,
        double lowMm,
        List<ConvexPolygon> parts,
        List<ConvexPolygon> bare,
        double areaMm2) {
    /** Copies the lists. */
    public OrientedShape {
        parts = List.copyOf(parts);
        bare = List.copyOf(bare);
    }

    /**
     * A shape in one orientation.
     *
     * @param outline without the gap
     * @param gapMm what is left between two shapes, half of it with each; zero or more
     * @param toleranceMm how much larger it may be made along its curves to be simple; zero keeps
     *     it as it is
     */
    static OrientedShape of(
            Outline outline, Orientation orientation, double gapMm, double toleranceMm) {
        Outline turned = orientation.applyTo(outline);
        Outline wide = toleranceMm > 0 ? Region.loosened(turned, gapMm / 2, toleranceMm) : turned;
        Outline bare =
                toleranceMm > 0 && gapMm > 0 ? Region.loosened(turned, 0, toleranceMm) : wide;
        return rounded(
                CoordinateGrid.rounded(wide), CoordinateGrid.rounded(bare), outline.areaMm2());
    }

    private static OrientedShape rounded(Outline wide, Outline bare, double areaMm2) {
        Box box = bare.box();
        return new OrientedShape(
                box.widthMm(),
                box.heightMm(),
                box.leftMm(),
                box.topMm(),
                parts(wide, box),
                parts(bare, box),
                CoordinateGrid.rounded(areaMm2));
    }

    private static List<ConvexPolygon> parts(Outline outline, Box box) {
        List<ConvexPolygon> parts = new ArrayList<>();
        for (Outline part : Region.of(outline).convexParts()) {
            parts.add(ConvexPolygon.of(part, -box.leftMm(), -box.topMm()));
        }
        return parts;
    }

    /**
     * The same reflected, its box where it was.
     *
     * @param newLeftMm where its box then begins across, from the origin
     * @param newLowMm where it then begins along
     */
    OrientedShape reflected(Reflection reflection, double newLeftMm, double newLowMm) {
        return new OrientedShape(
                widthMm,
                heightMm,
                newLeftMm,
                newLowMm,
                reflected(parts, reflection),
                reflected(bare, reflection),
                areaMm2);
    }

    private List<ConvexPolygon> reflected(List<ConvexPolygon> convex, Reflection reflection) {
        return convex.stream().map(part -> part.reflected(reflection, widthMm, heightMm)).toList();
    }
}
