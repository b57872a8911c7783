package secondbolt.trim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import secondbolt.measure.Length;
import secondbolt.task.Amount;
import secondbolt.task.Given;
import secondbolt.task.Need;

/** Sums derived, by hand. */
class TrimNeedsTest {
    private static Need need(Given given, String item) {
        return given.all().needs().stream()
                .filter(need -> need.item().startsWith(item))
                .findFirst()
                .orElseThrow(() -> new AssertionError(given.needs().toString()));
    }

    /** 14 cm and 2.5 cm of overlap are 16.5 cm; two wrists take 33 cm. */
    @Test
    void buysAnElasticForEachWrist() {
        Given given =
                Given.of(
                        "units: cm",
                        "pattern: {pieces: {sleeve: {cut: pair, rectangle: [24, 40]}}}",
                        "elastic: {wrist: {width: 6 mm, round: wrist, loop: 14, on: sleeve.bottom}}");
        Need elastic = need(given, "elastic");
        assertEquals(new Amount.Run(Length.ofMillimetres(330)), elastic.amount());
        assertTrue(elastic.why().contains("one loop for each of 2"), elastic.why());
    }

    /** A band of 7 cm and twice 1.5 cm takes 10 cm; 10 cm more are fused to a scrap. */
    @Test
    void buysInterfacingForThePressTest() {
        String[] lines = {
            "units: cm",
            "lay: {effort: quick}",
            "pattern: {seam allowance: {of: 1.5, included: false}, pieces: {band: {cut: {main: 1,"
                    + " interfacing: 1}, rectangle: [81, 7]}}}",
            "interfacing: {kind: fusible, width: 90}"
        };
        Need fusible = need(Given.of(lines), "fusible interfacing");
        assertEquals(new Amount.Run(Length.ofMillimetres(200)), fusible.amount());
        lines[3] = "interfacing: {kind: sewn-in, width: 90}";
        Need sewnIn = need(Given.of(lines), "sewn-in interfacing");
        assertEquals(new Amount.Run(Length.ofMillimetres(100)), sewnIn.amount());
    }
}
