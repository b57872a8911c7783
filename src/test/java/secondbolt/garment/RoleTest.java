package secondbolt.garment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class RoleTest {
    @Test
    void isWrittenAsTheProjectFileNamesIt() {
        assertEquals(
                List.of("main", "lining", "contrast", "interfacing", "batting", "interlining"),
                Arrays.stream(Role.values()).map(Role::word).toList());
    }

    @Test
    void standsInASentenceAsItIsWritten() {
        assertEquals("cut 2 of interfacing", "cut 2 of " + Role.INTERFACING);
    }
}
