package secondbolt.file.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
}
