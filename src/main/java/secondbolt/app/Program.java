package secondbolt.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import secondbolt.notebook.site.Seals;

/** The program as it is installed. */
final class Program {
    private Program() {}

    /**
     * What tells this build of the program, on this Java, from every other.
     *
     * @return nothing if it cannot be told
     */
    static Optional<String> mark() {
        CodeSource source = Program.class.getProtectionDomain().getCodeSource();
        if (source == null || source.getLocation() == null) {
            return Optional.empty();
        }
        try (Stream<Path> files = Files.walk(Path.of(source.getLocation().toURI()))) {
            String all = files.sorted().map(Program::mark).collect(Collectors.joining("\n"));
            return Optional.of(
                    Secondbolt.Version.NUMBER + " " + Runtime.version() + " " + Seals.hash(all));
        } catch (IOException | URISyntaxException | UncheckedIOException e) {
            return Optional.empty();
        }
    }

    private static String mark(Path file) {
        try {
            return Files.isDirectory(file)
                    ? ""
                    : file + " " + Files.size(file) + " " + Files.getLastModifiedTime(file);
        } catch (IOException e) {
            throw new UncheckedIOException(file + " cannot be read", e);
        }
    }
}
