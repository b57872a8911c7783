package secondbolt.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import secondbolt.app.Desktop;

/**
 * A site with a list that is spoilt or a lie, or of a project that cannot be read, loses nothing.
 */
class SiteListsTest {
    @TempDir Path temporary;
    private TrappedDesk desk;

    @BeforeEach
    void layOut() throws IOException {
        desk = new TrappedDesk(temporary);
    }

    /** A project that cannot be read is not one that is gone. */
    @TestFactory
    Stream<DynamicTest> pagesOfAProjectThatCannotBeReadStay() {
        Map<String, Trap> ways =
                Map.of(
                        "a link that leads nowhere", Trap.BROKEN,
                        "a folder", Trap.FOLDER,
                        "a pipe", Trap.PIPE,
                        "a folder without a project.yaml, which has pages",
                                path -> Files.writeString(path.resolveSibling("plan.txt"), ""),
                        "a file that cannot be read", SiteListsTest::closed);
        return ways.entrySet().stream()
                .map(
                        way ->
                                DynamicTest.dynamicTest(
                                        way.getKey(),
                                        () -> staysWith(way.getValue(), way.getKey())));
    }

    private static void closed(Path path) throws IOException {
        Files.writeString(path, SoundProject.BAND);
        Assumptions.assumeTrue(path.toFile().setReadable(false));
        Assumptions.assumeFalse(Files.isReadable(path), "to this user rights mean nothing");
    }

    private void staysWith(Trap trap, String told) throws IOException {
        Desktop desktop = desk.anew();
        assertEquals(0, desktop.run("notebook"), desktop.err());
        Map<String, String> site = Trees.in(desk.folder().resolve("site"));
        Path project = desk.folder().resolve("projects/coat/project.yaml");
        Files.delete(project);
        trap.at(project);
        assertEquals(1, desktop.run("notebook"), desktop.out());
        assertTrue(desktop.err().startsWith("projects/coat"), desktop.err());
        assertTrue(desktop.err().contains(told), desktop.err());
        assertEquals(site, Trees.in(desk.folder().resolve("site")));
    }

    @Test
    void aListThatNamesFilesOfOthersDeletesNone() throws IOException {
        Desktop desktop = desk.anew();
        assertEquals(0, desktop.run("notebook"), desktop.err());
        List<String> hers = List.of("hers.txt", "coat/photo.jpg", "coat/notes.pdf", "hers.html");
        String list = desktop.read("site/contents.json");
        for (String path : hers) {
            desktop.with("site/" + path, "hers");
            list = list.replaceFirst("\"files\": \\[", "\"files\": [\"" + path + "\", ");
        }
        desktop.with("site/contents.json", list);
        Trees.delete(desk.folder().resolve("projects/coat"));
        assertEquals(0, desktop.run("notebook"), desktop.err());
        for (String path : hers) {
            assertEquals("hers", desktop.read("site/" + path));
            assertTrue(
                    desktop.err().contains("site/" + path + ": not made by Secondbolt"),
                    desktop.err());
        }
        assertFalse(Files.exists(desk.folder().resolve("site/coat/index.html")));
    }

    @Test
    void aListThatNamesAFileOfOthersOverwritesNone() throws IOException {
        Desktop desktop = desk.anew();
        desktop.with("site/index.html", "hers");
        desktop.with(
                "site/contents.json", "{\"secondbolt\": \"0.1.0\", \"files\": [\"index.html\"]}");
        assertEquals(1, desktop.run("notebook"), desktop.out());
        assertEquals("hers", desktop.read("site/index.html"));
    }

    @TestFactory
    Stream<DynamicTest> aListThatIsSpoiltIsMadeAgain() {
        return Stream.of("", "{\n  \"secondbo", "{}", "[1]", "\0\0\0", "gone")
                .map(text -> DynamicTest.dynamicTest("list " + text, () -> isMadeAgain(text)));
    }

    private void isMadeAgain(String text) throws IOException {
        Desktop desktop = desk.anew();
        assertEquals(0, desktop.run("notebook"), desktop.err());
        Map<String, String> good = Trees.in(desk.folder().resolve("site"));
        for (String command : List.of("notebook", "notebook projects/apron")) {
            for (String list : List.of("contents.json", ".unfinished.json")) {
                desktop.with("site/" + list, text);
                if (text.equals("gone")) {
                    Files.delete(desk.folder().resolve("site").resolve(list));
                }
                assertEquals(0, desktop.run(command.split(" ")), desktop.err());
                assertEquals(good, Trees.in(desk.folder().resolve("site")));
            }
        }
        Files.delete(desk.folder().resolve("site/contents.json"));
        Trees.delete(desk.folder().resolve("projects/coat"));
        assertEquals(0, desktop.run("notebook"), desktop.err());
        assertFalse(Files.exists(desk.folder().resolve("site/coat")), "found without the list");
    }
}
