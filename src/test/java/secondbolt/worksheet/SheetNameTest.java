package secondbolt.worksheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class SheetNameTest {
    private static String name(String words) {
        return SheetName.forEach(List.of(words)).get(0);
    }

    @Test
    void dropsAccentsAndSigns() {
        assertEquals("facade-ete", name("Façade, été!"));
        assertEquals("shirt", name("🧵 shirt 👔\uFE0F"));
        assertEquals("sheet", name("🧵\uFE0F"));
    }

    @Test
    void keepsTheMarksThatArePartOfTheWord() {
        assertEquals("पुराने-पर्दे", name("पुराने पर्दे"));
        assertEquals("ستائر", name("ستائر"));
        assertEquals("เสื้อ", name("เสื้อ"));
        assertEquals("がぎ", name("がぎ"));
    }

    @Test
    void givesNoTwoTheSameName() {
        assertEquals(
                List.of("front-band", "front-band-2", "front-band-3"),
                SheetName.forEach(List.of("Front band", "front-band", "FRONT/BAND")));
    }
}
