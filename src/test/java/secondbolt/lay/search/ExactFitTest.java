package secondbolt.lay.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import secondbolt.lay.nofit.NoFitCache;
import secondbolt.lay.placement.Container;
import secondbolt.lay.placement.Effort;
import secondbolt.lay.placement.Goal;
import secondbolt.lay.placement.Lay;
import secondbolt.lay.placement.PackingItem;
import secondbolt.lay.placement.PlacementRule;
import secondbolt.shape.Box;
import secondbolt.shape.ClearRectangles;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;
import secondbolt.shape.Region;

/** What fits exactly fits, and what stays over stays in one piece. */
class ExactFitTest {
    private static final double INCH = 25.4;

    private static PackingItem box(double across, double along, Integer... turns) {
        Outline outline = Outline.of(new Box(0, 0, across, along));
        return new PackingItem(
                outline,
                PlacementRule.turned(turns.length == 0 ? List.of(0, 180) : List.of(turns)),
                0,
                outline.areaMm2());
    }

    private static Lay lay(
            List<PackingItem> items, List<Container> cloths, double gapMm, long steps) {
        Lay lay =
                LaySearch.lay(
                        items,
                        cloths,
                        new NoFitCache(gapMm, 0.8),
                        steps,
                        Goal.REMNANT,
                        2,
                        SearchObserver.NONE);
        assertEquals(List.of(), LayChecker.faults(items, cloths, gapMm, lay));
        return lay;
    }

    private static double largestOver(List<PackingItem> items, Container cloth, Lay lay) {
        Region free =
                cloth.any()
                        .minus(
                                Region.union(
                                        lay.placements().stream()
                                                .map(
                                                        p ->
                                                                Region.of(
                                                                        p.applyTo(
                                                                                items.get(p.item())
                                                                                        .outline())))
                                                .toList()));
        return ClearRectangles.largest(free).map(Box::areaMm2).orElse(0.0);
    }

    /** 36 in of panel on a side of 36 by 102 in; one of 36.001 in does not fit. */
    @Test
    void aPanelAsWideAsTheClothFits() {
        List<Container> side = List.of(Container.whole(36 * INCH, 102 * INCH));
        assertTrue(lay(List.of(box(36 * INCH, 60 * INCH)), side, 3, 40_000).leftOver().isEmpty());
        assertEquals(
                List.of(0),
                lay(List.of(box(36.001 * INCH, 60 * INCH)), side, 3, 40_000).leftOver());
    }

    /** Two strips of 20 by 60 in, each three panels of 20 by 20 in long; and again turned. */
    @Test
    void panelsAsWideAndTogetherAsLongAsTheirStripsFit() {
        List<PackingItem> six = new ArrayList<>(Collections.nCopies(6, box(508, 508)));
        List<Container> strips = List.of(Container.whole(508, 1524), Container.whole(508, 1524));
        assertTrue(lay(six, strips, 0, 40_000).leftOver().isEmpty());
        List<Container> wide = List.of(Container.whole(3 * 508 + 6, 2 * 508 + 3));
        assertTrue(lay(six, wide, 3, 40_000).leftOver().isEmpty(), "with a gap of 3 mm");
    }

