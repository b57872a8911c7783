package secondbolt.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import secondbolt.lay.plan.LayPlan;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/** What a maker may write of her lay that cannot be: each is told where it stands. */
class LayMistakesTest {
    /** Pieces of every kind a lay tells apart: straight, round, on the bias, known by tape. */
    private static final String PATTERN =
            """
            pattern:
              pieces:
                front: {cut: pair, rectangle: [28, 58]}
                back: {cut: 1, rectangle: [56, 58]}
                yoke: {cut: 1, ring: {inner: 10, outer: 20, turn: 90}}
                binding: {cut: 1, grain: bias, rectangle: [5, 30]}
                sleeve: {cut: 2, box: [40, 50], edges: {cap: 45}}
            """;

    private static final String CHECKED =
            "cloth: {sheet: {size: [130, 200], prewash: done, repeat: {along: 12}}}\n";

    private static String kept(String edge) {
        return "cloth: {sheet: {size: [130, 200], prewash: done, features: [{what: hem, at: [65,"
                + " 97.5], size: [130, 5], keep: "
                + edge
                + "}]}}\n";
    }

    /** What is written beside the pattern, and what is found there. */
    private record Slip(String cloth, String lay, String found) {}

    private static final List<Slip> SLIPS =
            List.of(
                    new Slip(
                            CHECKED,
                            "lay: {match: [[front.left, yoke.left], [front.left, cuff.left]]}",
                            "`cuff`, which is no piece of the pattern"),
                    new Slip(
                            CHECKED,
                            "lay: {match: [[front.left, sleeve.cap]]}",
                            "`sleeve.cap` of a piece that is known by tape only"),
                    new Slip(
                            CHECKED,
                            "lay: {match: [[front.left, binding.left]]}",
                            "`binding.left` of a piece on the bias, which runs across the checks"),
                    new Slip(
                            kept("front.top").replace("done,", "done, repeat: {along: 12},"),
                            "lay: {match: [[back.left, front.left]]}",
                            "`front.left` of a piece that is made of a feature, and lies with it"),
                    new Slip(
                            CHECKED,
                            "lay: {pieces: {collar: {grain: any}}}",
                            "`collar`, which is no piece of the pattern"),
                    new Slip(kept("hem"), "", "`hem`"),
                    new Slip(kept("front.hem"), "", "`hem`, which is no edge of front"),
                    new Slip(kept("yoke.hem"), "", "`yoke.hem`, which is curved"),
                    new Slip(
                            kept("sleeve.cap"),
                            "",
                            "`sleeve.cap` of a piece that is known by tape only"),
                    new Slip(
                            kept("front.top"),
                            "lay: {layers: folded lengthwise}",
                            "`keep` on folded cloth, of which only one layer has the feature"),
                    new Slip(CHECKED, "make: plain", "`plain`, which is no design"),
                    new Slip(
                            CHECKED,
                            "designs: {plain: {uses: [front], printed need: {wide: 2 m}}}",
                            "`wide`, which is no width of cloth"),
                    new Slip(
                            CHECKED,
                            "designs: {plain: {uses: [front], printed need: {-115: 2 m}}}",
                            "`-115`, which is no width of cloth"),
                    new Slip(
                            CHECKED,
                            "designs: {plain: {uses: [front], suits: {weight: [220 g/m2, 120"
                                    + " g/m2]}}}",
                            "a lightest cloth that is heavier than the heaviest"),
                    new Slip(CHECKED, "lay: {match: [[.left, front.left]]}", "`.left`"),
                    new Slip(CHECKED, "lay: {match: [[front., back.left]]}", "`front.`"),
                    new Slip(
                            CHECKED,
                            "lay: {match: [[front.left.top, back.left]]}",
                            "`front.left.top`"));

    @TestFactory
    Stream<DynamicTest> namesWhatCannotBe() {
        return SLIPS.stream().map(slip -> DynamicTest.dynamicTest(slip.found(), () -> check(slip)));
    }

    private static void check(Slip slip) {
        List<String> told =
                LayText.mistakes(slip.cloth() + PATTERN + slip.lay() + "\n").stream()
                        .map(line -> line.replaceAll("^\\d+:\\d+ ", ""))
                        .toList();
        assertEquals(List.of(slip.found()), told);
    }

    /** The same file without a slip has no mistake, and every word of it is taken as it is. */
    @Test
    void takesWhatCanBe() {
        String lay =
                """
                lay: {gap: 5 mm, pieces: {front: {grain: any}}, match: [[front.left, back.left]]}
                interfacing: {width: 90, nonwoven: yes}
                designs:
                  plain:
                    uses: [front, back]
                    printed need: {115: 2 m, 150: 1.6 m}
                    suits: {weight: [120 g/m2, 220 g/m2]}
                make: plain
                """;
        assertEquals(List.of(), LayText.mistakes(CHECKED + PATTERN + lay));
        LayPlan plan = LayText.project(CHECKED + PATTERN + lay, Tape.CENTIMETRE).lay();
        assertEquals(Length.ofMillimetres(5), plan.gapOrUsual());
        assertEquals(
                "the left edge of the front with the left edge of the back",
                plan.rules().matches().get(0).words());
        assertEquals(
                List.of("front", "back"),
                plan.designs().get("plain").uses().stream().map(use -> use.value()).toList());
        assertEquals(
                List.of(Length.ofMillimetres(1150), Length.ofMillimetres(1500)),
                List.copyOf(plan.designs().get("plain").printedNeed().keySet()));
    }
}
