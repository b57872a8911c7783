package secondbolt.supply.left;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.supply.Written;
import secondbolt.worksheet.Worksheet;

class LeftOverTest {
    private static final String[] BAG = {
        "cloth: {sheet: {size: [120, 150], prewash: done, flaws: none}}",
        "lay: {effort: quick, new cloth: {width: 150, price: 10}}",
        "currency: EUR",
        "pattern:",
        "  rights: mine",
        "  seam allowance: {of: 1, included: false}",
        "  pieces: {bag: {cut: 2, rectangle: [30, 40]}}"
    };

    /**
     * Derived: 120 × 150 cm are 1.8 m²; two of 32 × 42 cm use 0.2688 m². New cloth of 150 cm takes
     * 42 cm, bought as 0.45 m, at 10 a metre.
     */
    @Test
    void tellsWhatIsRecoveredUsedAndLeft() {
        Worksheet sheet = Written.ALONE.sheet("cm", BAG).orElseThrow();
        String figures = sheet.figures().asMap().get("yardage").toString();
        assertTrue(figures.contains("recovered_mm2=1800000.0"), figures);
        assertTrue(figures.contains("used_mm2=268800.0"), figures);
        assertTrue(figures.contains("left_mm2=1531200.0"), figures);
        assertTrue(sheet.blocks().toString().contains("4.50 EUR"), sheet.blocks().toString());
    }

    @Test
    void nameWhatARectangleIsLargeEnoughFor() {
        assertEquals(
                List.of(RemnantUse.POCKET, RemnantUse.TRIALS),
                RemnantUse.of(new Box(0, 0, 230, 200), Tape.CENTIMETRE));
        assertEquals(
                List.of(RemnantUse.STRAIGHT_STRIPS),
                RemnantUse.of(new Box(0, 0, 60, 900), Tape.CENTIMETRE));
        assertEquals(List.of(), RemnantUse.of(new Box(0, 0, 90, 140), Tape.CENTIMETRE));
    }

    /** 8 by 9 inches, each to the sixteenth: neither is worked out from the other. */
    @Test
    void measuresByTheMakersTape() {
        Box box = new Box(0, 0, 8 * 25.4, 9 * 25.4);
        assertTrue(RemnantUse.of(box, Tape.INCH).contains(RemnantUse.POCKET));
        assertTrue(!RemnantUse.of(box, Tape.CENTIMETRE).contains(RemnantUse.POCKET));
    }
}
