package secondbolt.wearer;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import secondbolt.measure.Tape;

/** How a measurement is taken, on the tape that takes it. */
class BodyMeasureTest {
    /**
     * Source: EN 13402-1, 2 cm below the Adam's apple; three quarters of an inch on an inch tape.
     */
    @Test
    void isToldOnTheTapeOfTheFile() {
        assertTrue(BodyMeasure.NECK.measureIt(Tape.CENTIMETRE).contains("the tape 2 cm below"));
        assertTrue(BodyMeasure.NECK.measureIt(Tape.INCH).contains("the tape ¾ in below"));
        for (BodyMeasure measure : BodyMeasure.values()) {
            String inch = measure.measureIt(Tape.INCH);
            assertFalse(inch.matches("(?s).*\\d ?(mm|cm)\\b.*"), inch);
            assertFalse(inch.contains("%"), inch);
        }
    }
}
