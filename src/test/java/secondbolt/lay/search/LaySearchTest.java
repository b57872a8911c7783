package secondbolt.lay.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
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

/** Lays held against a checker of their own, built on a reference library for plane geometry. */
class LaySearchTest {
    private static final long STEPS = 40_000;

    private static Outline outline(double... xy) {
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            corners.add(new Point(xy[i], xy[i + 1]));
        }
        return new Outline(corners);
    }

    private static Outline rectangle(double across, double along) {
        return Outline.of(new Box(0, 0, across, along));
    }

    private static PackingItem along(Outline outline) {
        return new PackingItem(
                outline, PlacementRule.turned(List.of(0, 180)), 0, outline.areaMm2());
    }

    private static Lay lay(
            List<PackingItem> items, List<Container> containers, double gapMm, long steps) {
        return LaySearch.lay(
                items,
                containers,
                new NoFitCache(gapMm, 0.8),
                steps,
                Goal.SHORT,
                2,
                SearchObserver.NONE);
    }

    private static double reach(List<PackingItem> items, Lay lay) {
        return lay.placements().stream()
                .mapToDouble(p -> p.applyTo(items.get(p.item()).outline()).box().bottomMm())
                .max()
                .orElse(0);
    }

    /** A panel, a sleeve, a collar, a trouser leg, a circle skirt's quarter; sizes as they fall. */
    private static Outline shape(Random random) {
        double w = 60 + random.nextInt(240);
        double h = 80 + random.nextInt(400);
        return switch (random.nextInt(5)) {
            case 0 -> rectangle(w, h);
            case 1 -> outline(0, 0, w * 0.6, 0, w, h, -w * 0.3, h);
            case 2 -> outline(0, h * 0.3, w / 2, 0, w, h * 0.3, w * 0.85, h, w * 0.15, h);
            case 3 -> outline(0, 0, w, 0, w, h * 0.4, w * 0.5, h * 0.45, w * 0.4, h, 0, h);
            default -> quarter(w, h);
        };
    }

    private static Outline quarter(double inner, double more) {
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i <= 12; i++) {
            double turn = Math.PI / 2 * i / 12;
            corners.add(new Point(inner * Math.cos(turn), inner * Math.sin(turn)));
        }
        for (int i = 12; i >= 0; i--) {
            double turn = Math.PI / 2 * i / 12;
            double outer = inner + more;
            corners.add(new Point(outer * Math.cos(turn), outer * Math.sin(turn)));
        }
        return new Outline(corners);
    }

    private static Container cloth(Random random) {
        double w = 500 + random.nextInt(900);
        double h = 600 + random.nextInt(1400);
        Region whole =
                random.nextBoolean()
                        ? Region.of(new Box(0, 0, w, h))
                        : Region.of(
                                outline(0, 20, w * 0.7, 0, w, h * 0.2, w * 0.9, h, 30, h * 0.95));
        List<Region> flaws = new ArrayList<>();
        for (int i = random.nextInt(5); i > 0; i--) {
            Point at = new Point(random.nextDouble() * w, random.nextDouble() * h);
            flaws.add(Region.of(Outline.round(at, 5 + random.nextInt(60))));
        }
        Region worn = Region.of(new Box(w * 0.4, h * 0.1, w * 0.3, h * 0.2));
        Region holes = Region.union(flaws);
        return Container.of(whole.minus(holes).minus(worn), whole.minus(holes));
    }

    private static final List<List<Integer>> GRAINS =
            List.of(
                    List.of(0, 180),
                    List.of(0),
                    List.of(90, 270),
                    List.of(45, 135, 225, 315),
                    List.of(0, 45, 90, 135, 180, 225, 270, 315));

    /** Some of them may be turned over, and some lie at the steps of a check only. */
    private static List<PlacementRule> rules(Random random) {
        List<PlacementRule> rules = new ArrayList<>();
        for (PlacementRule rule : PlacementRule.turned(GRAINS.get(random.nextInt(GRAINS.size())))) {
            rules.add(rule);
            if (random.nextInt(4) == 0) {
                rules.add(rule.mirrored());
            }
        }
        if (random.nextInt(4) > 0) {
            return rules;
        }
        AllowedPositions across =
                random.nextBoolean()
                        ? AllowedPositions.ANY
                        : AllowedPositions.steps(random.nextInt(90), 20 + random.nextInt(90));
        AllowedPositions along =
                AllowedPositions.steps(random.nextInt(90), 20 + random.nextInt(90));
        return rules.stream().map(rule -> rule.at(across, along)).toList();
    }

    @Test
    void twoHundredClothsAndTheirPiecesCanBeCut() {
        int full = 0;
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            List<Container> containers = new ArrayList<>(List.of(cloth(random)));
            if (random.nextInt(3) == 0) {
                containers.add(cloth(random));
            }
            List<PackingItem> items = new ArrayList<>();
            for (int i = 2 + random.nextInt(7); i > 0; i--) {
                Outline outline = shape(random);
                items.add(
                        new PackingItem(
                                outline,
                                rules(random),
                                random.nextInt(4) == 0 ? 1 : 0,
                                outline.areaMm2()));
            }
            double gapMm = random.nextInt(3) * 2.5;
            Lay lay = lay(items, containers, gapMm, STEPS);
            assertEquals(
                    List.of(), LayChecker.faults(items, containers, gapMm, lay), "set " + seed);
            full += lay.leftOver().isEmpty() ? 1 : 0;
        }
        assertTrue(full > 100, "all pieces laid in " + full + " of 200");
    }

    /** Four rectangles of 30 by 40 cm on cloth 60 cm wide, without gap: 80 cm at the least. */
    @Test
    void rectanglesComeNearTheHandWorkedLength() {
        List<PackingItem> four = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            four.add(along(rectangle(298, 400)));
        }
        Lay lay = lay(four, List.of(Container.whole(600, 2000)), 0, 300_000);
        assertTrue(lay.leftOver().isEmpty());
        assertTrue(reach(four, lay) >= 800, "never shorter than the area and the widths allow");
        assertTrue(reach(four, lay) <= 806, "reach " + reach(four, lay));
    }

    /** Pieces may lie in each other's hollows: two L shapes of 30 by 30 cm, 10 cm wide. */
    @Test
    void piecesLieInEachOthersHollows() {
        Outline hook = outline(0, 0, 300, 0, 300, 98, 98, 98, 98, 300, 0, 300);
        List<PackingItem> two = List.of(along(hook), along(hook));
        Lay lay = lay(two, List.of(Container.whole(302, 2000)), 0, 400_000);
        assertTrue(reach(two, lay) < 420, "reach " + reach(two, lay));
    }

    @Test
    void whatIsTooLargeIsLeftOutAndTheRestIsLaid() {
        List<PackingItem> items =
                List.of(
                        along(rectangle(700, 300)),
                        along(rectangle(200, 300)),
                        along(rectangle(200, 300)));
        Lay lay = lay(items, List.of(Container.whole(600, 900)), 3, STEPS);
        assertEquals(List.of(0), lay.leftOver());
    }

    /** The worthier pieces are laid when not all have room. */
    @Test
    void theLeastWorthIsLeftOut() {
        List<PackingItem> items = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            items.add(
                    new PackingItem(
                            rectangle(290, 390),
                            PlacementRule.turned(List.of(0)),
                            0,
                            i == 2 ? 1 : 100));
        }
        items.add(new PackingItem(rectangle(290, 390), PlacementRule.turned(List.of(0)), 0, 100));
        Lay lay = lay(items, List.of(Container.whole(600, 800)), 0, STEPS);
        assertEquals(List.of(2), lay.leftOver());
    }

    @Test
    void aHiddenPieceMayLieOnWornClothAndAnotherMayNot() {
        Region whole = Region.of(new Box(0, 0, 300, 300));
        Container worn = Container.of(whole.minus(Region.of(new Box(0, 0, 300, 200))), whole);
        Outline facing = rectangle(250, 250);
        PackingItem hidden = new PackingItem(facing, PlacementRule.turned(List.of(0, 180)), 1, 1);
        assertTrue(lay(List.of(hidden), List.of(worn), 3, STEPS).leftOver().isEmpty());
        assertFalse(lay(List.of(along(facing)), List.of(worn), 3, STEPS).leftOver().isEmpty());
    }

    @Test
    void oneCoreFindsTheSameLayAsTwo() {
        Random random = new Random(7);
        List<PackingItem> items = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            items.add(along(shape(random)));
        }
        List<Container> containers = List.of(Container.whole(1000, 2500));
        Lay one =
                LaySearch.lay(
                        items,
                        containers,
                        new NoFitCache(3, 0.8),
                        STEPS,
                        Goal.SHORT,
                        1,
                        SearchObserver.NONE);
        Lay two =
                LaySearch.lay(
                        items,
                        containers,
                        new NoFitCache(3, 0.8),
                        STEPS,
                        Goal.SHORT,
                        2,
                        SearchObserver.NONE);
        assertEquals(one, two);
    }

    @Test
    void anInterruptedSearchGivesTheBestSoFarAndSaysSo() {
        Random random = new Random(11);
        List<PackingItem> items = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            items.add(along(shape(random)));
        }
        Lay lay =
                LaySearch.lay(
                        items,
                        List.of(Container.whole(1200, 4000)),
                        new NoFitCache(3, 0.8),
                        10_000_000,
                        Goal.SHORT,
                        2,
                        (share, bestMm) -> bestMm == 0);
        assertFalse(lay.isFinished());
        assertTrue(lay.leftOver().isEmpty());
    }

    @Test
    void sliversAndAThousandthOfAMillimetreDoNotHang() {
        List<PackingItem> items =
                List.of(
                        along(rectangle(0.01, 400)),
                        along(rectangle(300, 0.01)),
                        along(rectangle(50, 50)));
        Lay lay = lay(items, List.of(Container.whole(600, 800)), 3, STEPS);
        assertTrue(lay.leftOver().isEmpty());
    }
}
