package secondbolt.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import secondbolt.app.Desktop;
import secondbolt.file.source.Visible;

/**
 * A working folder with a sound project and its notebook, into which a stranger's project comes,
 * and beside it what is none of the program's business.
 */
final class StrangersDesk {
    private static final Pattern CLASS_NAME =
            Pattern.compile("[a-z]\\.[A-Z][A-Za-z]+(?:Exception|Error)|Exception|\\tat ");
    private static final Pattern PLACED =
            Pattern.compile("(?m)^[^\\n]+?(?::\\d+:\\d+: mistake: found | cannot be written: )");

    private final Path root;
    private final Desktop desktop;

    /**
     * Lays all out in an empty folder.
     *
     * @param sound the text of the sound project
     */
    StrangersDesk(Path root, String sound) {
        this.root = root;
        this.desktop = new Desktop(root.resolve("desk"));
        new Desktop(root.resolve("beside")).with("hers.txt", "hers").with("hers.yaml", sound);
        desktop.with("hers.txt", "hers").with("projects/apron/project.yaml", sound);
        assertEquals(0, desktop.run("notebook"), desktop.err());
    }

    /** The working folder. */
    Path folder() {
        return desktop.folder();
    }

    /** The folder beside it. */
    Path beside() {
        return root.resolve("beside");
    }

    /** The files of the site. */
    Map<String, String> site() {
        return Trees.in(folder().resolve("site"));
    }

    private Map<String, String> others() {
        Map<String, String> all = new TreeMap<>(Trees.in(root));
        all.keySet()
                .removeIf(
                        path ->
                                path.matches("desk/(site|\\.secondbolt)(/.*)?")
                                        || path.equals("desk/.secondbolt"));
        return all;
    }

    /** Runs a command within a minute; what it told, which a terminal can show. */
    private String told(int code, String... command) {
        Map<String, String> before = others();
        int found = assertTimeoutPreemptively(Duration.ofMinutes(1), () -> desktop.run(command));
        String told = desktop.err() + desktop.out();
        assertEquals(code, found, told);
        assertTrue(!told.contains("fault of the program"), told);
        assertTrue(!CLASS_NAME.matcher(told).find(), told);
        assertTrue(
                told.codePoints().noneMatch(letter -> letter != '\n' && Visible.isUnseen(letter)),
                told);
        assertEquals(before, others());
        return told;
    }

    /** A command tells what is wrong, and where, and leaves the site as it was. */
    void isRefused(String words, String... command) {
        Map<String, String> before = site();
        String told = told(1, command);
        assertTrue(told.contains(words), () -> words + " is not in: " + told);
        assertTrue(PLACED.matcher(told).find(), told);
        assertEquals(before, site());
    }

    /**
     * The project is taken, and both commands tell what is doubtful in it; the site does no harm.
     */
    void isWarned(String words, String project) {
        int code = words.startsWith("DO NOT CUT") ? 1 : 0;
        String checked = told(code, "check", project);
        assertTrue(checked.contains(words), () -> words + " is not in: " + checked);
        String made = told(0, "notebook");
        assertTrue(made.contains(words), () -> words + " is not in: " + made);
        SafePages.check(folder().resolve("site"));
    }

    /** A command does its work, and the site does no harm. */
    void isHarmless(String... command) {
        told(0, command);
        SafePages.check(folder().resolve("site"));
        assertEquals(
                0L, site().keySet().stream().filter(p -> p.endsWith("~")).count(), "left over");
    }

    /** Takes a file besides, by its path in the working folder. */
    void receives(String path, String text) {
        desktop.with(path, text);
    }

    /**
     * Takes a stranger's files in place of those of the one before: what is of the desk into the
     * working folder, the rest into a folder of its own.
     */
    void receives(Path from, String project) throws IOException {
        try (Stream<Path> all = Files.list(folder().resolve("projects"))) {
            for (Path one : all.filter(p -> !p.endsWith("apron")).toList()) {
                Trees.delete(one);
            }
        }
        Trees.delete(folder().resolve("local.yaml"));
        try (Stream<Path> all = Files.list(from)) {
            for (Path file : all.toList()) {
                String name = file.getFileName().toString();
                String path = name.equals("local.yaml") ? name : "projects/" + project + "/" + name;
                desktop.with(path, Files.readAllBytes(file));
            }
        }
    }
}
