package secondbolt.app.run;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
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
        Process run = begun(told);
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

    private Process begun(Path told) throws IOException {
        List<String> command =
                List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        absolute(System.getProperty("java.class.path")),
                        "secondbolt.app.Main",
                        "notebook");
        return new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(told.toFile())
                .start();
    }

    private static String absolute(String classPath) {
        return String.join(
                File.pathSeparator,
                List.of(classPath.split(File.pathSeparator)).stream()
                        .map(path -> Path.of(path).toAbsolutePath().toString())
                        .toList());
    }
}
