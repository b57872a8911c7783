package secondbolt.closure.row;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.function.Executable;
import org.yaml.snakeyaml.Yaml;
import secondbolt.closure.Written;
import secondbolt.closure.fastening.Button;
import secondbolt.closure.fastening.Fastening;
import secondbolt.closure.placket.PlacketSpot;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

class ClosureCalculationTest {
    private static final double AS_PRINTED_MM = 0.001;
    private static final Fastening SMALL =
            Written.buttons(
                    Length.ofMillimetres(5), Length.ofMillimetres(1), Fastening.Holes.UPRIGHT);

    @TestFactory
    Stream<DynamicTest> makesHolesThatLetTheButtonPass() throws Exception {
        return examples("holes.yaml").map(e -> test(e, () -> checkHole(e)));
    }

    @TestFactory
    Stream<DynamicTest> dividesTheDistanceEvenly() throws Exception {
        return examples("spacing.yaml").map(e -> test(e, () -> checkSpacing(e)));
    }

    private static Stream<Map<String, Object>> examples(String file) throws Exception {
        try (InputStream in =
                ClosureCalculationTest.class.getResourceAsStream("/examples/closures/" + file)) {
            List<Map<String, Object>> examples = new Yaml().load(in);
            assertTrue(examples.size() >= 4, file);
            return examples.stream();
        }
    }

    private static DynamicTest test(Map<String, Object> example, Executable check) {
        return DynamicTest.dynamicTest(example.get("source").toString(), check);
    }

    @SuppressWarnings("unchecked") // the examples are ours
    private static void checkHole(Map<String, Object> example) {
        Map<String, Object> button = (Map<String, Object>) example.get("button");
        Button.Shape shape =
                Stream.of(Button.Shape.values())
                        .filter(s -> s.word().equals(button.getOrDefault("shape", "flat")))
                        .findFirst()
                        .orElseThrow();
        Button read =
                new Button(
                        shape,
                        length(button, "across"),
                        length(button, "thick"),
                        length(button, "girth"),
                        Button.Attached.SEWN_THROUGH);
        assertEquals(number(example, "hole_mm"), read.hole().millimetres(), AS_PRINTED_MM);
    }

    private static void checkSpacing(Map<String, Object> example) {
        Length length = length(example, "length").orElseThrow();
        Length last = length(example, "last").orElseThrow();
        int count = (int) example.get("buttons");
        ClosureResult result =
                new Written(length)
                        .of(SMALL)
                        .count(count)
                        .from(length(example, "first").orElseThrow(), last)
                        .result();
        assertEquals(
                number(example, "gap_mm"), result.gap().orElseThrow().millimetres(), AS_PRINTED_MM);
        assertEquals(length.minus(last), result.marks().get(count - 1).fromTop());
    }

    private static Optional<Length> length(Map<String, Object> from, String key) {
        return Optional.ofNullable(from.get(key))
                .map(text -> Length.parse(text.toString(), Tape.CENTIMETRE).orThrow());
    }

    private static double number(Map<String, Object> from, String key) {
        return ((Number) from.get(key)).doubleValue();
    }

    @Test
    void beginsAnUprightHoleAnEighthAboveTheButton() {
        // American dressmakers' standards: the button rests within 1/8 in of the top of the slit.
        // A button at 15 1/2 in with a hole of 5/8 in: from 15 3/8 to 16 in, hand-worked.
        FastenerMark last =
                new Written(Length.ofInches(24, 1))
                        .from(Length.ofInches(1, 2), Length.ofInches(17, 2))
                        .result(Tape.INCH)
                        .marks()
                        .get(1);
        assertEquals(Length.ofInches(31, 2), last.fromTop());
        assertEquals(Length.ofInches(123, 8), last.start());
        assertEquals(Length.ofInches(16, 1), last.end());
    }

    private static Fastening level() {
        return Written.buttons(Length.ofInches(1, 2), Length.ofInches(1, 8), Fastening.Holes.LEVEL);
    }

