package secondbolt.hostile;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Each folder of {@code src/test/resources/hostile} is a project as it would be downloaded. The
 * first line of its project file says what is hostile in it, the second what is told when it is
 * refused, of what its maker is warned, or that it does no harm.
 */
class HostileFilesTest {
    private static final Path ALL = Path.of("src/test/resources/hostile");
    private static final Pattern EXPECTED = Pattern.compile("# (told|warned): \"(.+)\"");
    private static final String HARMLESS = "# harmless";

    @TempDir Path temporary;

    private static List<Path> folders() throws IOException {
        try (Stream<Path> all = Files.list(ALL)) {
            return all.sorted().toList();
        }
    }

    @Test
    void thereAreManyKinds() throws IOException {
        assertTrue(folders().size() >= 120, () -> "fewer than there were");
    }

    @TestFactory
    Stream<DynamicTest> isRefusedWithItsMessageOrDoesNoHarm() throws IOException {
        StrangersDesk desk = new StrangersDesk(temporary, SoundProject.BAND);
        return folders().stream()
                .map(
                        folder ->
                                DynamicTest.dynamicTest(
                                        folder.getFileName().toString(),
                                        () -> check(desk, folder)));
    }

    private static void check(StrangersDesk desk, Path folder) throws IOException {
        String name = folder.getFileName().toString();
        desk.receives(folder, name);
        List<String> lines = Files.readAllLines(folder.resolve("project.yaml"));
        assertTrue(lines.get(0).startsWith("# "), "what is hostile stands first");
        if (lines.get(1).equals(HARMLESS)) {
            desk.isHarmless("check", "projects");
            desk.isHarmless("notebook");
            return;
        }
        Matcher expected = EXPECTED.matcher(lines.get(1));
        assertTrue(expected.matches(), lines.get(1));
        String words = expected.group(2);
        if (expected.group(1).equals("warned")) {
            desk.isWarned(words, "projects/" + name);
        } else {
            desk.isRefused(words, "check", "projects");
            desk.isRefused(words, "notebook");
        }
    }
}
