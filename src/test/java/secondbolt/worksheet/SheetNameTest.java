package secondbolt.worksheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class SheetNameTest {
    private static String name(String words) {
        return SheetName.of(words);
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
                unique("Front band", "front-band", "FRONT/BAND"));
        assertEquals(List.of("front", "front-2"), unique("front!", "front?"));
        assertEquals(List.of("が", "が-2"), unique("が", "か\u3099"));
        // A final sigma has the capital of any other.
        assertEquals(List.of("ποδος", "ποδοσ-2"), unique("ΠΟΔΟΣ", "ποδοσ"));
    }

    /** A number is never one that another sheet is called by, be it further down. */
    @Test
    void leavesEveryNameToTheFirstThatIsCalledSo() {
        assertEquals(
                List.of("front", "front-3", "front-2", "front-2-2"),
                unique("front", "front!", "front 2", "front-2"));
    }

    @Test
    void namesNoDevice() {
        assertEquals("sheet-con", name("CON"));
        assertEquals("sheet-com1", name("com1"));
        assertEquals("sheet-aux", name("...aux "));
        assertEquals("consul", name("consul"));
    }

    /** However long, with a number, an ending and that of a temporary behind it. */
    @Test
    void isShortEnoughForAFile() {
        assertEquals("a".repeat(90), name("a".repeat(300)));
        assertEquals("布".repeat(66), name("布".repeat(300)));
        assertEquals("\uD840\uDC00".repeat(45), name("\uD840\uDC00".repeat(300)));
    }

    private static List<String> unique(String... words) {
        return SheetName.forEach(Stream.of(words).map(SheetName::of).toList());
    }
}
