package secondbolt.prepare.wash;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import secondbolt.cloth.Written;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.measure.Length;
import secondbolt.measure.Share;
import secondbolt.measure.Tape;
import secondbolt.textile.Cloth;
import secondbolt.textile.Prewash;

/** What a marked square tells of the washes of a cloth. */
class WashesTest {
    private static Change change(long before, long after) {
        return new Change(Length.ofMillimetres(before), Length.ofMillimetres(after));
    }

    private static Washes washes(String prewash) {
        Map<String, Cloth> cloths =
                Written.cloths("cm", "  sheet: {size: [100, 200], prewash: " + prewash + "}");
        return Washes.of((Prewash.Marked) cloths.get("sheet").prewash().orElseThrow());
    }

    /**
     * Source: web article on shrinkage sums, 20 → 17 is −15 %; the others derived by ISO 5077, (B −
     * A) / A.
     */
    @Test
    void tellsAChangeByIso5077() {
        assertEquals("−15 %", change(200, 170).words());
        assertEquals("−4 %", change(350, 336).words());
        assertEquals("+2 %", change(350, 357).words());
        assertEquals("−4 %", change(250, 240).words());
        assertEquals("−0.63 %", new Change(mm("240"), mm("238.5")).words());
        assertEquals("−4.6 %", new Change(mm("250"), mm("238.5")).words());
        assertEquals("no change", change(250, 250).words());
    }

    private static Length mm(String millimetres) {
        return Length.parse(millimetres + " mm", Tape.CENTIMETRE)
                .fold(length -> length, refusal -> Length.ZERO);
    }

    /** Derived: 250 → 240 → 238.5 mm is −0.63 % in the second wash, under 1 %: it has settled. */
    @Test
    void hasSettledWhenTheLastWashChangesItByLessThanAHundredth() {
        Washes washes = washes("{marked: [25, 25], now: [24, 24], then: [[23.85, 23.85]]}");
        assertTrue(washes.isSettled());
        assertFalse(washes.isMoving());
        assertEquals("−4.6 %", washes.together().across().map(Change::words).orElseThrow());
    }

    /** Derived: 250 → 240 → 236 mm is −1.67 % in the second wash: wash again. */
    @Test
    void isStillMovingWhenItsLastWashChangesItByMore() {
        Washes washes = washes("{marked: [25, 25], now: [24, 24], then: [[23.6, 24]]}");
        assertTrue(washes.isMoving());
        assertEquals("−1.67 %", washes.last().across().map(Change::words).orElseThrow());
    }

    /** Derived: of 100 mm the 2 mm that a tape can miss are 2 %, and no reading tells 1 %. */
    @Test
    void readsNoMoreOutOfASmallSquareThanATapeCan() {
        assertFalse(change(100, 98).isMoving());
        assertTrue(change(100, 97).isMoving());
        assertTrue(change(100, 97).isTooSmallToTell());
        assertFalse(change(250, 240).isTooSmallToTell());
    }

    /** Growing is a change like any other. */
    @Test
    void isMovingWhenItGrows() {
        assertTrue(change(500, 510).isMoving());
        assertFalse(change(500, 505).isMoving());
    }

    @Test
    void staysOpenWhereItWasNotMeasured() {
        Washes washes = washes("{marked: [50, 50], now: [49, unknown], then: [[49, unknown]]}");
        assertFalse(washes.isMoving());
        assertFalse(washes.isSettled());
        assertEquals(Optional.empty(), washes.together().along());
    }

    /** The finished cloth goes by the last measuring: 200 × 236 / 250 = 188.8 cm, derived. */
    @Test
    void leavesTheSizeOfTheLastMeasuring() {
        ClothResult sheet =
                Written.result(
                        "cm",
                        "  sheet:",
                        "    size: [100, 200]",
                        "    prewash: {marked: [25, 25], now: [24, 24], then: [[24, 23.6]]}");
        assertEquals(Optional.of(Share.ofRatio(944, 1000)), sheet.left().along());
        assertEquals(1888, sheet.finished().orElseThrow().size().along().millimetres(), 1e-9);
    }

    @Test
    void refusesAFurtherWashThatLeavesNextToNothing() {
        assertEquals(
                1,
                Written.mistakes(
                                "  sheet: {size: [100, 200], prewash: {marked: [50, 50],"
                                        + " now: [49, 49], then: [[4.8 cm, 48]]}}")
                        .size());
    }
}
