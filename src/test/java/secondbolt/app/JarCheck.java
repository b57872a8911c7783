package secondbolt.app;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import secondbolt.tools.Tools;

/**
 * Runs what the maker runs: the tests run on classes, the jar leaves out much of what its libraries
 * bring. The build calls this once the jar is there.
 */
public final class JarCheck {
    /** In letters that need each of the program's faces. */
    private static final String WORDS =
            """
            title: "قميص 襯衫 חולצה Hemd"
            summary: "من ملاءة قديمة, 舊床單, מסדין ישן"
            units: cm
            cloth:
              sheet:
                size: [160, 250]
                weight: 140 g/m2
                flaws:
                  - {what: "بقعة 污漬 כתם", at: [40, 60], round: 6}
            closures:
              front:
                length: 40
                extension: 2
                buttons: 3
                button: {across: 15 mm, thick: 3 mm}
                first: 2
                last: 8
                holes: level
                laps: right over left
            pattern:
              rights: mine
              seam allowance: {of: 1, included: false}
              pieces:
                front: {cut: pair, rectangle: [30, 60]}
            """;

    private JarCheck() {}

    /**
     * Makes the demos' notebook and one in other scripts by the jar.
     *
     * @param args the jar
     */
    public static void main(String... args) throws IOException {
        Path jar = Path.of(args[0]).toAbsolutePath();
        Path site = jar.resolveSibling("jar-site");
        run(Path.of(""), jar, "--out", site.toString());
        SiteFiles.assertCommitted(site);
        checkOtherScripts(jar);
    }

    private static void checkOtherScripts(Path jar) throws IOException {
        Path folder = Files.createDirectories(jar.resolveSibling("jar-words"));
        Desktop desktop = new Desktop(folder).with("projects/words/project.yaml", WORDS);
        int code = desktop.run("notebook", "--out", "by-classes");
        assertEquals(Secondbolt.DONE, code, desktop.err());
        run(folder, jar, "--out", "by-jar");
        Map<String, byte[]> classes = SiteFiles.of(folder.resolve("by-classes"));
        Map<String, byte[]> made = SiteFiles.of(folder.resolve("by-jar"));
        assertEquals(classes.keySet(), made.keySet());
        assertTrue(made.containsKey("words/front.pdf"), () -> made.keySet().toString());
        classes.forEach((path, bytes) -> assertArrayEquals(bytes, made.get(path), path));
    }

    private static void run(Path folder, Path jar, String... options) {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        String[] command = {java, "-Xmx128m", "-jar", jar.toString(), "--quiet", "", ""};
        System.arraycopy(options, 0, command, 5, 2);
        Tools.run(folder.toAbsolutePath(), command);
    }
}
