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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A maker who remakes one of her projects keeps the pages of the others. */
class OneProjectTest {
    @TempDir Path folder;

    private Desktop desktop() {
        return new Desktop(folder)
                .with("projects/apron/project.yaml", project("Apron", 14))
                .with("projects/smock/project.yaml", project("Smock", 20))
                .with("projects/tunic/project.yaml", project("Tunic", 26));
    }

    private static String project(String title, int length) {
        return """
        title: %s
        summary: Of an *old* sheet.
        units: cm
        wearer: {age: adult}
        closures:
          neck: {length: %d, ties: 2, first: 2, last: 2}
        """
                .formatted(title, length);
    }

    private Map<String, String> site() {
        Map<String, String> tree = new TreeMap<>();
        Path root = folder.resolve("site");
        try (Stream<Path> paths = Files.walk(root)) {
            for (Path path : (Iterable<Path>) paths.filter(Files::isRegularFile)::iterator) {
                String text = new String(Files.readAllBytes(path), StandardCharsets.ISO_8859_1);
                tree.put(root.relativize(path).toString().replace('\\', '/'), text);
            }
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return tree;
    }

    @Test
    void changesNothingOfTheOthers() {
        Desktop desktop = desktop();
        assertEquals(0, desktop.run("notebook", "projects"));
        Map<String, String> all = site();
        assertTrue(all.containsKey("apron/index.html"));
        assertEquals(0, desktop.run("notebook", "projects/smock"));
        assertEquals(all, site());
        assertFalse(desktop.out().contains("deleted"), desktop.out());
    }

    @Test
    void endsAtTheSameSiteOneByOneAsAllTogether() {
        Desktop desktop = desktop();
        desktop.run("notebook", "projects");
        Map<String, String> all = site();
        desktop.run("notebook", "projects/tunic", "--out", "site");
        desktop.with("projects/smock/project.yaml", project("Smock", 30));
        assertEquals(0, desktop.run("notebook", "projects/smock/project.yaml"));
        Map<String, String> changed = site();
        assertEquals(all.get("apron/index.html"), changed.get("apron/index.html"));
        assertFalse(all.get("smock/index.html").equals(changed.get("smock/index.html")));
        desktop.run("notebook", "projects");
        assertEquals(changed, site());
    }

    @Test
    void dropsAProjectThatIsGoneWhenAllAreMade() throws IOException {
        Desktop desktop = desktop();
        desktop.run("notebook", "projects");
        Files.delete(folder.resolve("projects/apron/project.yaml"));
        desktop.run("notebook", "projects");
        assertFalse(site().containsKey("apron/index.html"));
        assertFalse(site().get("index.html").contains("Apron"));
    }
}
