package secondbolt.closure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import secondbolt.closure.fastening.Fastening;
import secondbolt.closure.placket.PlacketSpot;
import secondbolt.closure.row.ClosureResult;
import secondbolt.closure.row.FastenerMark;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/**
 * 500 plackets with seams and places to meet, made at random: whatever comes out, no hole lies on
 * bulk unless the sheet says that it is worked by hand. That the places are the best there are is
 * held against every row by {@link secondbolt.closure.spacing.SpacingSolver}'s own test.
 */
class RandomPlacketsTest {
    /** Half a step of the grid. */
    private static final double ROUNDING_MM = 0.26;

    private static final double FOOT_MM = 5;
    private static final double CLEAR_MM = 6;

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {11, 12, 13, 14, 15})
    void stitchesNoHoleOnBulk(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int byHand = 0;
        for (int i = 0; i < 100; i++) {
            ClosureResult result = random(random);
            byHand += result.row().byHand().size();
            result.marks().forEach(mark -> check(result, mark));
            for (PlacketSpot meet : result.plan().meets()) {
                boolean met = result.marks().stream().anyMatch(m -> m.fromTop().equals(meet.at()));
                assertEquals(met, !result.row().unmet().contains(meet), result.toString());
            }
        }
        assertTrue(byHand > 0, "some must be worked by hand, or nothing was tried");
    }

    private static void check(ClosureResult result, FastenerMark mark) {
        double at = mark.fromTop().millimetres();
        double from = (mark.isUpright() ? mark.start().millimetres() : at - 2.5) - FOOT_MM;
        double to = (mark.isUpright() ? mark.end().millimetres() : at + 2.5) + FOOT_MM;
        for (PlacketSpot bulk : result.plan().bulks()) {
            double above = bulk.at().millimetres() - CLEAR_MM;
            double below = bulk.at().millimetres() + CLEAR_MM;
            boolean isOn = from < below - ROUNDING_MM && to > above + ROUNDING_MM;
            assertTrue(!isOn || mark.byHand(), () -> mark + " on " + bulk + " in " + result);
        }
    }

    private static ClosureResult random(SplittableRandom random) {
        int length = random.nextInt(150, 700);
        int count = random.nextInt(2, Math.max(3, length / 40));
        Written placket =
                Written.mm(length)
                        .of(
                                Written.buttons(
                                        Length.ofMillimetres(random.nextInt(8, 16)),
                                        Length.ofMillimetres(2),
                                        random.nextBoolean()
                                                ? Fastening.Holes.UPRIGHT
                                                : Fastening.Holes.LEVEL))
                        .count(count)
                        .from(random.nextInt(8, 20), random.nextInt(8, 40))
                        .bulk(spots(random, length, random.nextInt(0, 4), "seam"))
                        .meet(spots(random, length, random.nextInt(0, 3), "meet"));
        if (random.nextInt(3) == 0) {
            placket.firstBetween(8, 20);
        }
        if (random.nextInt(4) == 0) {
            placket.largestGap(random.nextInt(60, 120));
        }
        return placket.result(Tape.CENTIMETRE);
    }

    private static PlacketSpot[] spots(SplittableRandom random, int length, int count, String why) {
        return IntStream.range(0, count)
                .mapToObj(i -> Written.spot(random.nextInt(25, length - 45), why + " " + i))
                .toArray(PlacketSpot[]::new);
    }
}
