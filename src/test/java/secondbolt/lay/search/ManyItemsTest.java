package secondbolt.lay.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import secondbolt.lay.nofit.NoFitCache;
import secondbolt.lay.placement.AllowedPositions;
import secondbolt.lay.placement.Container;
import secondbolt.lay.placement.Goal;
import secondbolt.lay.placement.Lay;
import secondbolt.lay.placement.PackingItem;
import secondbolt.lay.placement.PlacementRule;
import secondbolt.shape.Box;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;
import secondbolt.shape.Region;

/** Hundreds of copies: laid one after the other first, and never on each other. */
class ManyItemsTest {
    private static final int COPIES = 60;
    private static final double GAP_MM = 3;
    private static final long STEPS = 20_000;

    private static PackingItem item(List<PlacementRule> rules, double... xy) {
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            corners.add(new Point(xy[i], xy[i + 1]));
        }
        Outline outline = new Outline(corners);
        return new PackingItem(outline, rules, 0, outline.areaMm2());
    }

    /** A pocket, a gore, a pointed tab, one on the fold, and one that lies at a check's steps. */
    private static List<PackingItem> items() {
        List<PlacementRule> any = PlacementRule.turned(List.of(0, 180));
        AllowedPositions free = AllowedPositions.ANY;
        AllowedPositions steps = AllowedPositions.steps(0, 50);
        List<PlacementRule> checked = any.stream().map(rule -> rule.at(steps, steps)).toList();
        List<PlacementRule> folded = List.of(any.get(0).at(AllowedPositions.at(0), free));
        List<PackingItem> items = new ArrayList<>();
        for (int i = 0; i < COPIES; i++) {
            items.add(item(any, 0, 0, 80, 0, 80, 90, 0, 90));
            items.add(item(any, 20, 0, 50, 0, 70, 100, 0, 100));
            items.add(item(any, 0, 0, 40, 0, 40, 50, 20, 60, 0, 50));
            items.add(item(checked, 0, 0, 60, 0, 60, 40, 0, 40));
        }
        for (int i = 0; i < 8; i++) {
            items.add(item(folded, 0, 0, 50, 0, 40, 120, 0, 120));
        }
        return items;
    }

    private static Lay lay(
            List<PackingItem> items, Container cloth, Goal goal, SearchObserver observer) {
        return LaySearch.lay(
                items, List.of(cloth), new NoFitCache(GAP_MM, 0.8), STEPS, goal, 2, observer);
    }

    private static Container cloth(double alongMm) {
        Region whole = Region.of(new Box(0, 0, 1_500, alongMm));
        Region hole = Region.of(Outline.round(new Point(700, 400), 60));
        return Container.of(whole.minus(hole), whole.minus(hole));
    }

    @Test
    void findRoomClearOfEachOther() {
        Container cloth = cloth(1_800);
        List<PackingItem> items = items();
        for (Goal goal : Goal.values()) {
            Lay lay = lay(items, cloth, goal, SearchObserver.NONE);
            assertEquals(List.of(), LayChecker.faults(items, List.of(cloth), GAP_MM, lay));
            assertEquals(List.of(), lay.leftOver());
        }
    }

    @Test
    void areToldWhereTheyFindNone() {
        Container cloth = cloth(700);
        List<PackingItem> items = items();
        Lay lay = lay(items, cloth, Goal.REMNANT, SearchObserver.NONE);
        assertEquals(List.of(), LayChecker.faults(items, List.of(cloth), GAP_MM, lay));
        assertFalse(lay.leftOver().isEmpty());
        assertTrue(lay.placements().size() > COPIES, () -> lay.placements().size() + " laid");
    }

    @Test
    void fillAWholeClothExactly() {
        List<PackingItem> items = new ArrayList<>();
        for (int i = 0; i < 240; i++) {
            items.add(item(PlacementRule.turned(List.of(0)), 0, 0, 97, 0, 97, 47, 0, 47));
        }
        Region whole = Region.of(new Box(0, 0, 1_197, 997));
        Container cloth = Container.of(whole, whole);
        Lay lay = lay(items, cloth, Goal.SHORT, SearchObserver.NONE);
        assertEquals(List.of(), lay.leftOver());
        assertEquals(List.of(), LayChecker.faults(items, List.of(cloth), GAP_MM, lay));
    }

    @Test
    void areLeftAtOnceByASearchThatIsStopped() {
        AtomicInteger asked = new AtomicInteger();
        Lay lay =
                lay(
                        items(),
                        cloth(1_800),
                        Goal.REMNANT,
                        (share, bestMm) -> {
                            asked.incrementAndGet();
                            return false;
                        });
        assertFalse(lay.isFinished());
        // At the beginning and at the end: between them nothing came to another look.
        assertEquals(2, asked.get());
        assertEquals(List.of(), lay.leftOver());
    }
}
