package secondbolt.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import secondbolt.app.kept.LayFolder;

/**
 * What is kept between runs may have come with a download: whatever stands there, the notebook is
 * that of a run with nothing kept, byte for byte.
 */
class PoisonedKeepTest {
    private static final String APRON =
            """
            title: Apron
            units: cm
            cloth:
              sheet: {size: [90, 60], prewash: done, flaws: [{what: hole, at: [45, 30], round: 4}]}
            pattern:
              seam allowance: {of: 1, included: false}
              pieces:
                bib: {cut: 1, rectangle: [26, 20]}
                pocket: {cut: 2, rectangle: [14, 16]}
            """;

    private static final Map<String, String> POISONS =
            Map.ofEntries(
                    Map.entry("nothing", ""),
                    Map.entry("all left over", "end\n"),
                    Map.entry(
                            "stretched",
                            "0 0 false 0 10.0000000 10.0000000\n1 0 false 0 10.0000000 300.0000000\n2 0 false 0 200.0000000 300.0000000\nend\n"),
                    Map.entry(
                            "on each other",
                            "0 0 false 0 10.0000000 10.0000000\n1 0 false 0 10.0000000 10.0000000\n2 0 false 0 10.0000000 10.0000000\nend\n"),
                    Map.entry("far off", "0 0 false 0 1e300 -1e300\nend\n"),
                    Map.entry("no number", "0 0 false 0 NaN Infinity\nend\n"),
                    Map.entry("no such item", "2147483648 -7 maybe 1e9 x y\nend\n"),
                    Map.entry("twice", "0 0 false 0 10.0000000 10.0000000\n".repeat(2) + "end\n"),
                    Map.entry("a million lines", "0 0 false 0 1.0 1.0\n".repeat(1_000_000)),
                    Map.entry("one long line", "9".repeat(3_000_000)),
                    Map.entry("remnant of it all", "0.0 0.0 900.0 600.0 end\n"),
                    Map.entry("small remnant", "1.0 1.0 2.0 2.0 end\n"),
                    Map.entry("endless remnant", "-1.0E308 -1.0E308 1.0E308 1.0E308 end\n"),
                    Map.entry("deep", "{\"seals\": " + "[".repeat(100_000)),
                    Map.entry("large number", "{\"program\": 1e999, \"seals\": {\"\": 1e-999}}"),
                    Map.entry("control characters", "\u001b[2J\u0000\u0007\r\n"));

    @TempDir Path folder;

    @BeforeEach
    void anHonestRun() {
        new Desktop(folder).with("projects/apron/project.yaml", APRON);
        run("notebook");
    }

    /** The lays kept in memory are those of other runs: each run reads the folder. */
    private Desktop run(String... args) {
        LayFolder other = new LayFolder(folder, false);
        IntStream.range(0, 300).forEach(i -> other.keep("other " + i, ""));
        Desktop desktop = new Desktop(folder);
        assertEquals(Secondbolt.DONE, desktop.run(args), desktop.err());
        return desktop;
    }

    private List<Path> kept(String room) throws IOException {
        Path all = folder.resolve(".secondbolt").resolve(room);
        if (!Files.exists(all)) {
            return List.of();
        }
        try (Stream<Path> files = Files.walk(all)) {
            return files.filter(Files::isRegularFile).sorted().toList();
        }
    }

