package secondbolt.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Some mutants of every kind, the same in each build. */
class MutantsTest {
    private static final long SEED = 20261127;

    @TempDir Path folder;

    @Test
    void noYamlEndsInAFaultOfTheProgram() {
        Mutants mutants = Mutants.yaml(SEED, folder);
        assertEquals(List.of(), mutants.run(2000));
        assertTrue(mutants.taken() > 100, "the changes are not too rough: " + mutants.taken());
    }

    @Test
    void noDrawingEndsInAFaultOfTheProgram() {
        Mutants mutants = Mutants.svg(SEED, folder);
        assertEquals(List.of(), mutants.run(500));
        assertTrue(mutants.taken() > 25, "the changes are not too rough: " + mutants.taken());
    }

    /** The trial itself: what it begins from is sound. */
    @Test
    void beginsFromSoundProjects() {
        Trial trial = new Trial(folder);
        for (Map<String, String> files : Mutants.projects()) {
            assertEquals(
                    Verdict.TAKEN, trial.workOut(files, false), () -> files.get("project.yaml"));
        }
    }
}
