package secondbolt.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import secondbolt.file.form.Forms;
import secondbolt.file.form.MapForm;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.measure.Tape;

/** Texts reach pages in letters that are seen, and names in one line. */
class SeenLettersTest {
    private static final Key<String> TITLE = Key.required("title", Forms.text(60), "A.", "a");
    private static final Key<String> SUMMARY = Key.optional("summary", Forms.lines(60), "B.", "b");
    private static final Form<List<String>> ROOT =
            MapForm.of(
                    "a file",
                    List.of(TITLE, SUMMARY),
                    fields ->
                            Optional.of(
                                    List.of(
                                            fields.require(TITLE),
                                            fields.get(SUMMARY).orElse(""))));

    private static Optional<List<String>> read(String text, Mistakes mistakes) {
        return ProjectFileReader.read(
                SourceFile.of("project.yaml", text), ROOT, Tape.CENTIMETRE, mistakes);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "title: \"a\\eb\" | 1:8 `a\\u001Bb`, with the control character U+001B",
                "title: \"a\\x9Bb\" | 1:8 `a\\u009Bb`, with the control character U+009B",
                "title: \"a\\rb\" | 1:8 `a\\u000Db`, with the control character U+000D",
                "title: \"a\\Lb\" | 1:8 `a\\u2028b`, with the letter U+2028, which nobody sees",
                "title: \"a\\u202Eb\" | 1:8 `a\\u202Eb`, with the letter U+202E, which nobody sees",
                "title: \"a\\uD800b\" | 1:8 `a\\uD800b`, with the letter U+D800, which nobody sees",
                "\"ti\\etle\": a | 1:1 `ti\\u001Btle`, with the control character U+001B",
                "\"ti\\ntle\": a | 1:1 `ti\\ntle`, with the end of a line in it"
            })
    void tellsALetterThatNobodySeesOnce(String text, String told) {
        Mistakes mistakes = new Mistakes();
        assertTrue(read(text, mistakes).isEmpty());
        assertEquals(1, mistakes.count(), mistakes.inOrder().toString());
        assertEquals(
                told,
                mistakes.inOrder().get(0).place().toString().substring("project.yaml:".length())
                        + " "
                        + mistakes.inOrder().get(0).found());
    }

    @Test
    void makesATitleOneLineAndLeavesASummaryItsLines() {
        Mistakes mistakes = new Mistakes();
        String text = "title: \"a\\n  b\\tc\"\nsummary: |\n  one\n  two\n";
        assertEquals(Optional.of(List.of("a b c", "one\ntwo")), read(text, mistakes));
        assertEquals(List.of(), mistakes.inOrder());
    }
}
