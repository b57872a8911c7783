package secondbolt.lay.search;

import java.util.ArrayList;
import java.util.List;
import secondbolt.shape.Box;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;
import secondbolt.shape.Region;

/**
 * A shape turned, ready for the search. Its place is that of the left low corner of its box.
 *
 * @param turnDegrees by how much it is turned, from the first axis towards the second
 * @param widthMm of its box
 * @param heightMm of its box
 * @param leftMm where that box began once the shape was turned about the origin
 * @param lowMm likewise
 * @param parts it with its share of the gap, in convex parts from the corner of its box
 * @param bare it without the gap, in convex parts from the same corner
 * @param areaMm2 its area
 */
record Orientation(
        int turnDegrees,
        double widthMm,
        double heightMm,
        double leftMm,
        double lowMm,
        List<Convex> parts,
        List<Convex> bare,
        double areaMm2) {
    /**
     * A shape turned.
     *
     * @param outline bare
     * @param gapMm what lies between two shapes, half of it with each
     * @param toleranceMm how much larger it may be made to be simple; zero keeps it as it is
     */
    static Orientation of(Outline outline, int degrees, double gapMm, double toleranceMm) {
        Outline turned = outline.map(point -> turned(point, degrees));
        Outline wide = toleranceMm > 0 ? Region.loosened(turned, gapMm / 2, toleranceMm) : turned;
        Outline bare =
                toleranceMm > 0 && gapMm > 0 ? Region.loosened(turned, 0, toleranceMm) : wide;
        return rounded(degrees, Parts.rounded(wide), Parts.rounded(bare), outline.areaMm2());
    }

    private static Orientation rounded(int degrees, Outline wide, Outline bare, double areaMm2) {
        Box box = bare.box();
        return new Orientation(
                degrees,
                box.widthMm(),
                box.heightMm(),
                box.leftMm(),
                box.topMm(),
                parts(wide, box),
                parts(bare, box),
                Parts.rounded(areaMm2));
    }

    private static List<Convex> parts(Outline outline, Box box) {
        List<Convex> parts = new ArrayList<>();
        for (Outline part : Region.of(outline).convexParts()) {
            parts.add(Convex.of(part, -box.leftMm(), -box.topMm()));
        }
        return List.copyOf(parts);
    }

    /**
     * The same seen in a mirror, its box where it was.
     *
     * @param degrees by how much it counts as turned
     * @param leftMm where its box then begins
     * @param lowMm likewise
     */
    Orientation flipped(Flip flip, int degrees, double leftMm, double lowMm) {
        return new Orientation(
                degrees,
                widthMm,
                heightMm,
                leftMm,
                lowMm,
                flipped(parts, flip),
                flipped(bare, flip),
                areaMm2);
    }

    private List<Convex> flipped(List<Convex> convex, Flip flip) {
        return convex.stream().map(part -> part.flipped(flip, widthMm, heightMm)).toList();
    }

    /** A point turned over, left to right. */
    static Point mirrored(Point point) {
        return new Point(-point.xMm(), point.yMm());
    }

    /** A point turned about the origin. */
    static Point turned(Point point, int degrees) {
        double cos = cos(degrees);
        double sin = cos(degrees - 90);
        return new Point(
                point.xMm() * cos - point.yMm() * sin, point.xMm() * sin + point.yMm() * cos);
    }

    /** Exact at the quarters of a turn, and everywhere the same on every machine. */
    private static double cos(int degrees) {
        int turn = Math.floorMod(degrees, 360);
        return switch (turn) {
            case 0 -> 1;
            case 90, 270 -> 0;
            case 180 -> -1;
            default -> StrictMath.cos(StrictMath.toRadians(turn));
        };
    }
}