    private Map<String, String> site(String name) throws IOException {
        Map<String, String> texts = new TreeMap<>();
        Path site = folder.resolve(name);
        try (Stream<Path> files = Files.walk(site)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                byte[] bytes = Files.readAllBytes(file);
                texts.put(
                        site.relativize(file).toString(),
                        new String(bytes, StandardCharsets.ISO_8859_1));
            }
        }
        return texts;
    }

    /** Each poison in every file of every room, and a site made from them. */
    @ParameterizedTest
    @CsvSource({
        "nothing",
        "all left over",
        "stretched",
        "on each other",
        "far off",
        "no number",
        "no such item",
        "twice",
        "a million lines",
        "one long line",
        "remnant of it all",
        "small remnant",
        "endless remnant",
        "deep",
        "large number",
        "control characters"
    })
    void whateverIsKeptTheNotebookIsTheSame(String poison) throws IOException {
        Map<String, String> honest = site("site");
        assertFalse(kept("lays").isEmpty());
        for (Path file : kept("")) {
            Files.writeString(file, POISONS.get(poison));
        }
        run("notebook");
        assertEquals(honest, site("site"));
        run("notebook", "--out", "other");
        assertEquals(honest, site("other"));
    }

    /** A folder that was copied together with its marks is another one, too. */
    @Test
    void aFolderThatCameFromElsewhereIsNotBelieved() throws IOException {
        Map<String, String> honest = site("site");
        for (Path file : kept("lays")) {
            Path copy = file.resolveSibling("copy");
            Files.writeString(copy, "end\n");
            Files.delete(file);
            Files.move(copy, file);
        }
        run("notebook", "--out", "other");
        assertEquals(honest, site("other"));
    }

    /** That lays are kept at all is seen by their files: none is written anew. */
    @Test
    void whatThisProgramKeptHereIsTaken() throws IOException {
        Map<Path, Object> before = new TreeMap<>();
        for (Path file : kept("lays")) {
            before.put(file, Files.getLastModifiedTime(file));
        }
        run("notebook", "--out", "other");
        for (Path file : kept("lays")) {
            assertEquals(before.get(file), Files.getLastModifiedTime(file));
        }
        assertFalse(before.isEmpty());
    }

    /** Of another version, a file of figures tells nothing, and nothing of it is printed. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"title\": \"\\u001b[2Jshirt: fits\"}",
                "{\"sheets\": [{\"name\": \"a\", \"code\": \"b\\nshirt: fits\"}]}",
                "{\"sheets\": [{\"name\": \"a\", \"pages\": 1e999}]}",
                "{\"sheets\": [{\"name\": \"a\", \"pages\": -4}]}",
                "{\"sheets\": 7}",
                "{\"title\": 1, \"title\": 2}",
                "[[[["
            })
    void figuresThatNoRunWroteAreAsIfThereWereNone(String figures) throws IOException {
        Map<String, String> honest = site("site");
        Files.writeString(folder.resolve("site/apron/workings.json"), figures);
        Desktop again = run("notebook");
        assertEquals(honest, site("site"));
        assertTrue(again.out().contains("cannot be read, so nothing was compared"), again.out());
        assertFalse(again.out().contains("\u001b"));
        assertFalse(again.out().contains("shirt"), again.out());
    }

    /** The other projects of a site, as a stranger's list and figures tell of them. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "../../out",
                "/etc",
                "C:",
                "a\\u0007b",
                "a\\ud800b",
                "<script>alert(1)<\\/script>",
                "photos"
            })
    void aStrangersListOfContentsDoesNoHarm(String name) throws IOException {
        String contents =
                Files.readString(folder.resolve("site/contents.json"))
                        .replace("\"files\": [", "\"files\": [\"" + name + "/cat.jpg\", ");
        Files.writeString(folder.resolve("site/contents.json"), contents);
        run("notebook", "projects/apron");
        String page = Files.readString(folder.resolve("site/index.html"));
        assertFalse(page.contains("<script>alert"), page);
        assertFalse(page.contains("cat.jpg") || page.contains("photos/"), page);
    }

    @Test
    void aKeptProjectIsShownWithinBounds() throws IOException {
        String huge = "9".repeat(9);
        new Desktop(folder)
                .with("site/coat/index.html", "kept")
                .with(
                        "site/coat/workings.json",
                        "{\"title\": \"Coat\", \"sheets\": [{\"name\": \"a\", \"pages\": "
                                + huge
                                + "}, {\"name\": \"b\", \"pages\": "
                                + huge
                                + "}]}");
        String contents =
                Files.readString(folder.resolve("site/contents.json"))
                        .replace(
                                "\"files\": [",
                                "\"files\": [\"coat/index.html\", \"coat/workings.json\", ");
        Files.writeString(folder.resolve("site/contents.json"), contents);
        run("notebook", "projects/apron");
        String page = Files.readString(folder.resolve("site/index.html"));
        assertTrue(page.contains("coat/index.html"), page);
        assertFalse(page.contains("Coat") || page.contains("99"), page);
        assertEquals("kept", Files.readString(folder.resolve("site/coat/index.html")));
    }
}
