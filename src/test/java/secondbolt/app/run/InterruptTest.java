package secondbolt.app.run;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import secondbolt.tools.OwnJava;

/** A run that Ctrl-C ends while it lays, in a Java of its own. */
@DisabledOnOs(OS.WINDOWS) // has no kill
class InterruptTest {
    private static final long LONGEST_MINUTES = 5;

    @TempDir Path folder;

    /** Where the shell that started the tests ignores the signal, the run goes on to its end. */
    @Test
    void keepsTheBestAndLeavesAWholeSite() throws IOException, InterruptedException {
        Path project = Files.createDirectories(folder.resolve("projects/shirt"));
        Files.copy(Path.of("projects/porch-shirt/project.yaml"), project.resolve("project.yaml"));
        Path told = folder.resolve("told");
        Process run = OwnJava.begun(folder, told, List.of(), "notebook");
        Path lays = folder.resolve(".secondbolt/lays");
        while (run.isAlive() && !Files.exists(lays)) {
            TimeUnit.MILLISECONDS.sleep(10);
        }
        new ProcessBuilder("kill", "-INT", Long.toString(run.pid())).start().waitFor();
        assertTrue(run.waitFor(LONGEST_MINUTES, TimeUnit.MINUTES), "it never ended");
        String words = Files.readString(told);
        assertTrue(Set.of(0, Interrupt.ENDED).contains(run.exitValue()), words);
        assertFalse(words.contains("Exception"), words);
        assertFalse(words.contains("fault of the program"), words);
        String contents = Files.readString(folder.resolve("site/contents.json"));
        assertTrue(contents.contains("shirt/yardage-summary.pdf"), contents);
        assertFalse(Files.exists(folder.resolve("site/.unfinished.json")));
    }
}
