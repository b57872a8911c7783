package secondbolt.lay.near;

import java.util.Arrays;

/**
 * A grid over boxes that move: for any box it tells which of them can touch it, without a look at
 * the others. It is used by one thread.
 */
public final class BoxGrid {
    /** So many cells an item, however small the items are. */
    private static final int CELLS_AN_ITEM = 4;

    private static final int NOWHERE = -1;

    private final double leftMm;
    private final double lowMm;
    private final double cellMm;
    private final int columns;
    private final int rows;
    private final int[][] cells;
    private final int[] counts;

    /** For each item the first and last column and the first and last row it lies in. */
    private final int[] lying;

    private final boolean[] isFound;

    /**
     * An empty grid over a part of the plane; a box beyond it counts as lying at its rim.
     *
     * @param items how many there are, from 0
     * @param usualMm how large one is, above zero
     */
    public BoxGrid(
            int items, double usualMm, double leftMm, double lowMm, double rightMm, double highMm) {
        this.leftMm = leftMm;
        this.lowMm = lowMm;
        double wide = Math.max(usualMm, rightMm - leftMm);
        double tall = Math.max(usualMm, highMm - lowMm);
        double most = (double) CELLS_AN_ITEM * (items + 1);
        this.cellMm = Math.max(usualMm, Math.sqrt(wide * tall / most));
        this.columns = (int) Math.min(most, Math.ceil(wide / cellMm));
        this.rows = (int) Math.min(most, Math.ceil(tall / cellMm));
        this.cells = new int[columns * rows][0];
        this.counts = new int[columns * rows];
        this.lying = new int[4 * items];
        this.isFound = new boolean[items];
        Arrays.fill(lying, NOWHERE);
    }

    /** Takes every item away. */
    public void clear() {
        Arrays.fill(counts, 0);
        Arrays.fill(lying, NOWHERE);
    }

    /** Puts an item's box where it lies now, in millimetres. */
    public void put(int item, double left, double low, double right, double high) {
        int at = 4 * item;
        int fromColumn = column(left);
        int toColumn = column(right);
        int fromRow = row(low);
        int toRow = row(high);
        if (lying[at] == fromColumn
                && lying[at + 1] == toColumn
                && lying[at + 2] == fromRow
                && lying[at + 3] == toRow) {
            return;
        }
        if (lying[at] != NOWHERE) {
            takeAway(item);
        }
        lying[at] = fromColumn;
        lying[at + 1] = toColumn;
        lying[at + 2] = fromRow;
        lying[at + 3] = toRow;
        for (int row = fromRow; row <= toRow; row++) {
            for (int column = fromColumn; column <= toColumn; column++) {
                add(row * columns + column, item);
            }
        }
    }

    private void takeAway(int item) {
        int at = 4 * item;
        for (int row = lying[at + 2]; row <= lying[at + 3]; row++) {
            for (int column = lying[at]; column <= lying[at + 1]; column++) {
                remove(row * columns + column, item);
            }
        }
    }

    private void add(int cell, int item) {
        int count = counts[cell]++;
        if (count == cells[cell].length) {
            cells[cell] = Arrays.copyOf(cells[cell], 2 * count + 4);
        }
        cells[cell][count] = item;
    }

    private void remove(int cell, int item) {
        int[] there = cells[cell];
        int last = --counts[cell];
        for (int i = 0; i < last; i++) {
            if (there[i] == item) {
                there[i] = there[last];
                return;
            }
        }
    }

    /**
     * All items that may touch a box, each once, upwards; some that do not may be among them.
     *
     * @param found takes them; as long as there are items
     * @return how many they are
     */
    public int near(double left, double low, double right, double high, int[] found) {
        int count = 0;
        int toColumn = column(right);
        int toRow = row(high);
        for (int row = row(low); row <= toRow; row++) {
            for (int column = column(left); column <= toColumn; column++) {
                int cell = row * columns + column;
                int[] there = cells[cell];
                for (int i = 0; i < counts[cell]; i++) {
                    if (!isFound[there[i]]) {
                        isFound[there[i]] = true;
                        insert(found, count++, there[i]);
                    }
                }
            }
        }
        for (int i = 0; i < count; i++) {
            isFound[found[i]] = false;
        }
        return count;
    }

    /** They are few, and often in order already. */
    private static void insert(int[] found, int count, int item) {
        int at = count;
        while (at > 0 && found[at - 1] > item) {
            found[at] = found[at - 1];
            at--;
        }
        found[at] = item;
    }

    private int column(double x) {
        return (int) Math.max(0, Math.min(columns - 1, (x - leftMm) / cellMm));
    }

    private int row(double y) {
        return (int) Math.max(0, Math.min(rows - 1, (y - lowMm) / cellMm));
    }
}
