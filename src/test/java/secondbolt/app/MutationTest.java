package secondbolt.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Changes one line of a sound file so that it is surely wrong, and holds the line blamed against
 * the line changed.
 */
class MutationTest {
    private static final int CHANGES = 400;

    @TempDir Path folder;

    @ParameterizedTest(name = "{0}, seed 41")
    @ValueSource(strings = {"porch-shirt", "blanket-waistcoat"})
    void blamesTheLineThatWasChanged(String project) throws IOException {
        List<String> sound = Files.readAllLines(Path.of("projects", project, "project.yaml"));
        SplittableRandom random = new SplittableRandom(41);
        int changed = 0;
        while (changed < CHANGES) {
            int line = random.nextInt(sound.size());
            Optional<String> slip = slip(sound.get(line), random);
            if (slip.isPresent()) {
                changed++;
                List<String> mutant = new ArrayList<>(sound);
                mutant.set(line, slip.get());
                check(mutant, line + 1);
            }
        }
    }

    private void check(List<String> mutant, int line) {
        Desktop desktop =
                new Desktop(folder).with("project.yaml", String.join("\n", mutant) + "\n");
        int code = desktop.run("check", "project.yaml");
        String context = mutant.get(line - 1) + "\n" + desktop.err();
        assertEquals(Secondbolt.REFUSED, code, context);
        List<String> blamed =
                desktop.err()
                        .lines()
                        .filter(l -> l.contains(": mistake: "))
                        .map(l -> l.replaceAll("^project.yaml:(\\d+):.*$", "$1"))
                        .distinct()
                        .toList();
        assertEquals(List.of(Integer.toString(line)), blamed, context);
        assertTrue(!desktop.err().contains("fault of the program"), context);
    }

    /** A change of the line that is surely wrong, if it has room for one. */
    private static Optional<String> slip(String line, SplittableRandom random) {
        if (!line.matches("^ *(- \\{)?[a-z ]+: .*$")) {
            return Optional.empty();
        }
        if (line.contains("title:") || line.contains("what:") || line.contains("summary")) {
            return Optional.empty();
        }
        if (line.matches(" *size: \\[\\d+, \\d+, .*")) {
            // The labels of sizes may be any text.
            return Optional.empty();
        }
        return switch (random.nextInt(6)) {
            case 0 -> replaced(line, "([a-z]{3})([a-z]+): ", "$1q$2: ");
            case 1 -> replaced(line, "(\\d)( (?:cm|mm|in|ligne|g/m2))?([,\\]}]|$)", "$1 furlong$3");
            case 2 ->
                    // A point of a piece may lie left of its start.
                    line.matches(".*(edge|start|marks): .*")
                            ? Optional.empty()
                            : replaced(line, "\\[(\\d)", "[-9$1");
            case 3 -> replaced(line, "(\\d)\\]", "$1");
            case 4 ->
                    line.contains("\"")
                            ? Optional.empty()
                            : replaced(line, ": ([^\\[{ ])", ": \"$1");
            default -> replaced(line, "^( *)([a-z ]+): (.*\\S)$", "$1$2 $3");
        };
    }

    private static Optional<String> replaced(String line, String pattern, String by) {
        String changed = line.replaceFirst(pattern, by);
        return changed.equals(line) ? Optional.empty() : Optional.of(changed);
    }
}
