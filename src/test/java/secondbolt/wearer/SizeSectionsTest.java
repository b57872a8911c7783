package secondbolt.wearer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import secondbolt.file.Key;
import secondbolt.fit.size.SizeInput;
import secondbolt.fit.size.Written;
import secondbolt.measure.Length;

class SizeSectionsTest {
    @Test
    void readsAWearerAndHerPatternsSizes() {
        SizeInput input =
                Written.input(
                        "in",
                        "wearer: {age: 34, measurements: {bust: 38 1/2, head: 57 cm, hip:"
                                + " unknown}}",
                        "pattern:",
                        "  sizes:",
                        "    size: [S, M]",
                        "    bust: [36, 38]",
                        "  size: M",
                        "  finished: {bust: 42}");
        Wearer wearer = input.wearer().orElseThrow();
        assertEquals(Optional.of(34), wearer.age().orElseThrow().years());
        assertEquals(Optional.of(Length.ofInches(77, 2)), wearer.measure(BodyMeasure.BUST));
        assertEquals(Optional.of(Length.ofMillimetres(570)), wearer.measure(BodyMeasure.HEAD));
        assertEquals(Optional.empty(), wearer.measure(BodyMeasure.HIP));
        SizeChart chart = input.sizes().chart().orElseThrow();
        assertEquals(List.of("S", "M"), chart.sizes());
        assertEquals(Optional.of(Length.ofInches(38, 1)), chart.at(BodyMeasure.BUST, "M"));
        assertEquals(Optional.of(ChosenSize.of("M")), input.sizes().size());
        assertEquals(Length.ofInches(42, 1), input.sizes().finished().get(BodyMeasure.BUST));
    }

    @Test
    void tellsAnUnknownMeasurementWithTheNearest() {
        assertEquals(
                List.of("2:25 `bsut`, which is not a key of the measurements; `bust`"),
                Written.mistakes("wearer: {measurements: {bsut: 96}}"));
        assertTrue(Written.mistakes("pattern: {finished: {hips: 110}}").get(0).endsWith("; `hip`"));
    }

    @Test
    void refusesABodyInTheWrongUnit() {
        assertEquals(
                List.of("2:31 `960`; a length of 20 cm to 230 cm"),
                Written.mistakes("wearer: {measurements: {bust: 960}}"));
    }

    @Test
    void takesAgesFromUnderOneToAHundredAndTwenty() {
        assertTrue(
                Written.input("cm", "wearer: {age: 0}")
                        .wearer()
                        .flatMap(Wearer::age)
                        .orElseThrow()
                        .isUnder(1));
        assertFalse(
                Written.input("cm", "wearer: {age: adult}")
                        .wearer()
                        .flatMap(Wearer::age)
                        .orElseThrow()
                        .isUnder(120));
        for (String wrong : List.of("adlt", "121", "-1", "3.5")) {
            List<String> told = Written.mistakes("wearer: {age: " + wrong + "}");
            assertEquals(1, told.size(), wrong);
            assertTrue(told.get(0).contains("`adult`, a whole number of years"), told.get(0));
        }
    }

    @Test
    void pointsAtTheNumberThatGoesDown() {
        assertEquals(
                List.of(
                        "5:16 bust 90 cm in size 14, less than in the smaller size 12;"
                                + " at least 94 cm"),
                Written.mistakes(
                        "pattern:", "  sizes:", "    size: [12, 14]", "    bust: [94, 90]"));
    }

    @Test
    void wantsAValueForEachSize() {
        assertEquals(
                List.of("5:11 `bust` of 1 value; 2 values, one for each size"),
                Written.mistakes("pattern:", "  sizes:", "    size: [12, 14]", "    bust: [94]"));
    }

    @Test
    void refusesASizeThatIsNotCharted() {
        assertEquals(
                List.of("6:9 size `13`, which is not in `sizes`; one of `12`, `14`"),
                Written.mistakes(
                        "pattern:",
                        "  sizes:",
                        "    size: [12, 14]",
                        "    bust: [94, 98]",
                        "  size: 13"));
        assertEquals(
                1,
                Written.mistakes(
                                "pattern:",
                                "  sizes: {size: [12], bust: [94], hip: [98]}",
                                "  size: {bust: 12, hip: 16}")
                        .size());
    }

    @Test
    void refusesASizeTwiceAndABlendOfNothing() {
        assertTrue(
                Written.mistakes("pattern: {sizes: {size: [12, 12]}}")
                        .get(0)
                        .contains("size `12` twice"));
        assertTrue(
                Written.mistakes("pattern: {size: {}}")
                        .get(0)
                        .contains("a blended size of nothing"));
    }

    @Test
    void readsItsOwnExamples() {
        for (Key<?> key : SizeChartSection.KEYS) {
            assertEquals(
                    List.of(),
                    Written.mistakes("pattern: {" + key.name() + ": " + key.example() + "}"));
        }
        assertEquals(List.of(), Written.mistakes("wearer: " + WearerSection.KEY.example()));
        for (BodyMeasure measure : BodyMeasure.values()) {
            assertEquals(
                    List.of(),
                    Written.mistakes(
                            "wearer: {measurements: {"
                                    + measure.word()
                                    + ": "
                                    + measure.example()
                                    + "}}"));
        }
    }
}
