package secondbolt.app.run;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import secondbolt.tools.OwnJava;

/** A run in a Java of its own, with less memory than the work takes. */
class LittleMemoryTest {
    private static final long LONGEST_MINUTES = 5;
    private static final String OLD = "<p>As it was.</p>";

    @TempDir Path folder;

    @Test
    void endsInOneSentenceAndLeavesTheOldSiteWhole() throws IOException, InterruptedException {
        StringBuilder text = new StringBuilder("title: Bunting\nunits: cm\ncloth:\n");
        text.append("  sheet: {size: [240, 1900]}\npattern:\n  pieces:\n");
        for (int i = 0; i < 20; i++) {
            text.append("    flag ").append(i).append(": {cut: 200, panel: {top: ");
            text.append(3 + i % 5).append(", bottom: ").append(1 + i % 7).append(", along: 6}}\n");
        }
        Path project = Files.createDirectories(folder.resolve("projects/bunting"));
        Files.writeString(project.resolve("project.yaml"), text);
        Path site = Files.createDirectories(folder.resolve("site"));
        Files.writeString(site.resolve("notes.html"), OLD);
        byte[] before = Files.readAllBytes(site.resolve("notes.html"));
        Path told = folder.resolve("told");
        Process run = OwnJava.begun(folder, told, List.of("-Xmx24m"), "notebook");
        assertTrue(run.waitFor(LONGEST_MINUTES, TimeUnit.MINUTES), "it never ended");
        String words = Files.readString(told);
        assertEquals(1, run.exitValue(), words);
        assertTrue(words.contains("more to work out than Java's memory holds"), words);
        assertFalse(words.contains("Exception"), words);
        assertFalse(words.contains("\tat "), words);
        assertFalse(words.contains("fault of the program"), words);
        assertArrayEquals(before, Files.readAllBytes(site.resolve("notes.html")));
        assertFalse(Files.exists(site.resolve("index.html")));
    }
}
