package secondbolt.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import secondbolt.task.Given;
import secondbolt.task.WorkStep;

/**
 * Fixing a child's cords. Source: EN 14682:2007 (fixed in the middle, none at the neck up to seven
 * years) and 16 CFR 1120 (at most 3 in free).
 */
class CordStepTest {
    private static Given of(String wearer, String cord) {
        return Given.of(
                "units: cm",
                "wearer: {age: " + wearer + "}",
                "pattern: {pieces: {front: {cut: 1, rectangle: [40, 50]}}}",
                "cords: {Kordel: " + cord + "}");
    }

    @Test
    void fixesAChildsCordInTheMiddle() {
        WorkStep cords = of("5", "{at: waist, free: 7 cm}").step("cords");
        assertTrue(cords.text().startsWith("Sew fast in the middle with a bar: Kordel."));
        assertEquals("hem", cords.follows().get(0).step());
        assertTrue(cords.checks().get(0).contains("7.6 cm (3 in)"), cords.checks().get(0));
    }

    @Test
    void sewsNothingOnThatMustNotBe() {
        assertFalse(of("5", "{at: neck, free: none}").names().contains("cords"));
        assertFalse(of("12", "{at: hood, free: 4 cm}").names().contains("cords"));
    }

    @Test
    void leavesAGrownPersonsCordAlone() {
        assertFalse(of("adult", "{at: waist, free: 30 cm}").names().contains("cords"));
    }
}
