package secondbolt.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A notebook made again: what stands unchanged is left alone, and nothing else is believed. */
class UnchangedTest {
    private static final String BAND =
            """
            title: %s
            units: cm
            closures:
              band: {length: 65, extension: 1.8, buttons: %d, first: 1.5, last: 11, holes: upright,
                button: {across: 11 mm, thick: 2.5 mm}, laps: left over right}
            """;

    @TempDir Path folder;

    @BeforeEach
    void twoProjects() throws IOException {
        write("shirt", BAND.formatted("Shirt", 7));
        write("coat", BAND.formatted("Coat", 5));
        run("2 projects, ");
    }

    private void write(String project, String text) throws IOException {
        Path file = folder.resolve("projects").resolve(project).resolve("project.yaml");
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    /** Makes the notebook and says what of it was told. */
    private void run(String told) {
        Desktop again = new Desktop(folder);
        assertEquals(Secondbolt.DONE, again.run("notebook"), again.err());
        assertTrue(again.out().contains(told), again.out());
    }

    private Map<String, String> site() throws IOException {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder.resolve("site"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                texts.put(
                        file.toString(),
                        new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
            }
        }
        return texts;
    }

    /** What a run without anything kept makes of the same projects. */
    private Map<String, String> anew() throws IOException {
        try (Stream<Path> kept = Files.walk(folder.resolve(".secondbolt"))) {
            for (Path file : kept.filter(Files::isRegularFile).toList()) {
                Files.delete(file);
            }
        }
        run("2 projects, ");
        return site();
    }

    @Test
    void writesNothingWhereNothingChanged() throws IOException {
        Map<String, String> before = site();
        run("0 files written, " + before.size() + " unchanged");
        assertEquals(before, site());
    }

    @Test
    void makesOnlyTheProjectThatChanged() throws IOException {
        write("coat", BAND.formatted("Coat", 6));
        run("2 projects, ");
        Map<String, String> after = site();
        assertTrue(after.toString().contains("Coat"));
        assertEquals(anew(), after);
    }

    @Test
    void makesAnewWhatSomeoneElseWrote() throws IOException {
        Map<String, String> good = site();
        Files.writeString(folder.resolve("site/coat/index.html"), "<p>Cut it!</p>");
        run("1 file written");
        assertEquals(good, site());
        Files.delete(folder.resolve("site/shirt/band.pdf"));
        run("1 file written");
        assertEquals(good, site());
        Files.delete(folder.resolve("site/index.html"));
        run("1 file written");
        assertEquals(good, site());
    }

    /** The same bytes at the same place, but unpacked from elsewhere: another file. */
    @Test
    void doesNotBelieveAFolderThatCameFromElsewhere() throws IOException {
        Path page = folder.resolve("site/coat/index.html");
        byte[] bytes = Files.readAllBytes(page);
        Files.delete(page);
        Files.write(page, bytes);
        Desktop again = new Desktop(folder);
        assertEquals(Secondbolt.DONE, again.run("notebook"), again.err());
        assertTrue(again.out().contains("0 files written"), again.out());
        run("0 files written");
    }

    @Test
    void ignoresSealsThatAreSpoilt() throws IOException {
        Map<String, String> good = site();
        try (Stream<Path> kept = Files.walk(folder.resolve(".secondbolt"))) {
            for (Path file : kept.filter(Files::isRegularFile).toList()) {
                Files.writeString(file, "{\"program\": \"0.1.0\", \"seals\": [1, {");
            }
        }
        Path page = folder.resolve("site/coat/index.html");
        Files.writeString(page, Files.readString(page).replace("Coat", "Cut it!"));
        run("1 file written");
        assertEquals(good, site());
    }

    @Test
    void looksAtTheDeskAsWell() throws IOException {
        Files.writeString(folder.resolve("local.yaml"), "paper: letter\n");
        Map<String, String> before = site();
        run("2 projects, ");
        assertFalse(before.equals(site()), "other paper, other sheets");
    }

    @Test
    void takesAwayWhatIsNoLongerThere() throws IOException {
        Files.delete(folder.resolve("projects/coat/project.yaml"));
        run("1 project, ");
        assertFalse(site().keySet().toString().contains("coat"));
        assertFalse(site().toString().contains("Coat"));
    }

    @Test
    void tellsMistakesAndLeavesTheSiteAsItWas() throws IOException {
        Map<String, String> good = site();
        write("coat", BAND.formatted("Coat", 0));
        Desktop again = new Desktop(folder);
        assertEquals(Secondbolt.REFUSED, again.run("notebook"));
        assertEquals(good, site());
        write("coat", BAND.formatted("Coat", 5));
        run("0 files written");
    }

    /** A child's closing is warned of each time, not only when they are worked out. */
    @Test
    void tellsWarningsOfWhatStandsAgain() throws IOException {
        write(
                "shirt",
                """
                title: Smock
                units: cm
                wearer: {age: 2}
                closures: {neck: {length: 14, hooks: 2, first: 2, last: 2}}
                """);
        run("shirt: warning: neck: ");
        run("0 files written");
        run("shirt: warning: neck: ");
    }
}
