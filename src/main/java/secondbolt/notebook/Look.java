package secondbolt.notebook;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import secondbolt.notebook.site.SiteFile;

/** The files that give the pages their look: one stylesheet, the type and its licence. */
final class Look {
    /** Where they lie in the site. */
    static final String FOLDER = "look";

    /** The file in the site, and where the program carries it. */
    private static final Map<String, String> SOURCES =
            Map.of(
                    "SourceSans3-LICENSE.md", "/fonts/SourceSans3-LICENSE.md",
                    "SourceSans3-Regular.woff2", "/fonts/SourceSans3-Regular.woff2",
                    "SourceSans3-Semibold.woff2", "/fonts/SourceSans3-Semibold.woff2",
                    "style.css", "/look/style.css");

    private Look() {}

    static List<SiteFile> files() {
        List<SiteFile> files = new ArrayList<>();
        new TreeMap<>(SOURCES)
                .forEach(
                        (name, source) ->
                                files.add(SiteFile.bytes(FOLDER + "/" + name, carried(source))));
        return files;
    }

    private static byte[] carried(String source) {
        try (InputStream in = Look.class.getResourceAsStream(source)) {
            if (in == null) {
                throw new IllegalStateException("the program does not carry " + source);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(source, e);
        }
    }
}
