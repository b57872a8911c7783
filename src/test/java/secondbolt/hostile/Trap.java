package secondbolt.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Assumptions;

/** What is made at a path of a working folder, where something else belongs. */
@FunctionalInterface
interface Trap {
    /** Makes it. */
    void at(Path path) throws IOException;

    /** Nothing at all. */
    Trap NOTHING = path -> {};

    /** A folder. */
    Trap FOLDER = Files::createDirectories;

    /** A pipe, from which a reader would wait for ever. */
    Trap PIPE = Trap::pipe;

    /** A link that leads to itself. */
    Trap CIRCLE = path -> Files.createSymbolicLink(path, path);

    /** A link that leads nowhere. */
    Trap BROKEN = path -> Files.createSymbolicLink(path, path.resolveSibling("nowhere"));

    /** A file of more than 1 MB. */
    Trap LARGE = path -> Files.writeString(path, "# long\n".repeat(200_000));

    /** A file that the maker wrote herself. */
    Trap HERS = path -> Files.writeString(path, "hers");

    /** A link to a file or folder. */
    static Trap link(Path to) {
        return path -> Files.createSymbolicLink(path, to);
    }

    private static void pipe(Path path) {
        try {
            assertEquals(0, new ProcessBuilder("mkfifo", path.toString()).start().waitFor());
        } catch (IOException e) {
            Assumptions.abort("no pipes here");
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }
}