    /** A cloth cut up without rest, edge to edge or with a gap, is laid again without rest. */
    @Test
    void twoHundredClothsCutUpAreLaidAgain() {
        List<Integer> left = new ArrayList<>();
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            double unit = random.nextBoolean() ? INCH / 4 : 1;
            double gapMm = List.of(0.0, 3.0, 9.525).get(random.nextInt(3));
            double wide = unit * (300 + random.nextInt(900));
            double high = unit * (300 + random.nextInt(1500));
            List<double[]> parts = new ArrayList<>(List.of(new double[] {wide, high}));
            for (int cuts = 1 + random.nextInt(7); cuts > 0; cuts--) {
                Collections.sort(parts, (a, b) -> Double.compare(b[0] * b[1], a[0] * a[1]));
                double[] part = parts.remove(random.nextInt(Math.min(2, parts.size())));
                int axis = part[0] > part[1] ? 0 : 1;
                double first = (part[axis] - gapMm) * (20 + random.nextInt(61)) / 100;
                double[] one = part.clone();
                double[] two = part.clone();
                one[axis] = first;
                two[axis] = part[axis] - gapMm - first;
                parts.add(one);
                parts.add(two);
            }
            Collections.shuffle(parts, random);
            List<PackingItem> items = new ArrayList<>();
            for (double[] part : parts) {
                boolean turned = random.nextInt(3) == 0;
                items.add(
                        turned
                                ? box(part[1], part[0], 0, 90, 180, 270)
                                : box(part[0], part[1], 0, 180));
            }
            Lay lay = lay(items, List.of(Container.whole(wide, high)), gapMm, Effort.QUICK.steps());
            if (!lay.leftOver().isEmpty()) {
                left.add(seed);
            }
        }
        assertEquals(List.of(), left, "not laid again");
    }

    /** Three panels of 20 fill a width of 60 exactly; a round yoke lies below them. */
    @Test
    void panelsFitExactlyBesideACurvedPiece() {
        Outline round = Outline.round(new Point(0, 0), 200);
        List<PackingItem> items = new ArrayList<>(Collections.nCopies(3, box(508, 700)));
        items.add(new PackingItem(round, PlacementRule.turned(List.of(0)), 0, round.areaMm2()));
        List<Container> cloth = List.of(Container.whole(1524, 1300));
        assertTrue(lay(items, cloth, 0, Effort.QUICK.steps()).leftOver().isEmpty());
    }

    /** Gores of 10 and 20 in, 30 in long, head to tail: four of them take 60 in. */
    @Test
    void goresHeadToTailFitExactly() {
        Outline gore =
                new Outline(
                        List.of(
                                new Point(5 * INCH, 0),
                                new Point(15 * INCH, 0),
                                new Point(20 * INCH, 30 * INCH),
                                new Point(0, 30 * INCH)));
        List<PackingItem> four =
                Collections.nCopies(
                        4,
                        new PackingItem(
                                gore, PlacementRule.turned(List.of(0, 180)), 0, gore.areaMm2()));
        List<Container> cloth = List.of(Container.whole(65 * INCH, 30 * INCH));
        assertTrue(lay(four, cloth, 0, Effort.QUICK.steps()).leftOver().isEmpty());
    }

    /** Two panels of 40 by 60 in on cloth of 108 by 60 in: 28 in by 60 in stay over, no less. */
    @Test
    void whatStaysOverStaysInOnePiece() {
        List<PackingItem> two = Collections.nCopies(2, box(40 * INCH, 60 * INCH));
        Container across = Container.whole(108 * INCH, 60 * INCH);
        Lay lay = lay(two, List.of(across), 0, 40_000);
        assertEquals(28 * 60, largestOver(two, across, lay) / INCH / INCH, 0.01);
        List<PackingItem> turned = Collections.nCopies(2, box(60 * INCH, 40 * INCH));
        Container along = Container.whole(60 * INCH, 108 * INCH);
        Lay upright = lay(turned, List.of(along), 0, 40_000);
        assertEquals(28 * 60, largestOver(turned, along, upright) / INCH / INCH, 0.01);
    }

    /** With a gap of 3 mm and a stain in a corner: 28 in less the gap, less nothing else. */
    @Test
    void whatStaysOverStaysInOnePieceBesideAFlaw() {
        List<PackingItem> two = Collections.nCopies(2, box(40 * INCH, 50 * INCH));
        Container cloth =
                Container.of(
                        Region.of(new Box(0, 0, 108 * INCH, 60 * INCH))
                                .minus(Region.of(new Box(0, 58 * INCH, INCH, INCH))));
        Lay lay = lay(two, List.of(cloth), 3, Effort.QUICK.steps());
        double least = (28 * INCH - 3) * 60 * INCH;
        assertTrue(largestOver(two, cloth, lay) >= least - 1, lay.toString());
    }
}
