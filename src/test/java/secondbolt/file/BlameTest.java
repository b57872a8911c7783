package secondbolt.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import secondbolt.file.form.Forms;
import secondbolt.file.form.ListForm;
import secondbolt.file.form.MapForm;
import secondbolt.file.form.NamedForm;
import secondbolt.file.source.Mistake;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.file.value.LengthRange;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/** One slip blames its own line, whatever other lines look like because of it. */
class BlameTest {
    private static final String SOUND =
            """
            units: cm
            bags:
              tote:
                size: 30
                strap: 60
              pouch:
                size: 20
                pockets:
                  - 5
                  - 6
                  - 7
                strap: 40
            """;

    private static final Key<Tape> UNITS =
            Key.required("units", Forms.choice(Tape.values(), Tape::symbol), "The tape.", "cm");
    private static final Form<Length> LENGTH = Forms.length(LengthRange.of("1 cm", "2 m"));
    private static final Form<String> BAG =
            MapForm.of(
                    "a bag",
                    List.of(
                            Key.required("size", LENGTH, "How wide it is.", "30"),
                            Key.optional("strap", LENGTH, "Its strap.", "60"),
                            Key.optional(
                                    "pockets",
                                    ListForm.of("pockets", LENGTH, 1, 3),
                                    "How deep each is.",
                                    "[5, 6]")),
                    f -> Optional.of("bag"));
    private static final Form<String> ROOT =
            MapForm.of(
                    "a bag file",
                    List.of(
                            UNITS,
                            Key.required("bags", NamedForm.of("bag", BAG), "Bags.", "{a: …}")),
                    f -> Optional.of("bags"));

    private static List<Mistake> mistakesIn(String text) {
        Mistakes mistakes = new Mistakes();
        ProjectFileReader.read(SourceFile.of("bags.yaml", text), ROOT, UNITS, mistakes);
        return mistakes.inOrder();
    }

    /** The line is replaced; the place and what is told of it follow. */
    @ParameterizedTest(name = "{0} instead of line {1}")
    @CsvSource(
            ignoreLeadingAndTrailingWhitespace = false,
            delimiter = '|',
            value = {
                "bags:| bags:|2:2 a line indented by 1 space; no space, like its neighbours",
                "  tote:|   tote:|3:4 a line indented by 3 spaces; 2 spaces, like its neighbours",
                "  tote:| tote:|3:2 a line indented by 1 space; 2 spaces, like its neighbours",
                "    strap: 60|     strap: 60|5:6 a line indented by 5 spaces; 4 spaces, like its"
                        + " neighbours",
                "  pouch:|    pouch:|6:5 a line indented by 4 spaces; 2 spaces, like its neighbours",
                "    pockets:|  pockets:|8:3 a line indented by 2 spaces; 4 spaces, like its"
                        + " neighbours",
                "      - 6|       - 6|10:8 a line indented by 7 spaces; 6 spaces, like its"
                        + " neighbours",
                "      - 6|      6|10:7 a line without a dash before it; `- ` before it, as before"
                        + " each of a list",
            })
    void blamesTheLineThatIsIndentedOtherwise(String line, String slip, String told) {
        assertTrue(SOUND.contains(line + "\n"), line);
        List<Mistake> mistakes = mistakesIn(SOUND.replace(line + "\n", slip + "\n"));
        assertEquals(List.of(told), mistakes.stream().map(BlameTest::brief).toList());
    }

    /**
     * In a list of two or three at most, four pockets are blamed on the one that is there twice.
     */
    @Test
    void blamesALineThatStandsTwiceAndTwoLinesInOne() {
        assertEquals(
                List.of("11:7 a line that stands twice; it once"),
                mistakesIn(SOUND.replace("      - 6\n", "      - 6\n      - 6\n")).stream()
                        .map(BlameTest::brief)
                        .toList());
        assertEquals(
                List.of("7:13 two lines in one; each on a line of its own"),
                mistakesIn(SOUND.replace("size: 20\n    pockets", "size: 20    pockets")).stream()
                        .map(BlameTest::brief)
                        .toList());
    }

    private static String brief(Mistake m) {
        return m.place().line() + ":" + m.place().column() + " " + m.found() + "; " + m.right();
    }

