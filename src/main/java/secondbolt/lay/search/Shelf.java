package secondbolt.lay.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import secondbolt.shape.Box;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;

/**
 * What is worked out for two shapes once, and serves in every search they are in: on the cloth
 * there is, and on every width of the bolt. A shape and its mirror images share what is worked out.
 */
public final class Shelf {
    /** Small beside the least that a shape is taken for larger than it is. */
    private static final double SAME_MM = 0.004;

    private static final double EXACT_MM = 1e-9;

    private final double gapMm;
    private final double toleranceMm;
    private final List<Known> known = new ArrayList<>();
    private final Map<Kind, Lying> lying = new HashMap<>();
    private final Map<Pair, Field> fields = new ConcurrentHashMap<>();

    /**
     * An empty one.
     *
     * @param gapMm what is left between two figures, zero or more
     * @param toleranceMm how much larger a figure may be taken to be than it is, small beside the
     *     gap; zero keeps them as they are
     */
    public Shelf(double gapMm, double toleranceMm) {
        this.gapMm = gapMm;
        this.toleranceMm = toleranceMm;
    }

    private record Kind(Outline outline, int turn) {}

    private record Pair(int first, int second, Flip flip) {}

    /**
     * A shape as it lies.
     *
     * @param number of the shape that it is but for a flip
     * @param flip how that one is flipped
     * @param lies turned and flipped
     */
    record Lying(int number, Flip flip, Orientation lies) {}

    double toleranceMm() {
        return toleranceMm;
    }

    /** How far beyond its bare box a shape may reach with its share of the gap. */
    double reachMm() {
        return 2 * gapMm + 4 * toleranceMm;
    }

    /** A figure's outline as it lies one way. */
    synchronized Lying lying(Outline outline, Way way) {
        Outline up = way.isMirrored() ? outline.map(Orientation::mirrored) : outline;
        Kind kind = new Kind(up, way.turnDegrees());
        Lying found = lying.get(kind);
        if (found == null) {
            found = find(up, way.turnDegrees());
            lying.put(kind, found);
        }
        return found;
    }

    private Lying find(Outline outline, int degrees) {
        Outline turned = outline.map(point -> Orientation.turned(point, degrees));
        List<Point> corners = Known.atOrigin(turned);
        for (int i = 0; i < known.size(); i++) {
            Optional<Flip> flip =
                    known.get(i).flipOf(corners, toleranceMm > 0 ? SAME_MM : EXACT_MM);
            if (flip.isPresent()) {
                return new Lying(i, flip.get(), flipped(known.get(i), flip.get(), turned, degrees));
            }
        }
        Orientation lies = Orientation.of(outline, degrees, gapMm, toleranceMm);
        Box box = turned.box();
        known.add(
                new Known(corners, lies, box.leftMm() - lies.leftMm(), box.topMm() - lies.lowMm()));
        return new Lying(known.size() - 1, Flip.NONE, lies);
    }

    /** It may be taken to be larger than it is, on every side as that one is. */
    private static Orientation flipped(Known known, Flip flip, Outline turned, int degrees) {
        Orientation lies = known.lies();
        Box own = turned.box();
        Box first = new Outline(known.outline()).box();
        double over = lies.widthMm() - first.widthMm();
        double above = lies.heightMm() - first.heightMm();
        double left = known.overLeftMm();
        double low = known.overLowMm();
        return lies.flipped(
                flip,
                degrees,
                Parts.rounded(own.leftMm() - (flip.across() ? over - left : left)),
                Parts.rounded(own.topMm() - (flip.along() ? above - low : low)));
    }

    /** Where the second must not be put, beside the first. */
    Beside between(Lying first, Lying second) {
        Flip flip = first.flip().with(second.flip());
        Field field =
                fields.computeIfAbsent(
                        new Pair(first.number(), second.number(), flip), this::field);
        return new Beside(field, first.flip(), first.lies(), second.lies());
    }

    private Field field(Pair pair) {
        Orientation first = known.get(pair.first()).lies();
        Orientation second = known.get(pair.second()).lies();
        Orientation flipped = second.flipped(pair.flip(), 0, 0, 0);
        return Field.of(first.parts(), flipped.parts());
    }
}
