package secondbolt.notebook;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Subject;

/** What a remake changes is told sheet by sheet and value by value. */
class ChangesTest {
    private static String workings(int edgeMm, List<Finding> findings) {
        return SampleSite.text(
                SampleSite.site(SampleSite.project("p", "P", edgeMm, findings)), "p/workings.json");
    }

    private static List<String> between(String before, String now) {
        return Changes.between(Optional.of(before), now);
    }

    @Test
    void tellsNothingWhereNothingChanged() {
        String same = workings(650, List.of());
        assertEquals(List.of(), between(same, same));
        assertEquals(List.of(), Changes.between(Optional.empty(), same));
    }

    @Test
    void tellsStaleSheetsFirstAndThenEachValue() {
        List<String> lines = between(workings(650, List.of()), workings(662, List.of()));
        assertTrue(
                lines.get(0)
                        .matches(
                                "sheet front-band: code (\\w{6}) -> \\w{6};"
                                        + " printed sheets with code \\1 are stale"),
                lines.get(0));
        assertEquals("sample › front band › edge length: 65 cm -> 66.2 cm", lines.get(1));
        assertEquals("sample › front band › marks › 2 › from top: 9.8 cm -> 10 cm", lines.get(2));
    }

    @Test
    void tellsNewAndRemovedSheets() {
        String one = "{\"sheets\": [{\"name\": \"a\", \"code\": \"CDFGHJ\"}]}";
        String other = "{\"sheets\": [{\"name\": \"b\", \"code\": \"KMNPQR\"}]}";
        assertEquals(
                List.of(
                        "new sheet b: code KMNPQR",
                        "sheet a is no longer made; printed sheets with code CDFGHJ are stale"),
                between(one, other));
    }

    @Test
    void knowsAMarkAgainByItsNumber() {
        String before = "{\"marks\": [{\"number\": 1, \"at\": 10}, {\"number\": 2, \"at\": 90}]}";
        String now =
                "{\"marks\": [{\"number\": 1, \"at\": 10}, {\"number\": 3, \"at\": 50},"
                        + " {\"number\": 2, \"at\": 91}]}";
        assertEquals(
                List.of("new: marks › 3: at 50", "marks › 2 › at: 90 -> 91"), between(before, now));
    }

    @Test
    void tellsFindingsThatCameOrWent() {
        String clean = workings(650, List.of());
        String found =
                workings(
                        650,
                        List.of(
                                new Finding(
                                        "band-no",
                                        new Subject.Closure("band"),
                                        Finding.Level.STOP,
                                        "No.",
                                        "Wait.")));
        assertEquals(
                List.of(
                        "new: findings › band-no band: sheet sample, level stop, text No., remedy"
                                + " Wait."),
                between(clean, found));
        assertEquals(
                List.of(
                        "no longer: findings › band-no band: sheet sample, level stop, text No.,"
                                + " remedy Wait."),
                between(found, clean));
    }

    @Test
    void tellsAnOutlineInOneLineAndAPairInFull() {
        String before = "{\"outline_mm\": [[0, 0], [10, 0], [10, 20]], \"size_mm\": [10, 20]}";
        String now = "{\"outline_mm\": [[0, 0], [11, 0], [10, 20]], \"size_mm\": [11, 20]}";
        assertEquals(
                List.of("outline: changed", "size: [1 cm, 2 cm] -> [1.1 cm, 2 cm]"),
                between(before, now));
    }

    @Test
    void tellsANewGroupWithItsValues() {
        String now =
                "{\"effects\": {\"lengthen body\": {\"cloth_mm2\": 18200, \"moved\": [{\"what\":"
                        + " \"side\", \"by_mm\": 20}]}, \"widen side\": {\"cloth_mm2\": null}}}";
        assertEquals(
                List.of(
                        "new: effects: lengthen body (cloth 0.02 m², moved 1 item), widen side"
                                + " (cloth open)"),
                between("{}", now));
        assertEquals(List.of("no longer: effects: nothing"), between("{\"effects\": {}}", "{}"));
    }

    @Test
    void countsTheValuesOfANewGroupThatHasMany() {
        String outline = "[0, 0], [1, 0], [2, 0], [3, 1], [4, 2], [5, 3], [6, 9]";
        assertEquals(
                List.of("new: pieces: front 7 points, cut 2"),
                between("{}", "{\"pieces\": {\"front_mm\": [" + outline + "], \"cut\": 2}}"));
        assertEquals(
                List.of("new: outline: 7 points"),
                between("{}", "{\"outline_mm\": [" + outline + "]}"));
    }