    @Test
    void beginsALevelHolePastTheCentreLineTowardTheEdge() {
        // Extension Bulletin 576, 1965: 1/8 in (3 mm) past the centre line.
        ClosureResult result = Written.mm(500).of(level()).count(3).from(20, 80).result();
        for (FastenerMark mark : result.marks()) {
            assertEquals(Length.ofMillimetres(-3), mark.start());
            assertEquals(result.hole(), mark.end().minus(mark.start()));
        }
    }

    @Test
    void placesOneButtonAlone() {
        ClosureResult result = Written.mm(60).count(1).firstOnly(Length.ofMillimetres(15)).result();
        assertEquals(Optional.empty(), result.gap());
        assertEquals(Length.ofMillimetres(15), result.marks().get(0).fromTop());
    }

    @Test
    void printsTenInchesWithSevenHolesFromTheTopEachTime() {
        // Hand-worked: 0, 1 11/16, 3 5/16, 5, 6 11/16, 8 5/16, 10; never a chain of rounded steps.
        List<String> printed =
                new Written(Length.ofInches(10, 1))
                        .count(7).from(Length.ZERO, Length.ZERO).result(Tape.INCH).marks().stream()
                                .map(mark -> Tape.INCH.print(mark.fromTop()).replace('\u2009', ' '))
                                .toList();
        assertEquals(
                List.of(
                        "0 in",
                        "1 ¹¹⁄₁₆ in",
                        "3 ⁵⁄₁₆ in",
                        "5 in",
                        "6 ¹¹⁄₁₆ in",
                        "8 ⁵⁄₁₆ in",
                        "10 in"),
                printed);
    }

    private static List<Double> places(ClosureResult result) {
        return result.marks().stream().map(mark -> mark.fromTop().millimetres()).toList();
    }

    /** Derived: 24 cm to the bust in three gaps of 80, the 36 cm below it in four of 90. */
    @Test
    void putsAButtonAtTheFullestBust() {
        ClosureResult result =
                Written.mm(620)
                        .count(8)
                        .from(10, 10)
                        .meet(Written.spot(250, "fullest bust"))
                        .result();
        assertEquals(List.of(10.0, 90.0, 170.0, 250.0, 340.0, 430.0, 520.0, 610.0), places(result));
        assertEquals(Optional.of("fullest bust"), result.marks().get(3).why());
        assertTrue(result.advice().remedies().isEmpty());
    }

    /**
     * Hole 15.875 mm from 3 mm above the button, foot 5 mm, seam 6 mm: a centre must stay out of
     * 300 - 6 - 5 - 12.875 = 276.1 to 300 + 6 + 5 + 3 = 314. Five even ones would lie at 302.5.
     */
    @Test
    void keepsHolesOffASeam() {
        ClosureResult result =
                Written.mm(610)
                        .count(5)
                        .from(Length.ofMillimetres(5), Length.ofMillimetres(10))
                        .bulk(Written.spot(300, "waist seam"))
                        .result();
        for (FastenerMark mark : result.marks()) {
            double at = mark.fromTop().millimetres();
            assertTrue(at < 276.2 || at >= 314, "at " + at);
            assertEquals(false, mark.byHand());
        }
        assertTrue(result.row().uneven().millimetres() < 8, result.row().toString());
    }

    @Test
    void takesAsManyMoreAsTheLargestGapNeeds() {
        // Derived: 600 mm in gaps of 90 at most needs 7 gaps of 85.7.
        ClosureResult result = Written.mm(620).count(5).from(10, 10).largestGap(90).result();
        assertEquals(8, result.marks().size());
        assertEquals(3, result.added());
        assertEquals(85.714, result.gap().orElseThrow().millimetres(), AS_PRINTED_MM);
    }

