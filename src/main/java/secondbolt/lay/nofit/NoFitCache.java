package secondbolt.lay.nofit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import secondbolt.lay.placement.Orientation;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;

/**
 * A cache of oriented shapes and of the no-fit regions of every two of them. Each is made once and
 * serves in every search they are in: on the cloth there is, and on every width of the bolt. A
 * shape and its mirror images share one reference shape, and so their no-fit regions.
 */
public final class NoFitCache {
    /** Two shapes that differ by less are one: nobody could lay them otherwise. */
    private static final double SAME_MM = 1e-6;

    private final double gapMm;
    private final double toleranceMm;
    private final List<ReferenceShape> references = new ArrayList<>();
    private final Map<ImageKey, ShapeImage> images = new HashMap<>();
    private final Map<RegionKey, NoFitRegion> regions = new ConcurrentHashMap<>();

    /**
     * An empty cache.
     *
     * @param gapMm what is left between two items, zero or more
     * @param toleranceMm how much larger an item may be taken to be along its curves, so that it
     *     has fewer corners; zero keeps them as they are
     */
    public NoFitCache(double gapMm, double toleranceMm) {
        this.gapMm = gapMm;
        this.toleranceMm = toleranceMm;
    }

    /** What tells an image from others: the outline with the side up that lies up, and its turn. */
    private record ImageKey(Outline outline, int turnDegrees) {}

    /** What tells a region from others: two reference shapes, the second of them reflected. */
    private record RegionKey(int first, int second, Reflection reflection) {}

    /** What is left between two items. */
    public double gapMm() {
        return gapMm;
    }

    /** How much larger an item may be taken to be along its curves; zero or more. */
    public double toleranceMm() {
        return toleranceMm;
    }

    /** How far beyond its bare box a shape may reach with its half of the gap, at most. */
    public double reachMm() {
        return 2 * gapMm + 4 * toleranceMm;
    }

    /** An outline in one orientation. */
    public synchronized ShapeImage image(Outline outline, Orientation orientation) {
        Outline up = orientation.sideUp(outline);
        ImageKey key = new ImageKey(up, orientation.turnDegrees());
        ShapeImage known = images.get(key);
        if (known == null) {
            known = make(up, Orientation.turned(orientation.turnDegrees()));
            images.put(key, known);
        }
        return known;
    }

    private ShapeImage make(Outline outline, Orientation turn) {
        Outline turned = turn.applyTo(outline);
        List<Point> corners = ReferenceShape.atOrigin(turned);
        for (int i = 0; i < references.size(); i++) {
            ReferenceShape reference = references.get(i);
            Optional<Reflection> reflection = reference.reflectionTo(corners, SAME_MM);
            if (reflection.isPresent()) {
                OrientedShape shape = reference.reflected(reflection.get(), turned.box());
                return new ShapeImage(i, reflection.get(), shape);
            }
        }
        OrientedShape shape = OrientedShape.of(outline, turn, gapMm, toleranceMm);
        references.add(ReferenceShape.of(corners, shape, turned.box()));
        return new ShapeImage(references.size() - 1, Reflection.NONE, shape);
    }

    /** Where the second shape must not be, the first being where it is. */
    public PairNoFitRegion between(ShapeImage first, ShapeImage second) {
        Reflection reflection = first.reflection().with(second.reflection());
        NoFitRegion region =
                regions.computeIfAbsent(
                        new RegionKey(first.reference(), second.reference(), reflection),
                        this::make);
        return new PairNoFitRegion(region, first.reflection(), first.shape(), second.shape());
    }

    private NoFitRegion make(RegionKey key) {
        OrientedShape first = references.get(key.first()).shape();
        OrientedShape second = references.get(key.second()).shape();
        OrientedShape reflected = second.reflected(key.reflection(), 0, 0);
        return NoFitRegion.of(first.parts(), reflected.parts());
    }
}
