package secondbolt.lay.near;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class PairTableTest {
    private static double doubled(double weight, double loss) {
        return loss > 0 ? weight * 2 : Math.max(1, weight / 2);
    }

    @Test
    void tellsAPairTheSameBothWays() {
        PairTable table = new PairTable(9);
        for (int other : new int[] {7, 2, 5, 1, 8, 3}) {
            table.lose(4, other, other);
        }
        table.reweigh(PairTableTest::doubled);
        assertEquals(2, table.weight(4, 5));
        assertEquals(2, table.weight(5, 4));
        assertEquals(1, table.weight(5, 7));
        assertEquals(2 * (7 + 2 + 5 + 1 + 8 + 3), table.plusWeighted(0, 4));
        assertEquals(2 * (7 + 5 + 8), table.plusWeightedAbove(0, 4));
        assertEquals(7 + 5 + 8, table.plusLossesAbove(0, 4));
        assertEquals(8, table.most(4));
        assertTrue(table.loses(8));
    }

    @Test
    void forgetsPairsThatAreAsAllOthers() {
        PairTable table = new PairTable(3);
        table.lose(0, 2, 5);
        table.reweigh(PairTableTest::doubled);
        table.clearLosses(2);
        assertFalse(table.loses(0));
        assertEquals(2, table.weight(0, 2));
        assertEquals(1, table.size());
        table.reweigh(PairTableTest::doubled);
        assertEquals(0, table.size());
    }

    @Test
    void takesAnotherOverWhole() {
        PairTable from = new PairTable(4);
        from.lose(0, 1, 3);
        PairTable to = new PairTable(4);
        to.lose(2, 3, 9);
        to.set(from);
        from.clear();
        assertEquals(3, to.plusWeighted(0, 1));
        assertFalse(to.loses(2));
    }
}
