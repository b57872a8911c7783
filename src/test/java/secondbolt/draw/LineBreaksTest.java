package secondbolt.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Lines fit and lose nothing. */
class LineBreaksTest {
    private static final Lettering TYPE = Lettering.plain(4);

    @Test
    void breaksAfterBlanksAndLosesNoWord() {
        String text = "Lay the sheet on the band so that the upper ends meet, and pin it.";
        List<String> lines = LineBreaks.lines(text, TYPE, 40);
        assertTrue(lines.size() > 2);
        assertEquals(text, String.join(" ", lines));
        lines.forEach(line -> assertTrue(TYPE.widthMm(line) <= 40, line));
    }

    @Test
    void breaksHanTextBetweenLetters() {
        List<String> lines = LineBreaks.lines("前中心線前中心線", TYPE, 17);
        assertEquals(List.of("前中心線", "前中心線"), lines);
    }

    @Test
    void breaksAWordOnlyWhenItIsWiderThanTheLine() {
        String word = "w".repeat(60);
        List<String> lines = LineBreaks.lines("a " + word, TYPE, 30);
        assertEquals("a" + word, String.join("", lines).replace(" ", ""));
        lines.forEach(line -> assertTrue(TYPE.widthMm(line) <= 30, line));
    }

    @Test
    void leavesOutTheEndOfWhatIsTooWide() {
        assertEquals("Front band", LineBreaks.shortened("Front band", TYPE, 100));
        String cut = LineBreaks.shortened("Front band, buttonhole side", TYPE, 30);
        assertTrue(cut.startsWith("Front") && cut.endsWith("…"), cut);
        assertTrue(TYPE.widthMm(cut) <= 30);
    }

    @Test
    void keepsAFigureWithItsUnit() {
        for (double width = 20; width < 60; width++) {
            for (String line : LineBreaks.lines("prints 100 mm as 99.4 mm or ½ in", TYPE, width)) {
                assertTrue(!line.matches(".*[0-9½]"), line);
            }
        }
    }

    @Test
    void givesAnEmptyTextOneLine() {
        assertEquals(List.of(""), LineBreaks.lines("", TYPE, 30));
    }
}