    /** What nobody can see is named, at its own place; later places are those of her editor. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            ignoreLeadingAndTrailingWhitespace = false,
            delimiter = '|',
            value = {
                "units:\u00a0cm|1:7|a no-break space (U+00A0)",
                "units:\u3000cm|1:7|a space of another width (U+3000)",
                "units: c\u2028m|1:9|the line separator U+2028",
                "units: c\u0085m|1:9|the next line mark U+0085",
                "un\ufeffits: cm|1:3|the byte order mark U+FEFF",
                "units: c\u0007m|1:9|the control character U+0007",
            })
    void namesALetterThatNobodyCanSee(String slip, String place, String letter) {
        List<Mistake> told =
                mistakesIn(SOUND.replace("units: cm", slip).replace("strap: 40", "strap: wide"));
        assertEquals("bags.yaml:" + place, told.get(0).place().toString(), told.toString());
        assertEquals(letter, told.get(0).found());
        assertEquals("bags.yaml:12:12", told.get(1).place().toString(), told.toString());
        assertEquals(2, told.size());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            quoteCharacter = '`',
            delimiter = '|',
            value = {
                "strap: \"\\UFFFFFFFF\" | 5:13 | no letter",
                "strap: \"\\uD800\" | 5:12 | U+D800",
                "strap: \"\\0\" | 5:12 | U+0000",
                "strap: !!java.net.URL [x] | 5:12 | a tag",
                "strap: *size | 5:12 | an alias",
                "<<: {strap: 5} | 5:5 | a merge key",
                "? [strap] | 5:7 | a key that is itself a list",
                "strap: \"60 | 5:12 | a quotation mark",
            })
    void refusesWhatNoMakerWrites(String slip, String place, String words) {
        List<Mistake> told = mistakesIn(SOUND.replace("strap: 60", slip));
        assertEquals("bags.yaml:" + place, told.get(0).place().toString(), told.toString());
        assertTrue(told.stream().anyMatch(m -> m.found().contains(words)), told.toString());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"---", "...", "%YAML 1.2", "%YAML 99999999999.1", "%TAG ! x"})
    void refusesASecondDocumentAndADirective(String line) {
        List<Mistake> told = mistakesIn(SOUND.replace("    strap: 60", line));
        assertEquals(1, told.size(), told.toString());
        assertEquals(5, told.get(0).place().line());
    }

    @Test
    void goesOnUnderAHundredThousandOfAKind() {
        int many = 100_000;
        List<String> texts =
                List.of(
                        "bags: " + "[".repeat(many),
                        "bags: " + "{a: ".repeat(many),
                        "- ".repeat(many),
                        "? ".repeat(many),
                        "[\n".repeat(many),
                        "\"".repeat(many),
                        "'\n".repeat(many),
                        "a".repeat(many) + ": b",
                        "bags: [" + "5, ".repeat(many) + "]",
                        "%\n".repeat(many),
                        "\u2028".repeat(many),
                        "---\n".repeat(many));
        for (String text : texts) {
            String whole = "units: cm\n" + text;
            assertHasPlaces(whole, mistakesIn(whole));
        }
    }

    /** Whatever becomes of a file's letters, each mistake has a place in it. */
    @Test
    void findsAPlaceWhateverBecomesOfTheLetters() {
        SplittableRandom random = new SplittableRandom(7);
        String letters = "\t\n\r :,-[]{}\"'#&*!|>?%@`\\x9\u00a0\u2028\ufeff\u0000\ud83e\udea1";
        for (int i = 0; i < 1500; i++) {
            StringBuilder text = new StringBuilder(SOUND);
            for (int n = random.nextInt(1, 5); n > 0; n--) {
                int at = random.nextInt(text.length());
                int letter = random.nextInt(letters.length());
                List<Consumer<StringBuilder>> changes =
                        List.of(
                                t -> t.deleteCharAt(at),
                                t -> t.insert(at, letters.charAt(letter)),
                                t -> t.insert(at, t.substring(at / 2, at)),
                                t -> t.replace(at, at + 1, letters.substring(letter)));
                changes.get(random.nextInt(changes.size())).accept(text);
            }
            assertHasPlaces(text.toString(), mistakesIn(text.toString()));
        }
    }

    private static void assertHasPlaces(String text, List<Mistake> mistakes) {
        List<String> lines = SourceFile.of("f", text).lines();
        for (Mistake mistake : mistakes) {
            int line = mistake.place().line();
            int column = mistake.place().column();
            assertTrue(line >= 1 && line <= lines.size(), mistake.place().toString());
            String written = lines.get(line - 1);
            int letters = written.codePointCount(0, written.length());
            assertTrue(column >= 1 && column <= letters + 1, mistake.place().toString());
        }
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "strap:40 | 5:5 | with a space behind the colon",
                "strap: [40,, 50] | 5:16 | one value between two commas"
            })
    void saysWhatWouldBeRight(String slip, String place, String right) {
        List<Mistake> told = mistakesIn(SOUND.replace("strap: 60", slip));
        assertEquals(1, told.size(), told.toString());
        assertEquals("bags.yaml:" + place, told.get(0).place().toString(), told.toString());
        assertTrue(told.get(0).right().contains(right), told.toString());
    }
}
