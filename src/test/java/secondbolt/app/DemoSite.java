package secondbolt.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** The notebook of the demo projects, made once for all tests that only look at it. */
final class DemoSite {
    private static final Path FOLDER = Path.of("target", "demo-site").toAbsolutePath();

    private static boolean isMade;

    private DemoSite() {}

    /** Its folder, which nobody may write to. */
    static synchronized Path folder() {
        if (!isMade) {
            clear();
            make(FOLDER);
            isMade = true;
        }
        return FOLDER;
    }

    /** Makes it anew somewhere else. */
    static void make(Path out) {
        Desktop here = new Desktop(Path.of("").toAbsolutePath());
        // A maker's own local.yaml must not reach the committed site.
        assertTrue(!Files.exists(Path.of("local.yaml")), "move local.yaml away for this test");
        assertEquals(Secondbolt.DONE, here.run("notebook", "--out", out.toString()), here.err());
    }

    private static void clear() {
        if (Files.exists(FOLDER)) {
            for (Path each : lastFirst()) {
                delete(each);
            }
        }
    }

    private static List<Path> lastFirst() {
        try (Stream<Path> all = Files.walk(FOLDER)) {
            return all.sorted(Comparator.reverseOrder()).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void delete(Path file) {
        try {
            Files.delete(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
