package secondbolt.draw.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import secondbolt.measure.Length;

/** A printer that is off is made good. */
class PrintCorrectionTest {
    /** 100 ÷ 97 = 1.0309…, worked by hand. */
    @Test
    void drawsLargerForAPrinterThatShrinks() {
        PrintCorrection correction =
                new PrintCorrection(Length.ofMillimetres(97), Length.ofMillimetres(100));
        assertEquals(1.030928, correction.factorAcross(), 1e-6);
        assertEquals(1.0, correction.factorAlong(), 0);
    }

    @Test
    void saysWhatItCorrects() {
        PrintCorrection correction =
                new PrintCorrection(Length.ofComputedMillimetres(99.4), Length.ofMillimetres(100));
        assertEquals(
                "Corrected for a printer that prints 100 mm as 99.4 mm across and 100 mm along.",
                correction.words());
    }

    @Test
    void knowsWhenTheMeasuringWentWrong() {
        Length good = Length.ofMillimetres(100);
        assertTrue(new PrintCorrection(Length.ofMillimetres(80), good).isSane());
        assertFalse(new PrintCorrection(Length.ofMillimetres(10), good).isSane());
        assertFalse(new PrintCorrection(good, Length.ofMillimetres(126)).isSane());
    }

    /** A turned page goes into the printer upright, so its width runs along the paper. */
    @Test
    void swapsItsFactorsOnATurnedPage() {
        PrintCorrection correction =
                new PrintCorrection(Length.ofMillimetres(97), Length.ofMillimetres(100));
        PageArea area = PageArea.of(Paper.A4, correction, PageArea.Way.TURNED);
        assertEquals(1.0, area.scaleAcross(), 0);
        assertEquals(1.030928, area.scaleAlong(), 1e-6);
        assertEquals(297, area.widthMm(), 0);
    }
}
