package secondbolt.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.yaml.snakeyaml.Yaml;

class LengthTest {
    @TestFactory
    Stream<DynamicTest> readsWhatMakersWrite() throws Exception {
        try (InputStream in =
                LengthTest.class.getResourceAsStream("/examples/measure/units.yaml")) {
            List<Map<String, Object>> examples = new Yaml().load(in);
            assertTrue(examples.size() > 20);
            return examples.stream()
                    .map(
                            e ->
                                    DynamicTest.dynamicTest(
                                            e.get("text") + ": " + e.get("source"),
                                            () -> check(e)));
        }
    }

    private static void check(Map<String, Object> example) {
        Length read = Length.parse((String) example.get("text"), Tape.CENTIMETRE).orThrow();
        assertEquals(((Number) example.get("mm")).doubleValue(), read.millimetres(), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "wide",
                "1:30",
                "4 km",
                "3 cmm",
                "1/0 in",
                "12 3",
                "5 in 4 ft",
                "3 in 2 in",
                "1,500 mm",
                "3..5 cm",
                "in",
                "5/8 in (1.3 cm)",
                "1e3 mm",
                "0x1F",
                "--3 cm",
                "3 cm2"
            })
    void refusesWhatIsNoLength(String text) {
        boolean read = Length.parse(text, Tape.INCH).fold(length -> true, refusal -> false);
        assertFalse(read, text);
    }

    @Test
    void tellsWhichUnitIsUnknownAndWhichThereAre() {
        Parsed<Length> parsed = Length.parse("4 km", Tape.CENTIMETRE);
        String words = parsed.fold(l -> "", r -> r.found() + " / " + r.right());
        assertEquals(
                "`4 km`, an unknown unit `km` / a length in one of mm, cm, m, in, ft, yd, ligne",
                words);
    }

    @Test
    void flagsTwoFormsThatDiffer() {
        // 3/8 in is 9.525 mm: international yard and pound agreement, 1959.
        String right =
                Length.parse("3/8 in (1.3 cm)", Tape.INCH).fold(l -> "", Parsed.Refusal::right);
        assertEquals("the first is 9.53 mm, the second 13 mm: keep the one you measured", right);
    }

    @Test
    void sharesOutWithoutGatheringErrors() {
        Length gap = Length.ofInches(10, 1).dividedBy(6);
        assertEquals(Length.ofInches(10, 1), gap.times(6));
    }

    @ParameterizedTest
    @CsvSource({
        // 10 in from first to last, 7 buttons: worked by hand, gaps of 1 2/3 in
        "0, 0",
        "1, 1 ¹¹⁄₁₆",
        "2, 3 ⁵⁄₁₆",
        "3, 5",
        "4, 6 ¹¹⁄₁₆",
        "5, 8 ⁵⁄₁₆",
        "6, 10"
    })
    void printsSixthsOfTenInchesToSixteenths(int sixths, String printed) {
        Length position = Length.ofInches(10, 1).times(sixths).dividedBy(6);
        assertEquals(printed.replace(' ', '\u2009') + " in", Tape.INCH.print(position));
    }
}
