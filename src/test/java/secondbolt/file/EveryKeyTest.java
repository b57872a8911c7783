package secondbolt.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import secondbolt.file.form.MapForm;
import secondbolt.file.source.Mistake;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.file.source.YamlReader;
import secondbolt.lay.kept.LayDesk;
import secondbolt.measure.Tape;
import secondbolt.project.Project;
import secondbolt.project.ProjectSection;
import secondbolt.project.Topics;

/** What a person may say under any key at all, whether it can stand there or not. */
class EveryKeyTest {
    private static final Form<Project> ROOT = ProjectSection.form(Topics.all(LayDesk.inMemory()));

    /** What is told to be right, if it is a whole line. */
    private static final Pattern LINE = Pattern.compile("^`([^`]+: [^`]+)`");

    private static void walk(List<Key<?>> keys, String above, BiConsumer<String, Key<?>> each) {
        for (Key<?> key : keys) {
            String path = above + key.name();
            if (key.need() != Key.Need.LATER) {
                each.accept(path, key);
            }
            walk(key.form().keys(), path + ".", each);
        }
    }

    private static List<Mistake> mistakes(Key<?> key, String line, Tape tape) {
        Mistakes mistakes = new Mistakes();
        SourceFile source = SourceFile.of("project.yaml", line + "\n");
        Form<Boolean> alone = MapForm.of("a file", List.of(key), f -> Optional.of(true));
        alone.read(
                new YamlReader(source, mistakes).read().orElseThrow(),
                new Reading(source, mistakes, tape, true, true));
        return mistakes.inOrder();
    }

    /** Either it is taken, or one message says what would be, and that is taken. */
    @ParameterizedTest
    @ValueSource(strings = {"unknown", "none", "no", "yes"})
    void takesTheWordOrSaysWhatWouldBeRight(String word) {
        List<String> seen = new ArrayList<>();
        walk(
                ROOT.keys(),
                "",
                (path, key) -> {
                    for (Tape tape : Tape.values()) {
                        holds(path, key, word, tape);
                    }
                    seen.add(path);
                });
        assertTrue(seen.size() > 250, seen.size() + " keys seen");
    }

    private static void holds(String path, Key<?> key, String word, Tape tape) {
        List<Mistake> told = mistakes(key, key.name() + ": " + word, tape);
        if (told.isEmpty()) {
            return;
        }
        assertEquals(1, told.size(), path + ": " + told);
        String right = told.get(0).right();
        assertTrue(right.matches("(?s).*(`[^`]+`|\\d).*"), path + ": " + word + ": " + right);
        assertFalse(right.matches("(?s).*(one of\\s*([,;.:]|$)|``|an? ([,;.:]|$)).*"), right);
        if (tape == Tape.INCH) {
            assertFalse(right.matches("(?s).*`[^`]*\\d ?(mm|cm)\\b[^`]*`.*"), path + ": " + right);
        }
        Matcher line = LINE.matcher(right);
        if (line.find() && line.group(1).startsWith(key.name() + ": ")) {
            assertEquals(List.of(), mistakes(key, line.group(1), tape), path + ": " + right);
        }
    }

    /** What may be left out may be left open, and nothing else is silently passed over. */
    @Test
    void leavesOpenWhatMayBeLeftOut() {
        walk(
                ROOT.keys(),
                "",
                (path, key) -> {
                    if (key.need() == Key.Need.OPTIONAL) {
                        assertEquals(
                                List.of(),
                                mistakes(key, key.name() + ": unknown", Tape.INCH),
                                path);
                    }
                });
    }
}
