package secondbolt.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import secondbolt.app.Desktop;

/** A working folder with two sound projects, in which one thing stands in the way. */
final class TrappedDesk {
    private final Path root;
    private final Path folder;
    private final Path outside;

    TrappedDesk(Path root) throws IOException {
        this.root = root;
        this.outside = Files.createDirectories(root.resolve("outside"));
        this.folder = Files.createDirectories(root.resolve("downloaded"));
        Files.writeString(outside.resolve("hers.yaml"), SoundProject.BAND);
        Files.writeString(outside.resolve("hers.txt"), "hers");
    }

    /** The working folder. */
    Path folder() {
        return folder;
    }

    /** What lies beside it. */
    Path outside() {
        return outside;
    }

    /** A link out of the working folder. */
    Trap link(String outsideFile) {
        return Trap.link(outside.resolve(outsideFile));
    }

    /**
     * One case.
     *
     * @param path of what is in the way
     * @param trap what is there
     * @param command that is run
     * @param told what its message says
     */
    record Case(String path, Trap trap, String command, String told) {}

    Stream<DynamicTest> each(List<Case> cases) {
        return cases.stream()
                .map(one -> DynamicTest.dynamicTest(one.path + ": " + one.told, () -> check(one)));
    }

    /** Lays the working folder out anew. */
    Desktop anew() throws IOException {
        Trees.clear(folder);
        return new Desktop(folder)
                .with("projects/apron/project.yaml", SoundProject.BAND)
                .with("projects/coat/project.yaml", SoundProject.BAND)
                .with("projects/bag/note.txt", "no project")
                .with("sheets/note.txt", "no sheet");
    }

    /** The command refuses with the name of what is in the way; all files are as they were. */
    private void check(Case one) throws IOException {
        Desktop desktop = anew();
        Path path = folder.resolve(one.path);
        Trees.delete(path);
        Files.createDirectories(path.getParent());
        one.trap.at(path);
        Map<String, String> before = Trees.in(root);
        int code =
                assertTimeoutPreemptively(
                        Duration.ofMinutes(1), () -> desktop.run(one.command.split(" ")));
        assertEquals(1, code, desktop.err());
        assertTrue(desktop.err().contains(one.told), desktop.err());
        assertFalse(desktop.err().contains("fault of the program"), desktop.err());
        assertFalse(desktop.err().contains("Exception"), desktop.err());
        Map<String, String> after = Trees.in(root);
        after.keySet()
                .removeIf(name -> name.contains("/.secondbolt/") || name.endsWith("/.secondbolt"));
        assertEquals(before, after);
    }
}
