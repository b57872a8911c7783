package secondbolt.hem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.Yaml;
import secondbolt.hem.plan.Hem;
import secondbolt.hem.turned.HemEdge;
import secondbolt.hem.turned.HemLevel;
import secondbolt.hem.turned.HemResult;
import secondbolt.measure.Length;

class HemCalculationTest {
    /** The examples give hundredths of a millimetre. */
    private static final double AS_GIVEN_MM = 0.01;

    private static final double AS_GIVEN_PERCENT = 0.01;

    @TestFactory
    Stream<DynamicTest> comesToWhatTheCircleSays() throws Exception {
        try (InputStream in =
                HemCalculationTest.class.getResourceAsStream("/examples/hems/surplus.yaml")) {
            List<Map<String, Object>> examples = new Yaml().load(in);
            assertTrue(examples.size() >= 8);
            return examples.stream()
                    .map(e -> DynamicTest.dynamicTest(e.get("source").toString(), () -> check(e)));
        }
    }

    private static void check(Map<String, Object> example) {
        DumperOptions flow = new DumperOptions();
        flow.setDefaultFlowStyle(DumperOptions.FlowStyle.FLOW);
        flow.setWidth(10_000);
        String piece = new Yaml(flow).dump(example.get("piece")).strip();
        String hem = new Yaml(flow).dump(example.get("hem")).strip();
        String on = "skirt." + example.getOrDefault("edge", "hem");
        HemEdge edge =
                Written.of(
                                "cm",
                                "pattern: {pieces: {skirt: " + piece + "}}",
                                "hems: {hem: "
                                        + hem.replaceFirst("\\{", "{on: [" + on + "], ")
                                        + "}")
                        .results()
                        .get(0)
                        .edges()
                        .get(0);
        assertEquals(
                number(example, "all_round_mm"),
                edge.surplusAllRound().orElseThrow().millimetres(),
                AS_GIVEN_MM);
        assertEquals(
                number(example, "percent"), 100 * edge.fullness().orElseThrow(), AS_GIVEN_PERCENT);
        assertEquals(
                example.containsKey("radius_mm"),
                edge.turned().orElseThrow().radiusMm().isPresent());
        edge.turned()
                .orElseThrow()
                .radiusMm()
                .ifPresent(r -> assertEquals(number(example, "radius_mm"), r, AS_GIVEN_MM));
        double takesIn = ((Number) example.getOrDefault("takes_in_mm", 0)).doubleValue();
        assertEquals(takesIn, edge.takesInAtStart().millimetres(), AS_GIVEN_MM);
        assertEquals(takesIn, edge.takesInAtEnd().millimetres(), AS_GIVEN_MM);
        assertEquals(example.get("advice"), edge.handling().words());
    }

    private static double number(Map<String, Object> from, String key) {
        return ((Number) from.get(key)).doubleValue();
    }

    /** An outline that includes its allowances lies outside the fold by all that is turned up. */
    @Test
    void findsTheFoldInsideAnOutlineThatIncludesItsAllowance() {
        HemEdge edge =
                Written.of(
                                "cm",
                                "pattern:",
                                "  seam allowance: {of: 1.5, included: true}",
                                "  pieces: {skirt: {cut: 1, ring: {inner: 20, outer: 80, turn:"
                                        + " 90}}}",
                                "hems: {hem: {on: [skirt.hem], depth: 4.4, turned: twice}}")
                        .results()
                        .get(0)
                        .edges()
                        .get(0);
        // 4.4 cm and a turn of 6 mm: the fold has the radius 75 cm, less a seam at either end.
        assertEquals(750, edge.turned().orElseThrow().radiusMm().orElseThrow(), 0.05);
        double foldMm = Math.PI / 2 * 750 - 30;
        assertEquals(foldMm, edge.fold().millimetres(), 0.1);
        // Its seams run beside its straight sides: what is sewn down has the radius 79.4 cm, what
        // it
        // lands on 70.6 cm, and both lose a seam at either end.
        assertEquals(Math.PI / 2 * 88, edge.surplus().orElseThrow().millimetres(), 0.1);
    }