    @Test
    void saysWhatWouldSolveItWhereAHoleMustBeWorkedByHand() {
        ClosureResult result =
                Written.mm(420)
                        .count(3)
                        .from(10, 10)
                        .meet(Written.spot(210, "waist"))
                        .bulk(Written.spot(212, "waist seam"))
                        .result();
        assertEquals(List.of(1), result.row().byHand());
        assertTrue(result.marks().get(1).byHand());
        assertTrue(
                result.advice().remedies().get(0).contains("by hand"),
                result.advice().remedies()::toString);
    }

    @Test
    void findsTheNearestCountAndTheShiftThatClearASeam() {
        // Derived: 86.5 to 113.5 must stay free, so the middle one is 14 mm off; four lie at 73
        // and 127.
        ClosureResult result =
                Written.mm(200)
                        .count(3)
                        .from(20, 20)
                        .of(level())
                        .bulk(Written.spot(100, "waist seam"))
                        .result();
        assertTrue(
                result.advice().remedies().stream()
                        .anyMatch(r -> r.startsWith("With 4 instead of 3")),
                result.advice().remedies()::toString);
    }

    @Test
    void leavesOutWhatCannotBeMetAndSaysSo() {
        ClosureResult result =
                Written.mm(420)
                        .count(2)
                        .from(10, 10)
                        .meet(Written.spot(200, "fullest bust"))
                        .result();
        assertEquals("fullest bust", result.row().unmet().get(0).why());
        assertTrue(result.advice().remedies().get(0).startsWith("With 3 instead of 2"));
    }

    @Test
    void usesTheRangeOfTheFirst() {
        ClosureResult result =
                Written.mm(415)
                        .count(5)
                        .from(10, 10)
                        .firstBetween(5, 25)
                        .meet(Written.spot(205, "bust"))
                        .result();
        assertEquals(List.of(5.0, 105.0, 205.0, 305.0, 405.0), places(result));
    }

    @Test
    void letsOneHoleRunAnotherWay() {
        Fastening upright =
                new Fastening(
                        Fastening.Kind.BUTTONS,
                        level().button(),
                        Optional.empty(),
                        Optional.empty(),
                        Fastening.Holes.UPRIGHT,
                        Map.of(1, Fastening.Holes.LEVEL));
        List<FastenerMark> marks =
                Written.mm(420).of(upright).count(3).from(10, 10).result().marks();
        assertEquals(Length.ofMillimetres(-3), marks.get(0).start());
        assertEquals(marks.get(1).fromTop().minus(Length.ofMillimetres(3)), marks.get(1).start());
    }

    @Test
    void marksHolesTooLongForTheMachine() {
        ClosureResult result = Written.mm(420).count(3).from(10, 10).machine(12).result();
        assertTrue(result.marks().stream().allMatch(FastenerMark::byHand));
    }

    /**
     * Hand-worked: 24 in, first half an inch down, bust 6 1/2, waist seam 15 1/4, no gap above 3
     * in. Going on at 3 in would put a hole from 15 3/8 to 16, an eighth below the seam; six gaps
     * of 2 1/2 below the bust clear it.
     */
    @Test
    void goesRoundTheWaistSeamBelowTheBust() {
        Length quarter = Length.ofInches(1, 4);
        ClosureResult result =
                new Written(Length.ofInches(24, 1))
                        .count(8)
                        .from(Length.ofInches(1, 2), Length.ofInches(5, 2))
                        .largestGap(Length.ofInches(3, 1))
                        .meet(new PlacketSpot(Length.ofInches(13, 2), "fullest bust", quarter))
                        .bulk(new PlacketSpot(Length.ofInches(61, 4), "waist seam", quarter))
                        .result(Tape.INCH);
        assertEquals(
                List.of(1, 7, 13, 18, 23, 28, 33, 38, 43),
                result.marks().stream()
                        .map(m -> (int) Math.round(m.fromTop().millimetres() / 12.7))
                        .toList());
        assertEquals(Length.ofInches(33, 2), result.marks().get(6).fromTop());
        assertEquals(1, result.added());
        assertTrue(result.row().byHand().isEmpty());
    }
}
