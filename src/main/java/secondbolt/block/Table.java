package secondbolt.block;

import java.util.Arrays;
import java.util.List;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/**
 * A table. The first cell of a row says what the row is about.
 *
 * @param name what it shows, for readers who cannot see it; empty for a table of a sheet
 * @param caption what stands above it; empty if nothing
 * @param head the heading of each column
 * @param rows of cells
 */
public record Table(String name, String caption, List<String> head, List<List<Cell>> rows) {
    /** A table without anything in it. */
    public static final Table NONE = of(List.of(), List.of());

    /**
     * A cell.
     *
     * @param value on both tapes
     * @param rows over how many rows it reaches, 1 or more; the rows below then lack it
     */
    public record Cell(Both value, int rows) {
        /** Checks how far it reaches. */
        public Cell {
            if (rows < 1) {
                throw new IllegalArgumentException("rows must be 1 or more: " + rows);
            }
        }

        /** Words that no tape changes. */
        public static Cell of(String words) {
            return new Cell(Both.words(words), 1);
        }

        /** Text on both tapes. */
        public static Cell of(Both value) {
            return new Cell(value, 1);
        }

        /** A length to the tape's marks. */
        public static Cell of(Tape tape, Length length) {
            return of(Both.of(tape, length));
        }

        /** The same, over so many rows. */
        public Cell over(int count) {
            return new Cell(value, count);
        }
    }

    /** Copies the rows and checks that each is as long as the head and the cells above leave. */
    public Table {
        head = List.copyOf(head);
        rows = rows.stream().map(List::copyOf).toList();
        int[] covered = new int[head.size()];
        for (List<Cell> row : rows) {
            long free = Arrays.stream(covered).filter(reach -> reach == 0).count();
            if (row.size() != free) {
                throw new IllegalArgumentException("a row needs " + free + " cells: " + row);
            }
            int next = 0;
            for (int column = 0; column < covered.length; column++) {
                covered[column] =
                        covered[column] > 0 ? covered[column] - 1 : row.get(next++).rows() - 1;
            }
        }
    }

    /** A table of words, as a sheet has it. */
    public static Table of(List<String> head, List<List<String>> rows) {
        return new Table(
                "",
                "",
                head,
                rows.stream().map(row -> row.stream().map(Cell::of).toList()).toList());
    }
}
