package secondbolt.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Some variants of every kind, the same in each build. */
class VariantsTest {
    private static final long SEED = 20261128;

    @Test
    void noVariantEndsInAFaultOfTheProgram(@TempDir Path folder) {
        Variants variants = new Variants(SEED, folder);
        assertEquals(List.of(), variants.run(120));
        assertTrue(variants.taken() > 15, "the changes are not too rough: " + variants.taken());
    }
}
