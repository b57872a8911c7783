package secondbolt.sewing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.sewing.seam.JoinLine;
import secondbolt.sewing.seam.SewnLine;

/** Seams added up by hand on drawn garments, in millimetres. */
class SewingLengthsTest {
    private static final double NEAR_MM = 0.01;

    private static SewingResult result(String... lines) {
        return Sewn.result("cm", lines).orElseThrow();
    }

    private static double mm(SewnLine line) {
        return line.all().orElseThrow().millimetres();
    }

    private static SewnLine join(SewingResult result, int number) {
        return result.lines().joins().get(number).line();
    }

    /** Six gores in a ring have six seams, and the band goes once round: 6 · 60, and 6 · 12 cm. */
    @Test
    void sewsSixGoresInARingWithSixSeams() {
        SewingResult skirt =
                result(
                        "pattern:",
                        "  seam allowance: {of: 1.5, included: false}",
                        "  pieces:",
                        "    gore: {cut: 6, panel: {top: 12, bottom: 30, along: 60}}",
                        "    band: {cut: {main: 1, interfacing: 1}, rectangle: [72, 6]}",
                        "  seams: [[gore.right, gore.left], [6 gore.waist, band.bottom]]");
        double sideMm = Math.hypot(600, 90);
        assertEquals(6, join(skirt, 0).times());
        assertEquals(6 * sideMm, mm(join(skirt, 0)), NEAR_MM);
        assertEquals(1, join(skirt, 1).times());
        assertEquals(720, mm(join(skirt, 1)), NEAR_MM);
    }

    /** Not closed to a ring, they have five; the maker says so. */
    @Test
    void sewsAsOftenAsIsTold() {
        SewingResult apron =
                result(
                        "pattern:",
                        "  pieces:",
                        "    gore: {cut: 6, panel: {top: 12, bottom: 30, along: 60}}",
                        "  seams: [[gore.right, gore.left]]",
                        "sewing: {except: [{on: gore.right, times: 5}]}");
        assertEquals(5, join(apron, 0).times());
        assertTrue(apron.lines().layers().isEmpty());
    }

    /** Four panels with four godets between them: each godet has two seams of 30 cm. */
    @Test
    void sewsGodetsOnBothSides() {
        SewingResult skirt =
                result(
                        "pattern:",
                        "  pieces:",
                        "    panel: {cut: 4, rectangle: [25, 30]}",
                        "    godet: {cut: 4, rectangle: [20, 30]}",
                        "  seams: [[panel.right, godet.left], [godet.right, panel.left]]");
        assertEquals(2400, mm(join(skirt, 0)) + mm(join(skirt, 1)), NEAR_MM);
    }

    /** A pair and a back on the fold have two sides; gathers are as long as what they go into. */
    @Test
    void sewsBothSidesAndLeavesGathersOut() {
        SewingResult top =
                result(
                        "pattern:",
                        "  pieces:",
                        "    Vorderteil: {cut: pair, rectangle: [30, 50]}",
                        "    Rücken: {cut: 1, fold: left, rectangle: [30, 50]}",
                        "    Rüsche: {cut: 1, rectangle: [180, 8]}",
                        "  seams:",
                        "    - [Vorderteil.right, Rücken.right]",
                        "    - {join: [Rüsche.top, 2 Vorderteil.bottom + 2 Rücken.bottom], gather:"
                                + " 1.5}");
        assertEquals(2, join(top, 0).times());
        assertEquals(1000, mm(join(top, 0)), NEAR_MM);
        assertEquals(1, join(top, 1).times());
        assertEquals(1200, mm(join(top, 1)), NEAR_MM);
    }

    /** A dart of 3 cm, 10 cm deep, on both halves: 2 · √(10² + 1.5²) cm. */
    @Test
    void sewsDartsOnEveryCopy() {
        SewingResult skirt =
                result(
                        "pattern:",
                        "  pieces:",
                        "    back:",
                        "      cut: 1",
                        "      fold: left",
                        "      rectangle: [30, 60]",
                        "      darts: [{edge: top, at: 12, takes: 3, long: 10}]");
        assertEquals(2 * Math.hypot(100, 15), mm(skirt.lines().darts().get(0)), NEAR_MM);
    }

    /** Two stands on the fold: one is sewn to the neck, the other turned in and sewn down. */
    @Test
    void sewsTheSecondLayerDown() {
        SewingResult neck =
                result(
                        "pattern:",
                        "  pieces:",
                        "    body: {cut: 1, fold: left, rectangle: [20, 40]}",
                        "    stand: {cut: {main: 2, interfacing: 1}, fold: left, rectangle: [20,"
                                + " 4]}",
                        "  seams: [[body.top, stand.bottom]]");
        assertEquals(2, join(neck, 0).times());
        JoinLine join = neck.lines().joins().get(0);
        assertTrue(join.isEnclosed());
        SewnLine layer = neck.lines().layers().get(0);
        assertEquals(400, mm(layer), NEAR_MM);
    }

    /** What the tape does not tell after an alteration is left out, never guessed. */
    @Test
    void leavesOutWhatIsNotKnown() {
        SewingResult taped =
                result(
                        "pattern:",
                        "  pieces:",
                        "    front: {cut: 2, box: [30, 60], edges: {Kante: 58}, lines: {skirt: 30}}",
                        "    back: {cut: 2, box: [30, 60], edges: {Kante: 58}, lines: {skirt: 30}}",
                        "  seams: [[front.Kante, back.Kante]]",
                        "alterations: [{lengthen: skirt, by: 2}]");
        assertTrue(taped.lines().joins().get(0).line().isOpen());
        assertEquals(2, taped.open().size(), "the seam and its finish");
        assertTrue(taped.totals().isEmpty());
    }

    /** An edge that nobody tells of is told, and in no sum. */
    @Test
    void tellsOfEdgesThatNobodyTellsOf() {
        SewingResult bag =
                result(
                        "pattern:",
                        "  pieces: {袋: {cut: 2, rectangle: [30, 40]}}",
                        "  seams: [[袋.left, 袋.left]]",
                        "sewing:",
                        "  also: [{what: 口, along: [袋.top], rows: 2}]");
        assertEquals(
                List.of("right", "bottom"),
                bag.lines().untold().stream().map(one -> one.edge().edge()).toList());
        assertEquals(2 * 400 + 2 * 300, bag.lines().untoldLength().millimetres(), NEAR_MM);
        assertEquals(2 * 2 * 300, mm(bag.lines().own().get(0)), NEAR_MM);
    }

    /** With nothing but a title there is nothing to sew. */
    @Test
    void isSilentWithoutAPattern() {
        assertTrue(Sewn.sheet("in").isEmpty());
    }
}
