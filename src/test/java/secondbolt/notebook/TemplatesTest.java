package secondbolt.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Templates escape, print numbers alike everywhere and reach no code. */
class TemplatesTest {
    /** A view with a method that is not a component. */
    public record View(String text, double number, boolean claim) {
        /** Reachable only by a template that reaches too far. */
        public String secret() {
            return "secret";
        }
    }

    private static final Map<String, Object> VALUES =
            Map.of("view", new View("<&>", 1234567.5, true), "list", List.of(1));

    private final Templates templates = new Templates();

    @Test
    void escapesTextAndWritesNumbersTheSameEverywhere() {
        assertEquals("&lt;&amp;&gt; 1234567.5 true\n", templates.fill("try-plain", VALUES));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "try-missing-value",
                "try-method",
                "try-class",
                "try-execute",
                "try-broken",
                "try-absent"
            })
    void stopsWithTheNameOfATemplateThatIsWrong(String name) {
        IllegalStateException e =
                assertThrows(IllegalStateException.class, () -> templates.fill(name, VALUES));
        assertTrue(e.getMessage().startsWith("template " + name + ".ftlh: "), e.getMessage());
    }
}
