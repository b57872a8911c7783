package secondbolt.lay.search;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import secondbolt.shape.Outline;

/**
 * What is worked out for two shapes once, and serves in every search they are in: on the cloth
 * there is, and on every width of the bolt.
 */
public final class Shelf {
    private final double gapMm;
    private final double toleranceMm;
    private final Map<Kind, Orientation> orientations = new ConcurrentHashMap<>();
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

    /** Two of the orientations of this shelf, each there once. */
    private record Pair(Orientation first, Orientation second) {
        @Override
        @SuppressWarnings("ReferenceEquality")
        public boolean equals(Object other) {
            return other instanceof Pair pair && pair.first == first && pair.second == second;
        }

        @Override
        public int hashCode() {
            return 31 * System.identityHashCode(first) + System.identityHashCode(second);
        }
    }

    double toleranceMm() {
        return toleranceMm;
    }

    /** How far beyond its bare box a shape may reach with its share of the gap. */
    double reachMm() {
        return 2 * gapMm + 4 * toleranceMm;
    }

    Orientation orientation(Outline outline, Way way) {
        Outline up = way.isMirrored() ? outline.map(Orientation::mirrored) : outline;
        return orientations.computeIfAbsent(
                new Kind(up, way.turnDegrees()),
                kind -> Orientation.of(kind.outline(), kind.turn(), gapMm, toleranceMm));
    }

    Field between(Orientation first, Orientation second) {
        return fields.computeIfAbsent(
                new Pair(first, second),
                pair -> Field.of(pair.first().parts(), pair.second().parts()));
    }
}