    /**
     * A gore of 14 to 50 cm over 80 cm leans 18 in 80, 0.225. Its fold lies 5 cm above the cut
     * edge: 50 − 2 · 5 · 0.225 − 2 · 1.5 · √(1 + 0.225²) = 44.675 cm; what is turned up is 2 · 5 ·
     * 0.225 longer than the fold, what it lands on as much shorter: 4.5 cm to ease in.
     */
    @Test
    void measuresAnIncludedHemBetweenItsSeams() {
        HemEdge edge =
                Written.of(
                                "cm",
                                "pattern:",
                                "  seam allowance: {of: 1.5, included: true}",
                                "  pieces: {gore: {cut: 6, panel: {top: 14, bottom: 50, along:"
                                        + " 80}}}",
                                "hems: {hem: {on: [gore.hem], depth: 5, turned: once}}")
                        .results()
                        .get(0)
                        .edges()
                        .get(0);
        double foldMm = 500 - 100 * 0.225 - 30 * Math.hypot(1, 0.225);
        assertEquals(446.75, foldMm, 0.01);
        assertEquals(foldMm, edge.fold().millimetres(), 0.02);
        assertEquals(foldMm + 22.5, edge.cutEdge().orElseThrow().millimetres(), 0.02);
        assertEquals(foldMm - 22.5, edge.landsOn().orElseThrow().millimetres(), 0.02);
        assertEquals(45, edge.surplus().orElseThrow().millimetres(), 0.02);
        assertEquals(HemEdge.Handling.TOO_FULL, edge.handling());
    }

    /**
     * Narrowing to its hem, and drawn half: the seam at one side only, and what is sewn is short.
     */
    @Test
    void measuresAnIncludedHemOfANarrowingHalf() {
        HemEdge edge =
                Written.of(
                                "cm",
                                "pattern:",
                                "  seam allowance: {of: 1.5, included: true}",
                                "  pieces:",
                                "    leg: {cut: 2, fold: centre, outline: [{start: [0, 0]}, {edge:"
                                        + " top, to: [30, 0]}, {edge: side, to: [20, 50]}, {edge:"
                                        + " hem, to: [0, 50]}, {edge: centre, to: start}]}",
                                "hems: {hem: {on: [leg.hem], depth: 4, turned: once}}")
                        .results()
                        .get(0)
                        .edges()
                        .get(0);
        double foldMm = 200 + 40 * 0.2 - 15 * Math.hypot(1, 0.2);
        assertEquals(foldMm, edge.fold().millimetres(), 0.02);
        assertEquals(-16, edge.surplus().orElseThrow().millimetres(), 0.02);
        assertEquals(HemEdge.Handling.SHORT, edge.handling());
    }

    /** 4-H bulletin L-87: every 3 in; a fold of 489.7 cm takes 66 marks 7.5 cm apart. */
    @Test
    void countsTheMarksOfTheLevel() {
        HemResult result =
                Written.of(
                                "cm",
                                "pattern: {pieces: {skirt: {cut: 4, ring: {inner: 11.94, outer:"
                                        + " 77.94, turn: 90}}}}",
                                "hems: {hem: {on: [skirt.hem], depth: 1.2, turned: once, from"
                                        + " floor: 40}}")
                        .results()
                        .get(0);
        assertEquals(4897.1, result.foldAllRound().millimetres(), 0.1);
        HemLevel level = result.level().orElseThrow();
        assertEquals(66, level.marks());
        assertEquals(Hem.Hang.BY_CLOTH, result.hang());
        assertEquals(Length.ofMillimetres(388), level.trim().orElseThrow());
    }

    @Test
    void hangsOnlyWhatIsOnTheBiasOrGoesRound() {
        String[] straight = {
            "pattern: {pieces: {skirt: {cut: 2, rectangle: [50, 60]}}}",
            "hems: {hem: {on: [skirt.bottom], depth: 5, turned: blind}}"
        };
        assertEquals(Hem.Hang.NOT, Written.of("cm", straight).results().get(0).hang());
        straight[0] = straight[0].replace("cut: 2,", "cut: 2, grain: bias,");
        assertEquals(Hem.Hang.BY_CLOTH, Written.of("cm", straight).results().get(0).hang());
        straight[1] = straight[1].replace("blind}", "blind, hang: {for: 48 h}}");
        assertEquals(Hem.Hang.told(48), Written.of("cm", straight).results().get(0).hang());
        straight[1] = straight[1].replace("{for: 48 h}", "no");
        assertEquals(Hem.Hang.NOT, Written.of("cm", straight).results().get(0).hang());
    }
}
