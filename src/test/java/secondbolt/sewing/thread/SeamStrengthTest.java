package secondbolt.sewing.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import secondbolt.measure.Length;
import secondbolt.measure.Share;

/** Thread maker's booklet, pages 32 and 33; strengths in pounds to the inch of seam. */
class SeamStrengthTest {
    private static Share inch(int stitches, String thread) {
        return SeamStrength.lockstitch(Length.ofInches(1, stitches)).times(Share.ofDecimal(thread));
    }

    @Test
    void isStitchesTimesThread() {
        assertEquals(Share.ofRatio(60, 1), inch(10, "4"));
        assertEquals(
                Share.ofRatio(68, 1),
                SeamStrength.chainstitch(Length.ofInches(1, 10)).times(Share.ofRatio(4, 1)));
    }

    /** Of a needle thread of 4.0 and a bobbin thread of 1.8 lb the weaker counts: 27, not 60. */
    @Test
    void isThatOfTheWeakerThread() {
        assertEquals(Share.ofRatio(27, 1), inch(10, "1.8"));
    }

    @Test
    void growsWithTheStitchesInAnInch() {
        String[] strong = {"23.4", "31.2", "39", "46.8"};
        String[] weak = {"19.8", "26.4", "33", "39.6"};
        for (int i = 0; i < strong.length; i++) {
            assertEquals(Share.ofDecimal(strong[i]), inch(6 + 2 * i, "2.6"));
            assertEquals(Share.ofDecimal(weak[i]), inch(6 + 2 * i, "2.2"));
        }
    }
}
