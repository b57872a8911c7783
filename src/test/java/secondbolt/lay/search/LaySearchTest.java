package secondbolt.lay.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
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

    private static Figure along(Outline outline) {
        return new Figure(outline, Way.turned(List.of(0, 180)), 0, outline.areaMm2());
    }

    private static Lay lay(List<Figure> figures, List<Bed> beds, double gapMm, long steps) {
        return LaySearch.lay(figures, beds, new Shelf(gapMm, 0.8), steps, 2, Watch.NONE);
    }

    private static double reach(List<Figure> figures, Lay lay) {
        return lay.placed().stream()
                .mapToDouble(p -> p.lying(figures.get(p.figure()).outline()).box().bottomMm())
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

    private static Bed cloth(Random random) {
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
        return Bed.of(whole.minus(holes).minus(worn), whole.minus(holes));
    }

    private static final List<List<Integer>> GRAINS =
            List.of(
                    List.of(0, 180),
                    List.of(0),
                    List.of(90, 270),
                    List.of(45, 135, 225, 315),
                    List.of(0, 45, 90, 135, 180, 225, 270, 315));

    /** Some of them may be turned over, and some lie at the steps of a check only. */
    private static List<Way> ways(Random random) {
        List<Way> ways = new ArrayList<>();
        for (Way way : Way.turned(GRAINS.get(random.nextInt(GRAINS.size())))) {
            ways.add(way);
            if (random.nextInt(4) == 0) {
                ways.add(way.mirrored());
            }
        }
        if (random.nextInt(4) > 0) {
            return ways;
        }
        Rail across =
                random.nextBoolean()
                        ? Rail.ANYWHERE
                        : Rail.steps(random.nextInt(90), 20 + random.nextInt(90));
        Rail along = Rail.steps(random.nextInt(90), 20 + random.nextInt(90));
        return ways.stream().map(way -> way.on(across, along)).toList();
    }

    @Test
    void twoHundredClothsAndTheirPiecesCanBeCut() {
        int full = 0;
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            List<Bed> beds = new ArrayList<>(List.of(cloth(random)));
            if (random.nextInt(3) == 0) {
                beds.add(cloth(random));
            }
            List<Figure> figures = new ArrayList<>();
            for (int i = 2 + random.nextInt(7); i > 0; i--) {
                Outline outline = shape(random);
                figures.add(
                        new Figure(
                                outline,
                                ways(random),
                                random.nextInt(4) == 0 ? 1 : 0,
                                outline.areaMm2()));
            }
            double gapMm = random.nextInt(3) * 2.5;
            Lay lay = lay(figures, beds, gapMm, STEPS);
            assertEquals(List.of(), LayChecker.faults(figures, beds, gapMm, lay), "set " + seed);
            full += lay.leftOver().isEmpty() ? 1 : 0;
        }
        assertTrue(full > 100, "all pieces laid in " + full + " of 200");
    }

    /** Four rectangles of 30 by 40 cm on cloth 60 cm wide, without gap: 80 cm at the least. */
    @Test
    void rectanglesComeNearTheHandWorkedLength() {
        List<Figure> four = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            four.add(along(rectangle(298, 400)));
        }
        Lay lay = lay(four, List.of(Bed.whole(600, 2000)), 0, 300_000);
        assertTrue(lay.leftOver().isEmpty());
        assertTrue(reach(four, lay) >= 800, "never shorter than the area and the widths allow");
        assertTrue(reach(four, lay) <= 806, "reach " + reach(four, lay));
    }

    /** Pieces may lie in each other's hollows: two L shapes of 30 by 30 cm, 10 cm wide. */
    @Test
    void piecesLieInEachOthersHollows() {
        Outline hook = outline(0, 0, 300, 0, 300, 98, 98, 98, 98, 300, 0, 300);
        List<Figure> two = List.of(along(hook), along(hook));
        Lay lay = lay(two, List.of(Bed.whole(302, 2000)), 0, 400_000);
        assertTrue(reach(two, lay) < 420, "reach " + reach(two, lay));
    }

    @Test
    void whatIsTooLargeIsLeftOutAndTheRestIsLaid() {
        List<Figure> figures =
                List.of(
                        along(rectangle(700, 300)),
                        along(rectangle(200, 300)),
                        along(rectangle(200, 300)));
        Lay lay = lay(figures, List.of(Bed.whole(600, 900)), 3, STEPS);
        assertEquals(List.of(0), lay.leftOver());
    }

    /** The worthier pieces are laid when not all have room. */
    @Test
    void theLeastWorthIsLeftOut() {
        List<Figure> figures = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            figures.add(
                    new Figure(rectangle(290, 390), Way.turned(List.of(0)), 0, i == 2 ? 1 : 100));
        }
        figures.add(new Figure(rectangle(290, 390), Way.turned(List.of(0)), 0, 100));
        Lay lay = lay(figures, List.of(Bed.whole(600, 800)), 0, STEPS);
        assertEquals(List.of(2), lay.leftOver());
    }

    @Test
    void aHiddenPieceMayLieOnWornClothAndAnotherMayNot() {
        Region whole = Region.of(new Box(0, 0, 300, 300));
        Bed worn = Bed.of(whole.minus(Region.of(new Box(0, 0, 300, 200))), whole);
        Outline facing = rectangle(250, 250);
        Figure hidden = new Figure(facing, Way.turned(List.of(0, 180)), 1, 1);
        assertTrue(lay(List.of(hidden), List.of(worn), 3, STEPS).leftOver().isEmpty());
        assertFalse(lay(List.of(along(facing)), List.of(worn), 3, STEPS).leftOver().isEmpty());
    }

    @Test
    void oneCoreFindsTheSameLayAsTwo() {
        Random random = new Random(7);
        List<Figure> figures = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            figures.add(along(shape(random)));
        }
        List<Bed> beds = List.of(Bed.whole(1000, 2500));
        Lay one = LaySearch.lay(figures, beds, new Shelf(3, 0.8), STEPS, 1, Watch.NONE);
        Lay two = LaySearch.lay(figures, beds, new Shelf(3, 0.8), STEPS, 2, Watch.NONE);
        assertEquals(one, two);
    }

    @Test
    void anInterruptedSearchGivesTheBestSoFarAndSaysSo() {
        Random random = new Random(11);
        List<Figure> figures = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            figures.add(along(shape(random)));
        }
        Lay lay =
                LaySearch.lay(
                        figures,
                        List.of(Bed.whole(1200, 4000)),
                        new Shelf(3, 0.8),
                        10_000_000,
                        2,
                        (share, bestMm) -> bestMm == 0);
        assertFalse(lay.isFinished());
        assertTrue(lay.leftOver().isEmpty());
    }

    @Test
    void sliversAndAThousandthOfAMillimetreDoNotHang() {
        List<Figure> figures =
                List.of(
                        along(rectangle(0.01, 400)),
                        along(rectangle(300, 0.01)),
                        along(rectangle(50, 50)));
        Lay lay = lay(figures, List.of(Bed.whole(600, 800)), 3, STEPS);
        assertTrue(lay.leftOver().isEmpty());
    }
}
