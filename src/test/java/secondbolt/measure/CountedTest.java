package secondbolt.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class CountedTest {
    @Test
    void oneEdgeIsNotOneEdges() {
        assertEquals("1 edge", Counted.of(1, "edge"));
        assertEquals("2 edges", Counted.of(2, "edge"));
        assertEquals("0 edges", Counted.of(0, "edge"));
        assertEquals("1 switch", Counted.of(1, "switch", "switches"));
        assertEquals("2 pairs of ties", Counted.of(2, "pair of ties", "pairs of ties"));
    }

    @Test
    void threeButtonsInARowAreARunAndTwoAreNot() {
        assertEquals("2 to 13", Counted.runs(List.of(2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13)));
        assertEquals("2 to 4", Counted.runs(List.of(2, 3, 4)));
        assertEquals("2, 3", Counted.runs(List.of(2, 3)));
        assertEquals("1, 3 to 5, 7, 8", Counted.runs(List.of(1, 3, 4, 5, 7, 8)));
        assertEquals("4", Counted.runs(List.of(4)));
        assertEquals("", Counted.runs(List.of()));
    }
}
