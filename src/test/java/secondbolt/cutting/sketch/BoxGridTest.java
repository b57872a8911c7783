package secondbolt.cutting.sketch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import secondbolt.shape.Box;

/** The answers of a look at every box. */
class BoxGridTest {
    private static Box box(SplittableRandom random) {
        // Sides on whole and half squares of the grid are the ones that could fall between two.
        return new Box(
                random.nextInt(-40, 40) / 2.0,
                random.nextInt(-40, 40) / 2.0,
                random.nextInt(0, 30) / 2.0,
                random.nextInt(0, 30) / 2.0);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void findsWhatALookAtEveryBoxFinds(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        BoxGrid grid = new BoxGrid();
        List<Box> all = new ArrayList<>();
        for (int i = 0; i < 300; i++) {
            Box asked = box(random);
            assertEquals(
                    all.stream().anyMatch(asked::overlaps), grid.overlaps(asked), asked.toString());
            if (i % 10 == 0) {
                Box added = box(random);
                all.add(added);
                grid.add(added);
            }
        }
    }

    @Test
    void takesBoxesThatOnlyTouchForClear() {
        BoxGrid grid = new BoxGrid();
        grid.add(new Box(0, 0, 4, 4));
        assertFalse(grid.overlaps(new Box(4, 0, 4, 4)));
        assertTrue(grid.overlaps(new Box(3.999, 0, 4, 4)));
    }
}
