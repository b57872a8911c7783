package secondbolt.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class PluralTest {
    @Test
    void oneEdgeIsNotOneEdges() {
        assertEquals("1 edge", Plural.of(1, "edge"));
        assertEquals("2 edges", Plural.of(2, "edge"));
        assertEquals("0 edges", Plural.of(0, "edge"));
        assertEquals("1 switch", Plural.of(1, "switch", "switches"));
        assertEquals("2 pairs of ties", Plural.of(2, "pair of ties", "pairs of ties"));
    }

    @Test
    void threeButtonsInARowAreARunAndTwoAreNot() {
        assertEquals("2 to 13", Plural.runs(List.of(2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13)));
        assertEquals("2 to 4", Plural.runs(List.of(2, 3, 4)));
        assertEquals("2, 3", Plural.runs(List.of(2, 3)));
        assertEquals("1, 3 to 5, 7, 8", Plural.runs(List.of(1, 3, 4, 5, 7, 8)));
        assertEquals("4", Plural.runs(List.of(4)));
        assertEquals("", Plural.runs(List.of()));
    }
}
