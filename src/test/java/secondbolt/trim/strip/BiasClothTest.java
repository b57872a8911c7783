package secondbolt.trim.strip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import secondbolt.measure.Length;
import secondbolt.shape.Box;

/** Strips on the bias of a rectangle. */
class BiasClothTest {
    private static final double INCH = 25.4;
    private static final Length QUARTER = Length.ofInches(1, 4);

    private static Length inches(long inches) {
        return Length.ofInches(inches, 1);
    }

    private static double in(Length length) {
        return Math.rint(length.millimetres() / INCH * 10) / 10;
    }

    /**
     * Derived: 51 × 31 in, of which whole strips of 2½ in use 20 in along the selvage: 20 ÷ (2½ ×
     * √2) is 5 whole ones of 31 × √2 = 43.8 in, 219 in, 53 short of 272 before joins; the triangle
     * at one corner gives 38.8 and 33.8, that at the other, with what is left of the 20 in, 42.1.
     */
    @Test
    void countsWholeStripsBeforeTheEndTriangles() {
        BiasCloth cloth = BiasCloth.of(new Box(0, 0, 51 * INCH, 31 * INCH));
        StripCut cut =
                cloth.take(new StripWish(Length.ofInches(5, 2), inches(272), inches(4)), QUARTER)
                        .cut();
        assertEquals(5, cut.whole());
        assertEquals(43.8, in(cut.strips().get(0)));
        assertEquals(219.2, in(cut.wholeTogether()));
        assertEquals(52.8, in(cut.wholeLack().orElseThrow()));
        assertEquals(42.1, in(cut.strips().get(5)));
        assertEquals(38.8, in(cut.strips().get(6)));
        assertEquals(6, cut.joins());
        assertEquals(0.7, in(cut.perJoin()));
        assertTrue(cut.lack().isEmpty());
        StripCut all =
                cloth.take(new StripWish(Length.ofInches(5, 2), inches(9000), inches(4)), QUARTER)
                        .cut();
        assertTrue(all.strips().stream().anyMatch(strip -> in(strip) == 33.8));
        assertTrue(all.lack().isPresent());
    }

    /** What a binding took, the next one does not have. */
    @Test
    void leavesTheRestForTheNextBinding() {
        BiasCloth cloth = BiasCloth.of(new Box(0, 0, 510, 310));
        StripWish wish =
                new StripWish(
                        Length.ofMillimetres(40),
                        Length.ofMillimetres(1200),
                        Length.ofMillimetres(100));
        BiasCloth.Taken first = cloth.take(wish, Length.ofMillimetres(6));
        StripCut second = first.rest().take(wish, Length.ofMillimetres(6)).cut();
        assertEquals(3, first.cut().whole());
        assertEquals(0, second.whole());
    }

    @Test
    void cutsNothingOfALeftoverNarrowerThanTheStrip() {
        StripCut cut =
                BiasCloth.of(new Box(0, 0, 300, 0))
                        .take(
                                new StripWish(
                                        Length.ofMillimetres(24),
                                        Length.ofMillimetres(100),
                                        Length.ofMillimetres(50)),
                                Length.ofMillimetres(6))
                        .cut();
        assertTrue(cut.strips().isEmpty());
        assertEquals(Length.ofMillimetres(100), cut.lack().orElseThrow());
    }

    static LongStream seeds() {
        return LongStream.range(0, 200);
    }

    /** Strips never take more cloth than there is, and never reach beyond its diagonal. */
    @ParameterizedTest
    @MethodSource("seeds")
    void fitIntoTheirCloth(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Box box = new Box(0, 0, random.nextInt(1, 1500), random.nextInt(1, 1500));
        Length width = Length.ofMillimetres(random.nextInt(5, 120));
        StripCut cut =
                BiasCloth.of(box)
                        .take(
                                new StripWish(width, Length.ofMillimetres(99999), width),
                                Length.ofMillimetres(6))
                        .cut();
        double areaMm2 =
                cut.strips().stream()
                        .mapToDouble(strip -> strip.millimetres() * width.millimetres())
                        .sum();
        double longestMm = Math.min(box.widthMm(), box.heightMm()) * Math.sqrt(2);
        assertTrue(areaMm2 <= box.areaMm2() + 1e-3, areaMm2 + " of " + box);
        assertTrue(cut.strips().stream().allMatch(s -> s.millimetres() <= longestMm + 1e-6));
    }
}
