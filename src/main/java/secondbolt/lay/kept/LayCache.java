package secondbolt.lay.kept;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.lay.nofit.NoFitCache;
import secondbolt.lay.placement.AllowedPositions;
import secondbolt.lay.placement.Container;
import secondbolt.lay.placement.Effort;
import secondbolt.lay.placement.Goal;
import secondbolt.lay.placement.Lay;
import secondbolt.lay.placement.Orientation;
import secondbolt.lay.placement.PackingItem;
import secondbolt.lay.placement.PlacementRule;
import secondbolt.lay.search.LaySearch;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;
import secondbolt.shape.Region;

/**
 * A cache of lays: searches a lay, or takes it from the store. The key is a hash of all that a lay
 * depends on, coordinates rounded to a millionth of a millimetre, since the last bits of a double
 * differ between machines. Interrupted searches are not stored.
 *
 * <p>What the store gives back is taken only if it could be cut, by the same rules as a lay that is
 * searched; else it is searched anew. Whether a lay that could be cut is as good as the one that
 * would be found cannot be told without searching: that nobody but this program wrote it is for the
 * store to see to.
 */
public final class LayCache {
    /** Changed whenever the search may come to another lay for the same input. */
    private static final String SEARCH = "lay 10";

    private static final double PARTS_A_MM = 1e6;

    /**
     * How much larger than it is an item may be taken to be along a curve; straight it is exact.
     */
    private static final double TOLERANCE_MM = 0.8;

    private final LayDesk desk;
    private final Map<Double, NoFitCache> noFits = new HashMap<>();

    /** An empty cache before a desk's store. */
    public LayCache(LayDesk desk) {
        this.desk = desk;
    }

    /**
     * The lay of items on containers: the kept one if there is one, else one that is searched, and
     * kept if the search was not stopped.
     *
     * @param gapMm between two items, 0 or more
     * @param goal what it should be like once all items are placed
     */
    public Lay lay(
            List<PackingItem> items,
            List<Container> containers,
            double gapMm,
            Effort effort,
            Goal goal) {
        String key = key(items, containers, gapMm, effort, goal);
        LayProof proof = new LayProof(items, containers, gapMm);
        Optional<Lay> stored =
                desk.store()
                        .find(key)
                        .flatMap(text -> WrittenLay.read(text, items.size()))
                        .filter(proof::holds);
        if (stored.isPresent()) {
            return stored.get();
        }
        Lay found =
                LaySearch.lay(
                        items,
                        containers,
                        noFits.computeIfAbsent(gapMm, gap -> new NoFitCache(gap, TOLERANCE_MM)),
                        effort,
                        goal,
                        desk.cores(),
                        desk.observer());
        // Read back, so that a lay is the same whether it was stored or not.
        String text = WrittenLay.of(found);
        if (found.isFinished()) {
            desk.store().keep(key, text);
        }
        Lay same = WrittenLay.read(text, items.size()).orElseThrow();
        return new Lay(same.placements(), same.leftOver(), found.isFinished());
    }

    private static String key(
            List<PackingItem> items,
            List<Container> containers,
            double gapMm,
            Effort effort,
            Goal goal) {
        StringBuilder all = new StringBuilder(SEARCH).append('\n').append(goal.word());
        all.append('\n').append(effort.word()).append('\n').append(WrittenLay.number(gapMm));
        for (PackingItem item : items) {
            all.append("\nfigure ").append(item.grade());
            all.append(' ').append(WrittenLay.number(item.worth()));
            item.rules().forEach(rule -> append(all, rule));
            append(all, item.outline());
        }
        for (Container container : containers) {
            all.append("\nbed");
            for (Region grade : container.grades()) {
                all.append("\ngrade");
                grade.outlines().forEach(outline -> append(all, outline));
            }
        }
        return StoreKey.of(all.toString());
    }

    private static void append(StringBuilder all, PlacementRule rule) {
        Orientation orientation = rule.orientation();
        all.append("\nway ").append(orientation.turnDegrees()).append(orientation.isMirrored());
        all.append(rule.container());
        append(all, rule.across());
        append(all, rule.along());
    }

    private static void append(StringBuilder all, AllowedPositions positions) {
        for (double mm :
                List.of(
                        positions.leastMm(),
                        positions.mostMm(),
                        positions.fromMm(),
                        positions.everyMm())) {
            all.append(' ').append(WrittenLay.number(mm));
        }
    }

    private static void append(StringBuilder all, Outline outline) {
        for (Point corner : outline.corners()) {
            all.append(' ').append(Math.round(corner.xMm() * PARTS_A_MM));
            all.append(',').append(Math.round(corner.yMm() * PARTS_A_MM));
        }
    }
}
