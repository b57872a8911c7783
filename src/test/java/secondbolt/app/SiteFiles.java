package secondbolt.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/** The files of a site, to be held against those of another. */
final class SiteFiles {
    private static final Path COMMITTED = Path.of("site");

    private SiteFiles() {}

    /** All files of a site by their paths in it. */
    static Map<String, byte[]> of(Path site) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(site)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                String path = site.relativize(file).toString().replace('\\', '/');
                files.put(path, Files.readAllBytes(file));
            }
        }
        return files;
    }

    /** Fails if a site of the demo projects is not the committed one. */
    static void assertCommitted(Path site) throws IOException {
        Map<String, byte[]> fresh = of(site);
        Map<String, byte[]> committed = of(COMMITTED);
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
}