    @Test
    void countsWhatIsTooMuchToList() {
        List<String> before = new ArrayList<>();
        List<String> now = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            before.add("\"v" + i + "\": 1");
            now.add("\"v" + i + "\": 2");
        }
        List<String> lines =
                between("{" + String.join(",", before) + "}", "{" + String.join(",", now) + "}");
        assertEquals(31, lines.size());
        assertEquals("and 10 more", lines.get(30));
    }

    @Test
    void comparesNothingWithAFileThatIsBroken() {
        assertEquals(
                List.of("the last workings.json cannot be read, so nothing was compared"),
                between("{\"sheets\": [", "{}"));
    }

    /** What stands for what is turned round: each is compared, or is as if it were not there. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"x\": 1e999}",
                "{\"x_mm\": -1e999, \"x_mm2\": 1e12}",
                "{\"sheets\": {\"name\": 1}}",
                "{\"sheets\": [1, [2]]}",
                "{\"sheets\": [{\"name\": [], \"code\": {}}]}",
                "{\"title\": [\"a\"]}",
                "{\"title\": \"a\\nb\"}",
                "{\"a\": {\"b\\u001b[2J\": 1}}",
                "{\"a\": \"\\u009b\"}"
            })
    void comparesNothingWithWhatNoRunWrote(String before) {
        assertEquals(
                List.of("the last workings.json cannot be read, so nothing was compared"),
                between(before, "{}"));
    }

    @Test
    void comparesNothingWithAMillionSheets() {
        String sheets = "{\"name\": \"a\"},".repeat(100_000) + "{}";
        assertEquals(1, between("{\"sheets\": [" + sheets + "]}", "{}").size());
        assertEquals(1, between("{\"a\": \"" + "x".repeat(30_000) + "\"}", "{}").size());
    }

    /** A line that is told is one line. */
    @Test
    void tellsATextOfSeveralLinesInOne() {
        assertEquals(
                List.of("no longer: a: one shirt: fits"),
                between("{\"a\": \"one\\nshirt: fits\"}", "{}"));
        String told = between("{\"a\": \"" + "x".repeat(9_000) + "\"}", "{}").get(0);
        assertEquals(2_001, told.length());
    }

    /** Each value of sound workings put in another's place, seen from either side. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void endsWithWhateverStandsInAValuesPlace(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<String> values =
                List.of(
                        "1",
                        "-0",
                        "1e9",
                        "\"\"",
                        "null",
                        "true",
                        "[]",
                        "{}",
                        "[1, 2]",
                        "[[1, 2]]",
                        "[{}]",
                        "[null]",
                        "[[1, null]]",
                        "{\"x_mm\": [1]}",
                        "[{\"name\": null}]");
        List<String> keys =
                List.of("a", "a_mm", "a_mm2", "a_g", "_mm", "_", "sheets", "units", "name");
        for (int i = 0; i < 3_000; i++) {
            String before = any(random, keys, values);
            String now = any(random, keys, values);
            assertDoesNotThrow(() -> between(before, now), before + " and " + now);
        }
    }

    private static String any(SplittableRandom random, List<String> keys, List<String> values) {
        return keys.stream()
                .filter(key -> random.nextBoolean())
                .map(key -> "\"" + key + "\": " + values.get(random.nextInt(values.size())))
                .collect(Collectors.joining(", ", "{", "}"));
    }

    private static Finding fullness(String text) {
        return new Finding(
                "hem-fullness", new Subject.Hem("shirt hem"), Finding.Level.NOTE, text, "");
    }

    /** Two of one code about one hem: the third is new, and neither of the two has changed. */
    @Test
    void tellsOnlyTheFindingThatIsMoreAmongSeveralOfItsKind() {
        Finding front = fullness("The front is 4 mm too long.");
        Finding back = fullness("The back is 6 mm too long.");
        Finding pocket = fullness("The pocket is 2 mm too long.");
        String two = workings(650, List.of(front, back));
        String three = workings(650, List.of(pocket, front, back));
        String text = ": sheet sample, level note, text The pocket is 2 mm too long., remedy ";
        assertEquals(List.of("new: findings › hem-fullness shirt hem" + text), between(two, three));
        assertEquals(1, between(three, two).size());
        assertTrue(between(three, two).get(0).startsWith("no longer: "), "" + between(three, two));
        assertTrue(between(three, two).get(0).endsWith(text), "" + between(three, two));
    }

    /** What the back's says now: a change of that one. */
    @Test
    void tellsATextThatChangedAsAChange() {
        Finding front = fullness("The front is 4 mm too long.");
        assertEquals(
                List.of(
                        "findings › hem-fullness shirt hem (2) › text: The back is 6 mm too long."
                                + " -> The back is 7 mm too long."),
                between(
                        workings(650, List.of(front, fullness("The back is 6 mm too long."))),
                        workings(650, List.of(front, fullness("The back is 7 mm too long.")))));
    }

    /** Items that nothing names: one put in before the others changes none of them. */
    @Test
    void knowsWhatHasNoNameByWhatItIs() {
        assertEquals(
                List.of("new: rows › 1: at 5"),
                between(
                        "{\"rows\": [{\"at\": 10}, {\"at\": 20}]}",
                        "{\"rows\": [{\"at\": 5}, {\"at\": 10}, {\"at\": 20}]}"));
    }
}
