package secondbolt.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** What can be read on the page and the sheets of a project, without what stands there to type. */
final class VisibleText {
    private static final Pattern TYPED = Pattern.compile("(?s)<code>.*?</code>|“[^”]*”");
    private static final Pattern FILES =
            Pattern.compile("(?s)<(style|head)\\b.*?</\\1>|<a class=\"file\".*?</a>");
    private static final Pattern LINES =
            Pattern.compile("</?(p|h\\d|li|tr|td|th|dt|dd|div|caption|figcaption|text)\\b[^>]*>");

    private VisibleText() {}

    /** Page and sheets of a project, by file; typed lines and names of files left out. */
    static Map<String, String> of(Path site) throws IOException {
        Map<String, String> all = new TreeMap<>();
        all.put("index.html", page(site));
        try (Stream<Path> files = Files.list(site)) {
            files.filter(file -> file.toString().endsWith(".pdf"))
                    .forEach(file -> all.put(file.getFileName().toString(), sheet(file)));
        }
        return all;
    }

    /** The page alone. */
    static String page(Path site) throws IOException {
        String page = Files.readString(site.resolve("index.html"));
        page = FILES.matcher(TYPED.matcher(page).replaceAll("…")).replaceAll("");
        page = page.replaceAll("<a href=\"workings.json\">.*?</a>", "");
        page =
                LINES.matcher(page.replaceAll("\\s+", " "))
                        .replaceAll("\n")
                        .replaceAll("<[^>]*>", "");
        return page.replace("&#39;", "'").replace("&quot;", "\"").replace("&amp;", "&");
    }

    private static String sheet(Path file) {
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            String text = new PDFTextStripper().getText(pdf).replace("local.yaml", "");
            return TYPED.matcher(text).replaceAll("…");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The lines of a page, for what stands there more than once. */
    static List<String> lines(String page) {
        List<String> lines = new ArrayList<>();
        page.lines().map(String::strip).filter(line -> !line.isEmpty()).forEach(lines::add);
        return lines;
    }
}
