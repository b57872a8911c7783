package secondbolt.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A few runs that are killed, and a few at once; {@link Kills} takes as many as are asked for. */
class KillsTest {
    @TempDir Path root;

    @ParameterizedTest
    @CsvSource({"notebook, 3", "pairs, 2", "sheet, 1", "pin, 1"})
    void whateverIsKilledOrMeetsLeavesAllWhole(String what, int times) {
        Kills kills = new Kills(root, 20261127);
        kills.run(what, times);
        assertEquals(List.of(), kills.faults());
    }
}
