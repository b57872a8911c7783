package secondbolt.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import secondbolt.tools.Tools;

/**
 * Holds the notebook of the demo projects: as committed, the same twice, and the same elsewhere.
 */
class SiteTest {
    private static final Path COMMITTED = Path.of("site");

    @TempDir Path folder;

    private Path make(String name) {
        Path out = folder.resolve(name).toAbsolutePath();
        Desktop here = new Desktop(Path.of("").toAbsolutePath());
        // A maker's own local.yaml must not reach the committed site.
        assertTrue(!Files.exists(Path.of("local.yaml")), "move local.yaml away for this test");
        assertEquals(Secondbolt.DONE, here.run("notebook", "--out", out.toString()), here.err());
        return out;
    }

    private static Map<String, byte[]> filesOf(Path site) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(site)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                String path = site.relativize(file).toString().replace('\\', '/');
                files.put(path, Files.readAllBytes(file));
            }
        }
        return files;
    }

    @Test
    void isCommittedAsAFreshRunMakesIt() throws IOException {
        Map<String, byte[]> fresh = filesOf(make("fresh"));
        Map<String, byte[]> committed = filesOf(COMMITTED);
        assertEquals(fresh.keySet(), committed.keySet());
        List<String> different = new ArrayList<>();
        for (String path : fresh.keySet()) {
            if (!same(path, fresh.get(path), committed.get(path))) {
                different.add(path);
                Path actual = Path.of("target/golden").resolve(path);
                Files.createDirectories(actual.getParent());
                Files.write(actual, fresh.get(path));
            }
        }
        assertEquals(List.of(), different, "remake site/ and read the diff; see target/golden");
    }

    /** Deflate belongs to the machine, so the pages of a PDF are compared decoded. */
    private static boolean same(String path, byte[] fresh, byte[] committed) throws IOException {
        return path.endsWith(".pdf")
                ? contents(fresh).equals(contents(committed))
                : Arrays.equals(fresh, committed);
    }

    private static List<String> contents(byte[] pdf) throws IOException {
        List<String> pages = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            pages.add(document.getDocumentInformation().getTitle());
            for (PDPage page : document.getPages()) {
                pages.add(page.getMediaBox().toString());
                pages.add(Arrays.toString(page.getContents().readAllBytes()));
            }
        }
        return pages;
    }

    @Test
    void isTheSameToTheByteInAnotherCountry() throws IOException {
        Map<String, byte[]> here = filesOf(make("here"));
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
            Map<String, byte[]> there = filesOf(make("there"));
            assertEquals(here.keySet(), there.keySet());
            here.forEach((path, bytes) -> assertTrue(Arrays.equals(bytes, there.get(path)), path));
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @Test
    void isTheSameInWhateverOrderTheProjectsWereMade() throws IOException {
        String other = Desktop.APRON.replace("Apron", "Bib");
        Path one = folder.resolve("one");
        new Desktop(one)
                .with("projects/apron/project.yaml", Desktop.APRON)
                .with("projects/bib/project.yaml", other)
                .run();
        Path two = folder.resolve("two");
        new Desktop(two)
                .with("projects/bib/project.yaml", other)
                .with("projects/apron/project.yaml", Desktop.APRON)
                .run();
        Map<String, byte[]> first = filesOf(one.resolve("site"));
        Map<String, byte[]> second = filesOf(two.resolve("site"));
        assertEquals(first.keySet(), second.keySet());
        first.forEach((path, bytes) -> assertTrue(Arrays.equals(bytes, second.get(path)), path));
    }

    @Test
    void writesNothingASecondTime() {
        Desktop desktop = new Desktop(folder).with("projects/apron/project.yaml", Desktop.APRON);
        desktop.run();
        assertEquals(Secondbolt.DONE, desktop.run());
        assertTrue(desktop.out().contains(" 0 files written"), desktop.out());
    }

    @Test
    void tellsWhichPrintedSheetsAreStaleAfterAChange() {
        Desktop desktop = new Desktop(folder).with("projects/apron/project.yaml", Desktop.APRON);
        desktop.run();
        desktop.with("projects/apron/project.yaml", Desktop.APRON.replace("last: 8", "last: 9"));
        desktop.run();
        assertTrue(desktop.out().contains("are stale"), desktop.out());
        assertTrue(desktop.out().contains("from_top_mm: 320 -> 310"), desktop.out());
        assertTrue(!desktop.out().contains("apron: cloth"), desktop.out());
    }

    @Test
    void makesFilesThatAnotherReaderFindsSound() throws IOException {
        String qpdf = Tools.require("qpdf").toString();
        Path site = make("checked");
        int checked = 0;
        for (String path : filesOf(site).keySet()) {
            if (path.endsWith(".pdf")) {
                String told = Tools.run(site, qpdf, "--check", path);
                assertTrue(told.contains("No syntax or stream encoding errors"), told);
                checked++;
            }
        }
        assertTrue(checked >= 2);
    }
}
