package secondbolt.app.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

/** What is told while a lay is searched for. */
class LayProgressTest {
    private final StringWriter told = new StringWriter();

    private LayProgress progress(boolean isTold) {
        return new LayProgress(new PrintWriter(told), isTold);
    }

    @Test
    void tellsHowFarItIsAndTheBestSoFar() {
        LayProgress progress = progress(true);
        assertTrue(progress.goOn(0, 0));
        assertEquals("\r  laying [....................] ", told.toString());
        assertTrue(progress.goOn(0.5, 1234));
        assertTrue(
                told.toString().endsWith("\r  laying [##########..........] best so far 123.4 cm "),
                told.toString());
    }

    @Test
    void wipesItsLineAtTheEnd() {
        LayProgress progress = progress(true);
        progress.goOn(0.5, 1234);
        progress.goOn(1, 1234);
        assertTrue(told.toString().endsWith("\r" + " ".repeat(60) + "\r"), told.toString());
    }

    @Test
    void tellsNothingWhereNobodyLooksOn() {
        assertTrue(progress(false).goOn(0.5, 1234));
        assertEquals("", told.toString());
    }

    @Test
    void tellsOfOneSearchAtATime() throws InterruptedException {
        LayProgress progress = progress(true);
        progress.goOn(0.1, 1000);
        String before = told.toString();
        Thread other = new Thread(() -> progress.goOn(0.9, 2000));
        other.start();
        other.join();
        assertEquals(before, told.toString());
        progress.goOn(1, 1000);
        Thread next = new Thread(() -> progress.goOn(0.9, 2000));
        next.start();
        next.join();
        assertTrue(told.toString().contains("best so far 200.0 cm"), told.toString());
    }
}
