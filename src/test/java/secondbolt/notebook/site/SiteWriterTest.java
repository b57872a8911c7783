package secondbolt.notebook.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import secondbolt.disk.AtomicFile;

/** A site is put in place whole, and nothing that is not its own is touched. */
class SiteWriterTest {
    /** As long as most file systems let a name be, so that no temporary fits beside it. */
    private static final String LONGEST_NAME = "n".repeat(255);

    @TempDir Path folder;

    private static List<SiteFile> site(String... pathsAndTexts) {
        List<SiteFile> files = new ArrayList<>();
        for (int i = 0; i < pathsAndTexts.length; i += 2) {
            files.add(SiteFile.text(pathsAndTexts[i], pathsAndTexts[i + 1]));
        }
        files.add(Contents.of("1", files));
        return files;
    }

    /** A page that bears the program's mark. */
    private static String page(String words) {
        return words + "<footer>\n<p>Made by Secondbolt 1</p>\n</footer>\n</body>\n</html>\n";
    }

    private Path out() {
        return folder.resolve("site");
    }

    private static Map<String, String> tree(Path root) throws IOException {
        Map<String, String> tree = new TreeMap<>();
        try (Stream<Path> paths = Files.walk(root)) {
            for (Path path : (Iterable<Path>) paths::iterator) {
                boolean isFile = Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS);
                String text = isFile ? Files.readString(path) : "";
                tree.put(root.relativize(path).toString().replace('\\', '/'), text);
            }
        }
        return tree;
    }

    @Test
    void writesOnlyWhatChanged() throws IOException {
        SiteWriter.write(out(), site("p/index.html", page("one"), "index.html", page("front")));
        FileTime long_ago = FileTime.fromMillis(0);
        Files.setLastModifiedTime(out().resolve("index.html"), long_ago);
        SiteWriter.Written written =
                SiteWriter.write(
                        out(), site("p/index.html", page("two"), "index.html", page("front")));
        assertEquals(List.of("p/index.html"), written.written());
        assertEquals(2, written.unchanged());
        assertEquals(long_ago, Files.getLastModifiedTime(out().resolve("index.html")));
        assertEquals(page("two"), SiteWriter.textIn(out(), "p/index.html").orElseThrow());
    }

    @Test
    void leavesNothingBehindButTheSite() throws IOException {
        SiteWriter.write(out(), site("p/index.html", page("one")));
        assertEquals(
                List.of("", "contents.json", "p", "p/index.html"),
                List.copyOf(tree(out()).keySet()));
    }

    @Test
    void deletesWhatIsNoLongerMadeAndNothingElse() throws IOException {
        SiteWriter.write(
                out(),
                site("a/index.html", page("1"), "b/index.html", page("2"), "index.html", "i"));
        Files.writeString(out().resolve("a/hers.txt"), "hers");
        SiteWriter.Written written = SiteWriter.write(out(), site("index.html", "i"));
        assertEquals(List.of("a/index.html", "b/index.html"), written.deleted());
        assertEquals(
                List.of("", "a", "a/hers.txt", "contents.json", "index.html"),
                List.copyOf(tree(out()).keySet()));
    }

    @Test
    void deletesNothingOutsideTheSiteWhateverTheListSays() throws IOException {
        Path hers = Files.writeString(folder.resolve("hers.txt"), "hers");
        Files.createDirectories(out());
        Files.createDirectories(folder.resolve("other"));
        Files.writeString(folder.resolve("other/photo.jpg"), "photo");
        Files.createSymbolicLink(out().resolve("link"), folder.resolve("other"));
        Files.writeString(
                out().resolve("contents.json"),
                Contents.write(
                        "1",
                        List.of(
                                "../hers.txt",
                                hers.toString(),
                                "a/../../hers.txt",
                                "link/photo.jpg",
                                "C:\\hers.txt",
                                "contents.json")));
        assertEquals(List.of(), SiteWriter.write(out(), site("index.html", "i")).deleted());
        assertTrue(Files.exists(hers));
        assertTrue(Files.exists(folder.resolve("other/photo.jpg")));
    }

    @Test
    void deletesNothingForAListOfSomeOtherProgram() throws IOException {
        Files.createDirectories(out());
        Files.writeString(out().resolve("hers.txt"), "hers");
        Files.writeString(out().resolve("contents.json"), "{\"files\": [\"hers.txt\"]}");
        assertThrows(
                UncheckedIOException.class, () -> SiteWriter.write(out(), site("index.html", "i")));
        assertEquals(List.of("", "contents.json", "hers.txt"), List.copyOf(tree(out()).keySet()));
    }

    @Test
    void doesNotOverwriteAFileItDidNotMake() throws IOException {
        Files.createDirectories(out());
        Files.writeString(out().resolve("index.html"), "hers");
        UncheckedIOException e =
                assertThrows(
                        UncheckedIOException.class,
                        () -> SiteWriter.write(out(), site("index.html", "ours")));
        assertTrue(e.getMessage().contains("index.html: not made by Secondbolt"), e.getMessage());
        assertEquals(Map.of("", "", "index.html", "hers"), tree(out()));
    }

    @Test
    void leavesTheOldSiteAsItWasWhenTheDiskFailsHalfWay() throws IOException {
        SiteWriter.write(out(), site("p/index.html", page("old"), "index.html", page("old")));
        Map<String, String> before = tree(out());
        UncheckedIOException e =
                assertThrows(
                        UncheckedIOException.class,
                        () ->
                                SiteWriter.write(
                                        out(),
                                        site(
                                                "p/index.html",
                                                page("new"),
                                                "q/deep/index.html",
                                                "new",
                                                "r/" + LONGEST_NAME,
                                                "new",
                                                "index.html",
                                                "new")));
        assertTrue(e.getMessage().contains(LONGEST_NAME), e.getMessage());
        assertEquals(before, tree(out()));
    }

    @Test
    void makesNoFolderForASiteThatFails() {
        assertThrows(
                UncheckedIOException.class,
                () -> SiteWriter.write(out(), site("a", "1", "b/" + LONGEST_NAME, "2")));
        assertFalse(Files.exists(out()));
    }

    @Test
    void saysWhatStandsWhereAFolderBelongs() throws IOException {
        Files.createDirectories(out());
        Files.writeString(out().resolve("p"), "hers");
        UncheckedIOException e =
                assertThrows(
                        UncheckedIOException.class,
                        () -> SiteWriter.write(out(), site("a", "1", "p/index.html", "i")));
        assertTrue(e.getMessage().contains("a file stands where a folder"), e.getMessage());
        assertEquals(Map.of("", "", "p", "hers"), tree(out()));
        UncheckedIOException onFile =
                assertThrows(
                        UncheckedIOException.class,
                        () -> SiteWriter.write(out().resolve("p"), site("a", "1")));
        assertTrue(onFile.getMessage().contains("a file stands where"), onFile.getMessage());
    }

    @Test
    void doesNotWriteThroughALinkOutOfTheSite() throws IOException {
        Files.createDirectories(out());
        Files.createDirectories(folder.resolve("other"));
        Files.createSymbolicLink(out().resolve("p"), folder.resolve("other"));
        assertThrows(
                UncheckedIOException.class,
                () -> SiteWriter.write(out(), site("p/index.html", "i")));
        assertEquals(Map.of("", ""), tree(folder.resolve("other")));
    }

    @Test
    void clearsAwayWhatAKilledRunLeft() throws IOException {
        SiteWriter.write(out(), site("index.html", page("old")));
        // As after a kill between the first and the second move: one new page, one temporary.
        Files.createDirectories(out().resolve("gone"));
        Files.writeString(out().resolve("gone/index.html"), page("new"));
        Files.writeString(out().resolve("gone/sheet.pdf" + AtomicFile.PART), "half");
        Files.writeString(
                out().resolve(SiteWriter.JOURNAL),
                Contents.write("", List.of("gone/index.html", "gone/sheet.pdf", "index.html")));
        SiteWriter.write(out(), site("index.html", page("newest")));
        assertEquals(List.of("", "contents.json", "index.html"), List.copyOf(tree(out()).keySet()));
        assertEquals(page("newest"), SiteWriter.textIn(out(), "index.html").orElseThrow());
    }

    @Test
    void readsNoFileOutsideTheSite() throws IOException {
        Files.createDirectories(out());
        Files.writeString(folder.resolve("hers.txt"), "hers");
        assertTrue(SiteWriter.textIn(out(), "../hers.txt").isEmpty());
        assertTrue(SiteWriter.textIn(out(), "none.txt").isEmpty());
    }
}
