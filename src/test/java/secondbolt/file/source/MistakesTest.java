package secondbolt.file.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Mistakes stay few and short, however many and however long they are. */
class MistakesTest {
    private static Mistake at(int line, String found) {
        return new Mistake(new Place("project.yaml", line, 1), found, "another", "");
    }

    @Test
    void keepsTheFirstOfManyAndCountsAll() {
        Mistakes mistakes = new Mistakes();
        for (int line = 362; line >= 1; line--) {
            mistakes.add(at(line, "`a`"));
        }
        assertEquals(362, mistakes.count());
        assertEquals(50, mistakes.inOrder().size());
        assertEquals(1, mistakes.inOrder().get(0).place().line());
        assertEquals(50, mistakes.inOrder().get(49).place().line());
    }

    @Test
    void countsTheSameMistakeOnceAlsoBehindTheFirst() {
        Mistakes mistakes = new Mistakes();
        for (int i = 0; i < 3; i++) {
            for (int line = 1; line <= 100; line++) {
                mistakes.add(at(line, "`a`"));
            }
        }
        assertEquals(100, mistakes.count());
    }

    @Test
    void countsWhatOthersWereToldOnce() {
        Mistakes mistakes = new Mistakes();
        Mistakes others = new Mistakes();
        for (int line = 1; line <= 100; line++) {
            (line <= 60 ? mistakes : others).add(at(line, "`a`"));
            others.add(at(line, "`a`"));
        }
        mistakes.addAll(others);
        assertEquals(100, mistakes.count());
        assertEquals(50, mistakes.inOrder().size());
    }

    @Test
    void cutsALongValueShort() {
        String long1 = "`" + "x".repeat(1_000_000) + "y`, an unknown unit";
        Mistake mistake = at(1, long1);
        String value = mistake.found().substring(1, mistake.found().indexOf('`', 1));
        assertEquals(200, value.length());
        assertTrue(value.contains("…") && value.endsWith("xy"), value);
        assertTrue(mistake.found().endsWith("`, an unknown unit"));
        assertTrue(at(1, "x".repeat(1_000_000)).found().length() <= 600);
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource({
        "27, \\u001B",
        "7, \\u0007",
        "155, \\u009B",
        "10, \\n",
        "13, \\u000D",
        "8232, \\u2028",
        "8238, \\u202E",
        "8295, \\u2067",
        "55296, \\uD800"
    })
    void showsAnUnseenLetterAsItsNumber(int letter, String shown) {
        Mistake mistake = at(1, "`a" + (char) letter + "b`");
        assertEquals("`a" + shown + "b`", mistake.found());
        Mistake inLine =
                new Mistake(new Place("a" + (char) letter, 1, 3), "`b`", "c", "a" + (char) letter);
        assertFalse(
                inLine.toString().replace("\n    ", "").codePoints().anyMatch(Visible::isUnseen),
                inLine.toString());
    }

    @Test
    void showsALongLineRoundThePlace() {
        String line = "[" + "7, ".repeat(300_000) + "x]";
        Mistake mistake = new Mistake(new Place("project.yaml", 1, 900_002), "`x`", "7", line);
        String[] shown = mistake.toString().split("\n", -1);
        assertTrue(shown[1].length() < 120, shown[1]);
        assertEquals('x', shown[1].charAt(shown[2].indexOf('^')));
    }
}
