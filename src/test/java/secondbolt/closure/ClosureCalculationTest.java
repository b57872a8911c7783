package secondbolt.closure;

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
import secondbolt.file.Answer;
import secondbolt.file.source.Place;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

class ClosureCalculationTest {
    private static final double AS_PRINTED_MM = 0.001;
    private static final Place NOWHERE = Place.beginningOf("none");

    private static ClosureResult work(String name, Closure closure, Tape tape) {
        Length length = closure.placket().length(Optional.empty()).orElseThrow();
        return ClosureCalculation.work(name, closure, length, tape);
    }

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
                        length(button, "girth"));
        assertEquals(number(example, "hole_mm"), read.hole().millimetres(), AS_PRINTED_MM);
    }

    private static void checkSpacing(Map<String, Object> example) {
        Closure closure =
                closure(
                        length(example, "length").orElseThrow(),
                        (int) example.get("buttons"),
                        length(example, "first").orElseThrow(),
                        length(example, "last"),
                        Closure.Holes.UPRIGHT);
        ClosureResult result = work("front", closure, Tape.CENTIMETRE);
        assertEquals(
                number(example, "gap_mm"), result.gap().orElseThrow().millimetres(), AS_PRINTED_MM);
        Length last = result.marks().get(closure.buttons() - 1).fromTop();
        assertEquals(
                closure.placket()
                        .length(Optional.empty())
                        .orElseThrow()
                        .minus(closure.last().orElseThrow()),
                last);
    }

    private static Optional<Length> length(Map<String, Object> from, String key) {
        return Optional.ofNullable(from.get(key))
                .map(text -> Length.parse(text.toString(), Tape.CENTIMETRE).orThrow());
    }

    private static double number(Map<String, Object> from, String key) {
        return ((Number) from.get(key)).doubleValue();
    }

    private static Closure closure(
            Length length, int buttons, Length first, Optional<Length> last, Closure.Holes holes) {
        Button button =
                new Button(
                        Button.Shape.FLAT,
                        Optional.of(Length.ofInches(1, 2)),
                        Optional.of(Length.ofInches(1, 8)),
                        Optional.empty());
        return new Closure(
                new Placket.ByTape(Answer.known(length)),
                Length.ofMillimetres(18),
                buttons,
                button,
                first,
                last,
                holes,
                Closure.Laps.RIGHT_OVER_LEFT,
                Optional.empty(),
                new Closure.Places(NOWHERE, NOWHERE, NOWHERE));
    }

    @Test
    void beginsAnUprightHoleAnEighthAboveTheButton() {
        // American dressmakers' standards: the button rests within 1/8 in of the top of the slit.
        // A button at 15 1/2 in with a hole of 5/8 in: from 15 3/8 to 16 in, hand-worked.
        Closure closure =
                closure(
                        Length.ofInches(24, 1),
                        2,
                        Length.ofInches(1, 2),
                        Optional.of(Length.ofInches(17, 2)),
                        Closure.Holes.UPRIGHT);
        ClosureResult.ButtonMark last = work("front", closure, Tape.INCH).marks().get(1);
        assertEquals(Length.ofInches(31, 2), last.fromTop());
        assertEquals(Length.ofInches(123, 8), last.start());
        assertEquals(Length.ofInches(16, 1), last.end());
    }

    @Test
    void beginsALevelHolePastTheCentreLineTowardTheEdge() {
        // Extension Bulletin 576, 1965: 1/8 in (3 mm) past the centre line.
        Closure closure =
                closure(
                        Length.ofMillimetres(500),
                        3,
                        Length.ofMillimetres(20),
                        Optional.of(Length.ofMillimetres(80)),
                        Closure.Holes.LEVEL);
        for (ClosureResult.ButtonMark mark : work("front", closure, Tape.CENTIMETRE).marks()) {
            assertEquals(Length.ofMillimetres(-3), mark.start());
            assertEquals(closure.hole(), mark.end().minus(mark.start()));
        }
    }

    @Test
    void placesOneButtonAlone() {
        Closure closure =
                closure(
                        Length.ofMillimetres(60),
                        1,
                        Length.ofMillimetres(15),
                        Optional.empty(),
                        Closure.Holes.UPRIGHT);
        ClosureResult result = work("cuff", closure, Tape.CENTIMETRE);
        assertEquals(Optional.empty(), result.gap());
        assertEquals(Length.ofMillimetres(15), result.marks().get(0).fromTop());
    }

    @Test
    void printsTenInchesWithSevenHolesFromTheTopEachTime() {
        // Hand-worked: 0, 1 11/16, 3 5/16, 5, 6 11/16, 8 5/16, 10; never a chain of rounded steps.
        Closure closure =
                closure(
                        Length.ofInches(10, 1),
                        7,
                        Length.ZERO,
                        Optional.of(Length.ZERO),
                        Closure.Holes.UPRIGHT);
        List<String> printed =
                work("front", closure, Tape.INCH).marks().stream()
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
}
