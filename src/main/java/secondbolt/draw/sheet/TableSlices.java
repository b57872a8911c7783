package secondbolt.draw.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import secondbolt.draw.Lettering;
import secondbolt.draw.LineBreaks;
import secondbolt.draw.Pen;
import secondbolt.draw.Sketch;
import secondbolt.shape.Point;

/** A table of values: a head, and a hairline under each row to lead the eye. */
final class TableSlices {
    private static final double SIZE_MM = 3.6;
    private static final double LINE_MM = SIZE_MM * 1.25;
    private static final double PADDING_MM = 1;
    private static final double BETWEEN_COLUMNS_MM = 6;

    private static final double BETWEEN_TABLES_MM = 12;
    private static final int MOST_BESIDE = 3;

    /** So many rows and a head never go on beside themselves. */
    private static final int SHORT = 9;

    private final List<List<String>> rows;
    private final boolean hasHead;
    private final double[] widthsMm;

    private TableSlices(List<List<String>> rows, boolean hasHead, double roomMm) {
        this.rows = rows;
        this.hasHead = hasHead;
        this.widthsMm = widths(rows, roomMm);
    }

    /** The table; a long and narrow one goes on beside itself, as often as there is room. */
    static List<Slice> of(List<List<String>> rows, double roomMm) {
        TableSlices table = new TableSlices(rows, true, roomMm);
        int beside = table.beside(roomMm);
        int high = (int) Math.ceil((rows.size() - 1.0) / beside);
        List<Slice> slices = new ArrayList<>();
        slices.add(table.across(0, 0, beside).keepingNext());
        for (int row = 1; row <= high; row++) {
            slices.add(table.across(row, high, beside));
        }
        return slices;
    }

    /** Rows without a head, the first cell of each naming the others. */
    static List<Slice> withoutHead(List<List<String>> rows, double roomMm) {
        TableSlices table = new TableSlices(rows, false, roomMm);
        return IntStream.range(0, rows.size()).mapToObj(table::slice).toList();
    }

    private int beside(double roomMm) {
        double room = roomMm + BETWEEN_TABLES_MM;
        int fit = (int) (room / (fullWidthMm() + BETWEEN_TABLES_MM));
        return rows.size() <= SHORT ? 1 : Math.max(1, Math.min(fit, MOST_BESIDE));
    }

    /** A row, and beside it those that come so many rows later. */
    private Slice across(int row, int later, int beside) {
        Slice all = slice(row);
        double stepMm = fullWidthMm() + BETWEEN_TABLES_MM;
        for (int i = 1; i < beside && row + i * later < rows.size(); i++) {
            Slice next = slice(row + i * later);
            double acrossMm = i * stepMm;
            Slice so = all;
            all =
                    new Slice(
                            Math.max(so.heightMm(), next.heightMm()),
                            false,
                            (sketch, leftTop) -> {
                                so.painter().paint(sketch, leftTop);
                                next.painter().paint(sketch, leftTop.moved(acrossMm, 0));
                            });
        }
        return all;
    }

    /** As wide as the widest cell; where the sheet is narrower, the widest give way. */
    private static double[] widths(List<List<String>> rows, double roomMm) {
        int columns = rows.stream().mapToInt(List::size).max().orElse(0);
        double[] widths = new double[columns];
        for (List<String> row : rows) {
            for (int column = 0; column < row.size(); column++) {
                double cell = Lettering.bold(SIZE_MM).widthMm(row.get(column));
                widths[column] = Math.max(widths[column], cell);
            }
        }
        double most = most(widths, roomMm - BETWEEN_COLUMNS_MM * Math.max(0, columns - 1));
        for (int column = 0; column < columns; column++) {
            widths[column] = Math.min(widths[column], most);
        }
        return widths;
    }

    /** How wide a column may be, so that all have room: what narrow ones leave goes to the wide. */
    private static double most(double[] widths, double roomMm) {
        double[] sorted = widths.clone();
        Arrays.sort(sorted);
        double left = roomMm;
        for (int i = 0; i < sorted.length; i++) {
            double share = left / (sorted.length - i);
            if (sorted[i] > share) {
                return share;
            }
            left -= sorted[i];
        }
        return roomMm;
    }

    private Slice slice(int row) {
        boolean isHead = hasHead && row == 0;
        Lettering lettering = isHead ? Lettering.bold(SIZE_MM) : Lettering.plain(SIZE_MM);
        List<List<String>> cells = new ArrayList<>();
        for (int column = 0; column < rows.get(row).size(); column++) {
            String cell = rows.get(row).get(column);
            cells.add(LineBreaks.lines(cell, lettering, widthsMm[column]));
        }
        int lines = cells.stream().mapToInt(List::size).max().orElse(1);
        double height = lines * LINE_MM + 2 * PADDING_MM;
        return new Slice(
                height,
                false,
                (sketch, leftTop) -> {
                    paint(sketch, leftTop, cells, lettering);
                    Point left = leftTop.moved(0, height);
                    sketch.line(left, left.moved(fullWidthMm(), 0), isHead ? Pen.PLAIN : Pen.FINE);
                });
    }

    private void paint(
            Sketch sketch, Point leftTop, List<List<String>> cells, Lettering lettering) {
        double across = 0;
        for (int column = 0; column < cells.size(); column++) {
            double down = PADDING_MM + SIZE_MM;
            for (String line : cells.get(column)) {
                sketch.label(line, leftTop.moved(across, down), lettering);
                down += LINE_MM;
            }
            across += widthsMm[column] + BETWEEN_COLUMNS_MM;
        }
    }

    private double fullWidthMm() {
        double sum = BETWEEN_COLUMNS_MM * Math.max(0, widthsMm.length - 1);
        for (double width : widthsMm) {
            sum += width;
        }
        return sum;
    }
}
