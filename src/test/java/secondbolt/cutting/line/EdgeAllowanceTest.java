package secondbolt.cutting.line;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.block.Table.Cell;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.cut.Allowance;

class EdgeAllowanceTest {
    private static Cell words(int mm, Allowance.Kind kind) {
        List<Cell> row =
                new EdgeAllowance("armhole", Length.ofMillimetres(mm), kind)
                        .row("armhole", Tape.CENTIMETRE);
        return row.get(2);
    }

    @Test
    void callsABoundEdgeNoSeam() {
        assertEquals(Cell.of("none, cut on the line"), words(0, Allowance.Kind.PLAIN));
        assertEquals(Cell.of("seam"), words(15, Allowance.Kind.PLAIN));
        assertEquals(Cell.of("on the fold"), words(0, Allowance.Kind.FOLD));
    }
}
