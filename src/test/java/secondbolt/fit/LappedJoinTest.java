package secondbolt.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A band that runs past what it is sewn to, so that it laps when it is closed. */
class LappedJoinTest {
    /** A skirt of two panels, 36 cm at the top each, and a band. */
    private static WrittenPattern skirt(double band, String join) {
        return WrittenPattern.cm(
                """
                wearer: {age: adult, measurements: {hip: 98}}
                pattern:
                  pieces:
                    skirt: {cut: 2, panel: {top: 36, bottom: 50, along: 60}}
                    strip: {cut: 1, rectangle: [%s, 8]}
                  seams: [%s]
                  openings: [{what: waist, edges: strip.bottom, over: hips}]
                """
                        .formatted(band, join));
    }

    private static final String LAPS = "{join: [2 skirt.waist, strip.bottom], laps: 3}";

    /** 36 + 36 = 75 − 3. */
    @Test
    void meetsUpToTheLap() {
        assertEquals(List.of(), skirt(75, LAPS).mistakes());
        assertEquals(List.of(), skirt(75, LAPS).coded("seam-apart-as-drawn"));
    }

    /** 77 − 3 is 2 cm more than 72. */
    @Test
    void saysBothAmountsAndTheLapWhereItDoesNotMeet() {
        String told = skirt(77, LAPS).coded("seam-apart-as-drawn").get(0);
        assertTrue(
                told.contains("with 30 mm of lap past it for the bottom edge of the strip of 77 cm")
                        && told.contains("it should be 74 cm: too short by 20 mm"),
                told);
        assertTrue(told.contains("write `laps: 5` on this join"), told);
    }

    @Test
    void offersTheLapWhereTheLongerSideIsABand() {
        for (String join :
                List.of("[2 skirt.waist, strip.bottom]", "[strip.bottom, 2 skirt.waist]")) {
            String told = skirt(75, join).coded("seam-apart-as-drawn").get(0);
            assertTrue(
                    told.contains(
                            "and the band laps by that much, write `{join: [2 skirt.waist,"
                                    + " strip.bottom], laps: 3}`."),
                    told);
        }
        assertTrue(
                skirt(70, "[2 skirt.waist, strip.bottom]")
                        .coded("seam-apart-as-drawn")
                        .get(0)
                        .contains("write `ease` or `gather`."));
    }

    @Test
    void saysThatTheBandIsWrittenSecond() {
        String told =
                skirt(75, "{join: [strip.bottom, 2 skirt.waist], laps: 3}")
                        .coded("seam-apart-as-drawn")
                        .get(0);
        assertTrue(
                told.contains(
                        "write what laps second: `{join: [2 skirt.waist, strip.bottom], laps: 3}`"),
                told);
    }

    /** Gathered 1.5 to 1 into 51 − 3 of the band: 48 · 1.5 = 72. Eased in by 2: 73 − 3 + 2. */
    @Test
    void gathersAndEasesUpToTheLap() {
        String join = "{join: [2 skirt.waist, strip.bottom], %s, laps: 3}";
        assertEquals(
                List.of(), skirt(51, join.formatted("gather: 1.5")).coded("seam-apart-as-drawn"));
        assertEquals(List.of(), skirt(73, join.formatted("ease: 2")).coded("seam-apart-as-drawn"));
    }

    /** 72 / (51 − 3) = 1.5; of 72 / 1.8 = 40 the lap is 11. */
    @Test
    void tellsTheGathersThatWouldMeet() {
        String join = "{join: [2 skirt.waist, strip.bottom], gather: %s%s}";
        assertTrue(
                skirt(51, join.formatted("1.8", ", laps: 3"))
                        .coded("seam-apart-as-drawn")
                        .get(0)
                        .contains(
                                "if they are right, write `gather: 1.5` on this join, or write"
                                        + " `laps: 11` on this join."));
        // 72 / 1.2 = 60 is longer than the band: no lap would do.
        String none =
                skirt(51, join.formatted("1.2", ", laps: 3")).coded("seam-apart-as-drawn").get(0);
        assertTrue(none.contains("if they are right, write `gather: 1.5` on this join."), none);
        // Without a lap 72 / 51.
        String plain = skirt(51, join.formatted("1.8", "")).coded("seam-apart-as-drawn").get(0);
        assertTrue(plain.contains("if they are right, write `gather: 1.41` on this join."), plain);
        String nothing = skirt(90, join.formatted("1.8", "")).coded("seam-apart-as-drawn").get(0);
        assertTrue(nothing.contains("there is nothing to gather"), nothing);
    }

    /** What laps does not open: 75 − 3 = 72, too little for hips of 98; half of 98 − 72 is 13. */
    @Test
    void opensWithoutItsLap() {
        String told = skirt(75, LAPS).coded("opening-too-small").get(0);
        assertTrue(told.contains("opens to 72 cm"), told);
    }
}
