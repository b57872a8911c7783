package secondbolt.tools;

import java.io.BufferedInputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;

/** Runs programs that check our output from outside. */
public final class Tools {
    private Tools() {}

    /**
     * Where a program lies. Without it the test is skipped, loudly; with {@code
     * SECONDBOLT_TOOLS=required} in the environment it fails.
     */
    public static Path require(String program) {
        return require(program, find(program));
    }

    /** The same for a file in the working folder, such as a jar. */
    public static Path requireFile(String path) {
        return require(path, Optional.of(Path.of(path).toAbsolutePath()).filter(Files::exists));
    }

    private static Path require(String what, Optional<Path> found) {
        if (found.isEmpty()) {
            String message = "NOT RUN: this test needs " + what;
            System.err.println(message);
            Assertions.assertNotEquals("required", System.getenv("SECONDBOLT_TOOLS"), message);
            Assumptions.abort(message);
        }
        return found.orElseThrow();
    }

    private static Optional<Path> find(String program) {
        String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
        return Pattern.compile(Pattern.quote(File.pathSeparator))
                .splitAsStream(path)
                .filter(folder -> !folder.isEmpty())
                .map(folder -> Path.of(folder, program))
                .filter(Files::isExecutable)
                .findFirst();
    }

    /** Reads what a command prints. */
    public interface Reader<T> {
        /** Reads all of it. */
        T read(InputStream printed) throws IOException;
    }

    /** Runs a command in a folder; its output and errors, or a failure if it does not end well. */
    public static String run(Path folder, String... command) {
        try {
            Process process = begun(folder, true, command);
            byte[] output = process.getInputStream().readAllBytes();
            String text = new String(output, StandardCharsets.UTF_8);
            assertEndsWell(process, text, command);
            return text;
        } catch (IOException e) {
            throw new UncheckedIOException(String.join(" ", command), e);
        }
    }

    /** Runs a command in a folder and reads its output, or fails if it does not end well. */
    public static <T> T read(Path folder, Reader<T> reader, String... command) {
        try {
            Process process = begun(folder, false, command);
            T read;
            try (InputStream printed = new BufferedInputStream(process.getInputStream())) {
                read = reader.read(printed);
            }
            assertEndsWell(process, "its errors are told above", command);
            return read;
        } catch (IOException e) {
            throw new UncheckedIOException(String.join(" ", command), e);
        }
    }

    private static Process begun(Path folder, boolean withErrors, String... command)
            throws IOException {
        ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
        builder.redirectErrorStream(withErrors);
        if (!withErrors) {
            builder.redirectError(ProcessBuilder.Redirect.INHERIT);
        }
        Process process = builder.start();
        process.getOutputStream().close();
        return process;
    }

    private static void assertEndsWell(Process process, String text, String... command) {
        try {
            Assertions.assertEquals(
                    0, process.waitFor(), () -> String.join(" ", command) + "\n" + text);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(String.join(" ", command), e);
        }
    }
}
