package secondbolt.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Searches for free rectangles, held against trying every one. */
class ClearRectanglesTest {
    private static final double TOLERANCE_MM = 1e-5;

    /** Worked by hand: a worn zone in the middle leaves a strip at each side. */
    @Test
    void findsTheStripsBesideAWornMiddle() {
        Region sheet = Region.of(new Box(0, 0, 640, 930));
        Region rest = sheet.minus(Region.of(new Box(210, 165, 220, 600)));
        List<Box> found = ClearRectangles.greedy(rest, 5, 100);
        assertEquals(
                List.of(
                        new Box(0, 0, 210, 930),
                        new Box(430, 0, 210, 930),
                        new Box(210, 0, 220, 165),
                        new Box(210, 765, 220, 165)),
                found);
    }

    /** Worked by hand: two panels of 40 in by 102 in leave 28 in of a king sheet's width. */
    @Test
    void findsWhatTwoPanelsLeave() {
        double inch = 25.4;
        Region rest =
                Region.of(new Box(0, 0, 108 * inch, 102 * inch))
                        .minus(Region.of(new Box(0, 0, 80 * inch, 102 * inch)));
        Box left = ClearRectangles.largest(rest).orElseThrow();
        assertEquals(28 * inch, left.widthMm(), TOLERANCE_MM);
        assertEquals(102 * inch, left.heightMm(), TOLERANCE_MM);
    }

    @Test
    void findsNothingInAnEmptyRegion() {
        assertEquals(Optional.empty(), ClearRectangles.largest(Region.EMPTY));
        assertEquals(
                List.of(Optional.empty()),
                ClearRectangles.longestRuns(Region.EMPTY, List.of(10.0)));
    }

    @Test
    void givesNoRunWiderThanTheRegion() {
        Region cloth = Region.of(new Box(0, 0, 900, 2000));
        List<Optional<Box>> runs = ClearRectangles.longestRuns(cloth, List.of(900.0, 900.1));
        assertEquals(Optional.of(new Box(0, 0, 900, 2000)), runs.get(0));
        assertEquals(Optional.empty(), runs.get(1));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16})
    void agreesWithTryingEveryRectangleOfAGrid(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int size = 9;
        boolean[][] taken = new boolean[size][size];
        Region region = Region.of(new Box(0, 0, size * 10, size * 10));
        int holes = random.nextInt(1, 7);
        for (int i = 0; i < holes; i++) {
            int x = random.nextInt(size);
            int y = random.nextInt(size);
            int w = Math.min(size - x, random.nextInt(1, 4));
            int h = Math.min(size - y, random.nextInt(1, 4));
            region = region.minus(Region.of(new Box(x * 10, y * 10, w * 10, h * 10)));
            for (int row = y; row < y + h; row++) {
                for (int column = x; column < x + w; column++) {
                    taken[row][column] = true;
                }
            }
        }
        assertEquals(
                bruteLargest(taken),
                ClearRectangles.largest(region).map(Box::areaMm2).orElse(0.0),
                1e-3);
        for (int wide = 1; wide <= size; wide++) {
            assertEquals(
                    bruteLongest(taken, wide),
                    ClearRectangles.longestRuns(region, List.of(wide * 10.0))
                            .get(0)
                            .map(Box::heightMm)
                            .orElse(0.0),
                    1e-5,
                    "at least " + wide + " wide");
        }
    }

    private static double bruteLargest(boolean[][] taken) {
        double most = 0;
        for (int[] r : freeRectangles(taken)) {
            most = Math.max(most, 100.0 * r[0] * r[1]);
        }
        return most;
    }

    private static double bruteLongest(boolean[][] taken, int wide) {
        double most = 0;
        for (int[] r : freeRectangles(taken)) {
            most = r[0] >= wide ? Math.max(most, 10.0 * r[1]) : most;
        }
        return most;
    }

    private static List<int[]> freeRectangles(boolean[][] taken) {
        List<int[]> free = new ArrayList<>();
        int size = taken.length;
        for (int top = 0; top < size; top++) {
            for (int left = 0; left < size; left++) {
                for (int bottom = top; bottom < size; bottom++) {
                    for (int right = left; right < size; right++) {
                        if (isFree(taken, top, left, bottom, right)) {
                            free.add(new int[] {right - left + 1, bottom - top + 1});
                        }
                    }
                }
            }
        }
        return free;
    }

    private static boolean isFree(boolean[][] taken, int top, int left, int bottom, int right) {
        for (int row = top; row <= bottom; row++) {
            for (int column = left; column <= right; column++) {
                if (taken[row][column]) {
                    return false;
                }
            }
        }
        return true;
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {21, 22, 23, 24, 25, 26, 27, 28})
    void isNeverLargerThanWhatIsThereAndGivesAwayLittle(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Region region = slantedCloth(random);
        Box found = ClearRectangles.largest(region).orElseThrow();
        assertTrue(region.contains(found, TOLERANCE_MM), "lies inside: " + found);
        double fine = finelyTried(region);
        assertTrue(
                found.areaMm2() >= fine - (found.widthMm() + found.heightMm()),
                found.areaMm2() + " against " + fine);
        for (Box next : ClearRectangles.greedy(region, 5, 20)) {
            assertTrue(region.contains(next, TOLERANCE_MM), "lies inside: " + next);
        }
    }

    private static Region slantedCloth(SplittableRandom random) {
        Region region =
                Region.of(
                        new Outline(
                                List.of(
                                        new Point(0, 0),
                                        new Point(300, random.nextInt(0, 30)),
                                        new Point(280, 300),
                                        new Point(10, random.nextInt(260, 300)))));
        for (int i = 0; i < 4; i++) {
            Point at = new Point(random.nextInt(40, 250), random.nextInt(40, 250));
            region = region.minus(Region.of(Outline.round(at, random.nextInt(5, 25))));
        }
        Point tip = new Point(random.nextInt(40, 200), random.nextInt(40, 200));
        return region.minus(
                Region.of(new Outline(List.of(tip, tip.moved(40, 15), tip.moved(10, 50)))));
    }

    /** Every rectangle on a grid of 10 mm whose inside is free, by the reference library. */
    private static double finelyTried(Region region) {
        int cells = 30;
        boolean[][] taken = new boolean[cells][cells];
        for (int row = 0; row < cells; row++) {
            for (int column = 0; column < cells; column++) {
                taken[row][column] = !region.contains(new Box(column * 10, row * 10, 10, 10), 0);
            }
        }
        return bruteLargest(taken);
    }

    @Test
    void shrinksWhenTheRegionDoes() {
        SplittableRandom random = new SplittableRandom(7);
        Region region = Region.of(new Box(0, 0, 500, 500));
        double before = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 8; i++) {
            Point at = new Point(random.nextInt(20, 480), random.nextInt(20, 480));
            region = region.minus(Region.of(Outline.round(at, 15)));
            double now = ClearRectangles.largest(region).orElseThrow().areaMm2();
            assertTrue(now <= before + 1e-3, now + " after " + before);
            before = now;
        }
    }
}
