package secondbolt.sewing.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import secondbolt.measure.Length;
import secondbolt.measure.Share;

class StitchGeometryTest {
    private static final double NEAR = 5e-4;

    /** Article with geometric formulae: T = 0.01 in, 10 stitches an inch, 2.2 in for an inch. */
    @Test
    void measuresALockstitchAsPublished() {
        Length stitch = Length.ofInches(1, 10);
        Length thick = Length.ofInches(1, 100);
        assertEquals(Share.ofDecimal("2.2"), StitchGeometry.lockstitch(stitch, thick));
    }

    /** Derived: T = 0.1 cm; 3 stitches to the centimetre take 2.6, 4.5 take 2.9, 11.5 % more. */
    @Test
    void takesMoreForShorterStitches() {
        Length thick = Length.ofMillimetres(1);
        Share three = StitchGeometry.lockstitch(Length.ofMillimetres(10).dividedBy(3), thick);
        Share more = StitchGeometry.lockstitch(Length.ofMillimetres(20).dividedBy(9), thick);
        assertEquals(Share.ofDecimal("2.6"), three);
        assertEquals(Share.ofDecimal("2.9"), more);
        assertEquals(0.115, more.fraction() / three.fraction() - 1, NEAR);
    }

    /**
     * Thread maker's technical bulletin with a machine maker's chart: 8 stitches an inch, T =
     * 0.055, 0.060, 0.065, 0.070, 0.075 in.
     */
    @Test
    void agreesWithTheChartOfAMachineMaker() {
        Length stitch = Length.ofInches(1, 8);
        String[] expected = {"4.88", "4.96", "5.04", "5.12", "5.2"};
        for (int i = 0; i < expected.length; i++) {
            Length thick = Length.ofInches(55 + 5 * i, 1000);
            assertEquals(Share.ofDecimal(expected[i]), StitchGeometry.chainstitch(stitch, thick));
        }
    }

    /** Derived from the published form: W = 0.2 in, T = 0.02 in, 10 an inch: 11.8. */
    @Test
    void measuresAnOverlock() {
        assertEquals(
                Share.ofDecimal("11.8"),
                StitchGeometry.overlock(
                        Length.ofInches(1, 10), Length.ofInches(1, 5), Length.ofInches(1, 50)));
    }

    /** Derived: depth and stitch 4 mm, 1 mm thick: (2 √20 + 1) ÷ 4 = 2.49. */
    @Test
    void measuresOvercasting() {
        Length four = Length.ofMillimetres(4);
        double ratio = StitchGeometry.overcast(four, four, Length.ofMillimetres(1)).fraction();
        assertEquals(2.486, ratio, NEAR);
    }

    /** Derived: 1 + t ÷ s, and 3 + 2t ÷ s; 3 mm stitches, 1 mm thick. */
    @Test
    void measuresHandStitches() {
        Length three = Length.ofMillimetres(3);
        Length one = Length.ofMillimetres(1);
        assertEquals(Share.ofRatio(4, 3), StitchGeometry.running(three, one));
        assertEquals(Share.ofRatio(11, 3), StitchGeometry.backstitch(three, one));
    }
}
