package secondbolt.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import secondbolt.shape.Box;
import secondbolt.shape.Point;

/** Same content, same code. */
class SheetCodeTest {
    private static Drawing drawing(double x, String words) {
        return new Sketch()
                .line(new Point(x, 0), new Point(10, 20), Pen.PLAIN)
                .label(words, new Point(5, 5), Lettering.plain(4))
                .drawing("Band", new Box(0, 0, 100, 100));
    }

    @Test
    void givesTheSameContentTheSameCode() {
        assertEquals(SheetCode.of(drawing(1, "a")), SheetCode.of(drawing(1, "a")));
    }

    @Test
    void writesWhatIsSeenTwiceAsOften() {
        Drawing piece = drawing(1, "a");
        Box view = new Box(0, 0, 50, 50);
        Sketch tiles = new Sketch();
        tiles.add(new Mark.Window(piece, view, new Point(0, 0)));
        tiles.add(new Mark.Window(piece, view, new Point(60, 0)));
        Drawing page = tiles.drawing("Page", new Box(0, 0, 200, 200));
        String once = CanonicalText.of(piece);
        String text = CanonicalText.of(page);
        int first = text.indexOf(once);
        int second = text.indexOf(once, first + 1);
        assertTrue(first >= 0 && second > first, text);
        assertEquals(List.of(text, once, text), CanonicalText.of(List.of(page, piece, page)));
    }

    /** Machines differ in the last bit of a sine; a thousandth of a millimetre is what counts. */
    @Test
    void passesOverLastBitsAndTheSignOfZero() {
        assertEquals(SheetCode.of(drawing(1, "a")), SheetCode.of(drawing(1 + 1e-9, "a")));
        assertEquals(SheetCode.of(drawing(0.0, "a")), SheetCode.of(drawing(-0.0, "a")));
        assertEquals(SheetCode.of(drawing(0.0, "a")), SheetCode.of(drawing(-1e-9, "a")));
    }

    @Test
    void tellsAMillimetreFractionAndALetterApart() {
        SheetCode code = SheetCode.of(drawing(1, "a"));
        assertNotEquals(code, SheetCode.of(drawing(1.01, "a")));
        assertNotEquals(code, SheetCode.of(drawing(1, "b")));
    }

    @Test
    void hasNoLookAlikesAndNoVowels() {
        for (String alike : List.of("0O", "1IL", "2Z", "5S", "8B", "UV")) {
            long both = alike.chars().filter(c -> SheetCode.ALPHABET.indexOf(c) >= 0).count();
            assertTrue(both <= 1, alike);
        }
        assertFalse(SheetCode.ALPHABET.matches(".*[AEIOUY01].*"));
    }

    @Test
    void seldomRepeats() {
        Set<SheetCode> codes = new HashSet<>();
        for (int i = 0; i < 2000; i++) {
            codes.add(SheetCode.of(drawing(i, "a")));
        }
        assertEquals(2000, codes.size());
    }

    @Test
    void refusesWhatIsNoCode() {
        assertThrows(IllegalArgumentException.class, () -> new SheetCode("ABC"));
        assertFalse(SheetCode.isCode("K7M2O0"));
        assertTrue(SheetCode.isCode("K7M2QX"));
    }
}
