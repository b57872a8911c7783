package secondbolt.file.json;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** JSON is read as the standard says. */
class JsonReaderTest {
    /** Source: RFC 8259, section 13, the first example, shortened (from memory). */
    @Test
    void readsTheStandardsExample() {
        String text =
                """
                { "Image": { "Width":  800, "Title":  "View from 15th Floor",
                    "Animated" : false, "IDs": [116, 943, 234, 38793] } }
                """;
        Map<?, ?> image = (Map<?, ?>) JsonReader.readObject(text).orElseThrow().get("Image");
        assertEquals(new BigDecimal(800), image.get("Width"));
        assertEquals("View from 15th Floor", image.get("Title"));
        assertEquals(false, image.get("Animated"));
        assertEquals(4, ((List<?>) image.get("IDs")).size());
    }

    /** Source: RFC 8259, section 7: the G clef as a pair of surrogates (from memory). */
    @Test
    void readsEscapes() {
        assertEquals(
                Map.of("a", "\uD834\uDD1E \"\\/\b\f\n\r\t"),
                JsonReader.readObject("{\"a\": \"\\uD834\\udd1e \\\"\\\\\\/\\b\\f\\n\\r\\t\"}")
                        .orElseThrow());
    }

    @Test
    void readsBackWhatWasWritten() {
        Map<String, Object> inside = new LinkedHashMap<>();
        inside.put("nothing", null);
        inside.put("text", "½ \"in\"\n\u0001 <b>");
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("list", Arrays.asList(inside, List.of(), true));
        assertEquals(all, JsonReader.readObject(Json.write(all)).orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "[]",
                "{",
                "{}x",
                "{\"a\"}",
                "{\"a\": }",
                "{\"a\": 01x}",
                "{\"a\": \"\\x\"}",
                "{\"a\": \"",
                "{'a': 1}",
                "{\"a\": 1,}",
                "{\"a\": \"\\u12g4\"}",
                "{\"a\": nul}"
            })
    void readsNothingFromBrokenText(String text) {
        assertTrue(JsonReader.readObject(text).isEmpty());
    }

    @Test
    void doesNotOverflowOnDeepNesting() {
        String deep = "{\"a\": " + "[".repeat(100_000) + "]".repeat(100_000) + "}";
        assertFalse(JsonReader.readObject(deep).isPresent());
    }

    /** A key said twice, a line end inside a text, a number with more figures than any has. */
    @Test
    void readsNothingThatNoRunWrites() {
        assertTrue(JsonReader.readObject("{\"a\": 1, \"a\": 2}").isEmpty());
        assertTrue(JsonReader.readObject("{\"a\": \"\n\"}").isEmpty());
        assertTrue(JsonReader.readObject("{\"a\": " + "9".repeat(10_000_000) + "}").isEmpty());
        assertTrue(JsonReader.readObject("{\"a\": 1e9999999999}").isEmpty());
        assertTrue(JsonReader.readObject("{\"a\": [" + "[],".repeat(2_000_000) + "1]}").isEmpty());
    }

    @Test
    void readsALongTextInOneGo() {
        String text = "x".repeat(10_000_000);
        assertEquals(
                Map.of("a", text),
                JsonReader.readObject("{\"a\": \"" + text + "\"}").orElseThrow());
    }

    /** Whatever stands there, it is JSON or it is not: nothing else comes of it. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4})
    void nothingElseComesOfAnyText(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        String letters = "{}[]\",:\\u0019eE+-.truefalsn \n\t\u0000\ud800é";
        String sound = "{\"a\": [1, 2.5e3, {\"b\": \"x\\u00e9\"}], \"c\": null, \"d\": true}";
        for (int i = 0; i < 20_000; i++) {
            StringBuilder text = new StringBuilder(random.nextBoolean() ? sound : "{");
            for (int j = random.nextInt(1, 12); j > 0; j--) {
                char letter = letters.charAt(random.nextInt(letters.length()));
                text.insert(random.nextInt(text.length() + 1), letter);
                if (random.nextInt(3) == 0) {
                    text.deleteCharAt(random.nextInt(text.length()));
                }
            }
            String all = text.toString();
            assertDoesNotThrow(() -> JsonReader.readObject(all), all);
        }
    }
}
