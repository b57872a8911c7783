package secondbolt.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import secondbolt.shape.Box;

/** Pieces that share a page must neither overlap nor reach over it, nor be lost. */
class PagePackingTest {
    private static Box frame(double acrossMm, double alongMm) {
        return new Box(0, 0, acrossMm, alongMm);
    }

    @Test
    void turnsAPieceWhereItThenFits() {
        // Derived: 186 mm across; 100 mm is taken, 82 mm are left beside it after the gap.
        List<PagePacking.SharedPage> pages =
                PagePacking.small(List.of(frame(100, 150), frame(250, 80)));
        assertEquals(1, pages.size());
        assertTrue(pages.get(0).pieces().get(1).spot().isTurned());
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void losesNothingAndLaysNothingOverAnother(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Box> frames = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            frames.add(frame(random.nextDouble(10, 186), random.nextDouble(10, 254)));
        }
        List<PagePacking.SharedPage> small = PagePacking.small(frames);
        Stream.concat(small.stream(), Stream.of(PagePacking.large(frames)))
                .forEach(PagePackingTest::isSound);
        TreeSet<Integer> numbers = new TreeSet<>();
        small.forEach(page -> page.pieces().forEach(laid -> numbers.add(laid.number())));
        assertEquals(40, numbers.size());
        assertEquals(40, small.stream().mapToInt(page -> page.pieces().size()).sum());
        assertEquals(40, PagePacking.large(frames).pieces().size());
    }

    private static void isSound(PagePacking.SharedPage page) {
        List<PagePacking.Laid> laid = page.pieces();
        for (int i = 0; i < laid.size(); i++) {
            Box box = laid.get(i).spot().box();
            assertTrue(box.leftMm() >= 0 && box.rightMm() <= page.acrossMm() + 1e-9, "across");
            assertTrue(box.topMm() >= 0 && box.bottomMm() <= page.alongMm() + 1e-9, "along");
            for (int j = 0; j < i; j++) {
                assertFalse(box.overlaps(laid.get(j).spot().box()), i + " over " + j);
            }
        }
    }
}
