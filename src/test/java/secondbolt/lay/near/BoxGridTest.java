package secondbolt.lay.near;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The grid against a look at every box. */
class BoxGridTest {
    private static final int ITEMS = 60;

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void missesNothingHoweverBoxesMove(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        BoxGrid grid = new BoxGrid(ITEMS, 20, 0, 0, 300, 500);
        double[][] boxes = new double[ITEMS][];
        for (int i = 0; i < ITEMS; i++) {
            boxes[i] = put(grid, i, random);
        }
        int[] found = new int[ITEMS];
        for (int tries = 0; tries < 500; tries++) {
            int moved = random.nextInt(ITEMS);
            boxes[moved] = put(grid, moved, random);
            double[] at = box(random);
            int[] near = Arrays.copyOf(found, grid.near(at[0], at[1], at[2], at[3], found));
            int[] touched = IntStream.range(0, ITEMS).filter(i -> touches(boxes[i], at)).toArray();
            int[] met = Arrays.stream(near).filter(i -> touches(boxes[i], at)).toArray();
            assertArrayEquals(touched, met);
            assertArrayEquals(Arrays.stream(near).distinct().sorted().toArray(), near);
        }
    }

    private static double[] put(BoxGrid grid, int item, SplittableRandom random) {
        double[] box = box(random);
        grid.put(item, box[0], box[1], box[2], box[3]);
        return box;
    }

    /** Some lie beyond the grid. */
    private static double[] box(SplittableRandom random) {
        double x = random.nextDouble(-40, 320);
        double y = random.nextDouble(-40, 520);
        return new double[] {x, y, x + random.nextDouble(1, 60), y + random.nextDouble(1, 60)};
    }

    private static boolean touches(double[] one, double[] other) {
        return one[0] <= other[2] && other[0] <= one[2] && one[1] <= other[3] && other[1] <= one[3];
    }

    /**
     * Ten times as many boxes on ten times as much cloth are ten times the looks, not a hundred.
     */
    @Test
    void looksAtAsMuchForEachHoweverManyThereAre() {
        long few = looks(200);
        assertTrue(few < 200 * 30, () -> few + " looks");
        long many = looks(2_000);
        assertTrue(many < 12 * few, () -> many + " looks for ten times " + few);
    }

    private static long looks(int items) {
        BoxGrid grid = new BoxGrid(items, 50, 0, 0, 1_000, items * 5.0);
        for (int i = 0; i < items; i++) {
            double x = i % 10 * 100;
            double y = i / 10 * 50;
            grid.put(i, x, y, x + 50, y + 50);
        }
        int[] found = new int[items];
        long looks = 0;
        for (int i = 0; i < items; i++) {
            double x = i % 10 * 100;
            double y = i / 10 * 50;
            looks += grid.near(x, y, x + 50, y + 50, found);
        }
        return looks;
    }

    @Test
    void holdsNoItemsToo() {
        assertEquals(0, new BoxGrid(0, 1, 0, 0, 0, 0).near(0, 0, 1, 1, new int[0]));
    }
}
