package secondbolt.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The answers of {@link Outline#contains}, sooner. */
class InsideTestTest {
    /** Corners on whole millimetres, so that points also fall on heights of corners and edges. */
    private static Point point(SplittableRandom random) {
        return new Point(random.nextInt(-20, 21), random.nextInt(-20, 21));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void answersAsTheOutlineDoes(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < 3 + seed * 40; i++) {
            corners.add(point(random));
        }
        Outline outline = new Outline(corners);
        InsideTest inside = new InsideTest(outline);
        for (int i = 0; i < 2000; i++) {
            Point at =
                    i % 2 == 0
                            ? point(random).moved(random.nextDouble(), random.nextDouble())
                            : point(random);
            assertEquals(outline.contains(at), inside.contains(at), at.toString());
        }
    }

    /** By eye. */
    @ParameterizedTest(name = "moved by {0}")
    @ValueSource(doubles = {0, 0.1, -1234.56789, 1e6})
    void tellsInsideFromOutside(double movedMm) {
        InsideTest square = new InsideTest(Outline.of(new Box(movedMm, movedMm, 10, 10)));
        assertTrue(square.contains(new Point(movedMm + 5, movedMm + 9.9)));
        assertFalse(square.contains(new Point(movedMm + 5, movedMm + 10.1)));
        assertFalse(square.contains(new Point(movedMm + 5, movedMm - 0.1)));
        assertFalse(square.contains(new Point(movedMm - 0.1, movedMm + 5)));
        assertFalse(square.contains(new Point(movedMm + 10.1, movedMm + 5)));
    }

    @ParameterizedTest(name = "{0} mm high")
    @ValueSource(doubles = {0, 1e-9})
    void findsNothingInsideALine(double highMm) {
        InsideTest line = new InsideTest(Outline.of(new Box(0, 0, 10, highMm)));
        assertFalse(line.contains(new Point(5, 1)));
        assertFalse(line.contains(new Point(5, -1)));
    }
}
