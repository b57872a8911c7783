package secondbolt.lay.kept;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import secondbolt.lay.placement.Container;
import secondbolt.lay.placement.Lay;
import secondbolt.lay.placement.PackingItem;
import secondbolt.lay.placement.Placement;
import secondbolt.shape.Box;
import secondbolt.shape.Outline;
import secondbolt.shape.Region;

/**
 * Proves that a lay could be cut, whoever wrote it down: each item at most once, turned and placed
 * as one of its rules allows, wholly on what is sound for its grade, and clear of all others by the
 * gap. The true outlines are held against each other, so that a lay that was searched always
 * passes: the search takes items to be larger than they are, never smaller.
 *
 * <p>It does not prove that a lay is good: a longer one, or one with more left over than need be,
 * passes as well.
 */
final class LayProof {
    /** How far a place may be off what a rule allows, for steps are rounded before they add up. */
    private static final double PLACE_MM = 0.01;

    private static final double EDGE_MM = 1e-3;
    private static final double EDGE_MM2 = 0.01;

    private final List<PackingItem> items;
    private final List<Container> containers;
    private final double gapMm;
    private final Map<Region, Boolean> boxes = new HashMap<>();

    /**
     * For lays of these items on these containers.
     *
     * @param gapMm between two items, 0 or more
     */
    LayProof(List<PackingItem> items, List<Container> containers, double gapMm) {
        this.items = List.copyOf(items);
        this.containers = List.copyOf(containers);
        this.gapMm = gapMm;
    }

    /** An item where it lies. */
    private record Lying(int container, Box box, Region region) {}

    /** Whether a lay could be cut. */
    boolean holds(Lay lay) {
        boolean[] there = new boolean[items.size()];
        List<Lying> lying = new ArrayList<>();
        for (Placement placement : lay.placements()) {
            if (!isKnown(placement) || there[placement.item()] || !isAllowed(placement)) {
                return false;
            }
            there[placement.item()] = true;
            Outline outline = placement.applyTo(items.get(placement.item()).outline());
            Region sound = sound(placement);
            // Nothing is overlaid that lies far off.
            if (sound.isEmpty() || !sound.box().contains(outline.box(), EDGE_MM)) {
                return false;
            }
            Lying one = new Lying(placement.container(), outline.box(), Region.of(outline));
            if (!isSound(one, sound) || !lying.stream().allMatch(other -> areClear(one, other))) {
                return false;
            }
            lying.add(one);
        }
        return true;
    }

    private boolean isKnown(Placement placement) {
        return placement.item() >= 0
                && placement.item() < items.size()
                && placement.container() >= 0
                && placement.container() < containers.size();
    }

    private boolean isAllowed(Placement placement) {
        return items.get(placement.item()).rules().stream()
                .anyMatch(rule -> rule.allows(placement, PLACE_MM));
    }

    private Region sound(Placement placement) {
        int grade = items.get(placement.item()).grade();
        return containers.get(placement.container()).grades().get(grade);
    }

    /** What lies within the box of a sound part that is itself a box needs no overlay. */
    private boolean isSound(Lying one, Region sound) {
        return boxes.computeIfAbsent(sound, s -> Region.of(s.box()).minus(s).isEmpty())
                || one.region().minus(sound).areaMm2() <= EDGE_MM2;
    }

    private boolean areClear(Lying one, Lying other) {
        if (one.container() != other.container() || !one.box().grown(gapMm).overlaps(other.box())) {
            return true;
        }
        double apartMm = one.region().distanceMm(other.region());
        return apartMm > 0
                ? apartMm >= gapMm - EDGE_MM
                : gapMm <= EDGE_MM
                        && one.region().intersection(other.region()).areaMm2() <= EDGE_MM2;
    }
}
