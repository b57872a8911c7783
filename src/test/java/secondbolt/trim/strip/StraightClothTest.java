package secondbolt.trim.strip;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import secondbolt.measure.Length;
import secondbolt.shape.Box;

/** Strips with the threads. */
class StraightClothTest {
    private static StraightCloth.Taken take(long needMm) {
        return new StraightCloth(new Box(0, 0, 800, 130))
                .take(
                        new StripWish(
                                Length.ofMillimetres(40),
                                Length.ofMillimetres(needMm),
                                Length.ofMillimetres(100)));
    }

    /** Derived: 800 + 760, for the join takes its width; the third would be the last of 130 mm. */
    @Test
    void joinsOnTheSlant() {
        assertEquals(1, take(800).cut().strips().size());
        assertEquals(2, take(801).cut().strips().size());
        assertEquals(Length.ofMillimetres(1560), take(1560).cut().joined());
        assertEquals(3, take(1561).cut().strips().size());
        assertEquals(Length.ofMillimetres(80), take(2400).cut().lack().orElseThrow());
    }

    @Test
    void leavesTheRest() {
        assertEquals(new Box(0, 80, 800, 50), take(1000).rest());
    }
}
