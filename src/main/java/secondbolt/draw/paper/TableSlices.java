package secondbolt.draw.paper;

import java.util.ArrayList;
import java.util.List;
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

    private final List<List<String>> rows;
    private final double[] widthsMm;

    private TableSlices(List<List<String>> rows, double roomMm) {
        this.rows = rows;
        this.widthsMm = widths(rows, roomMm);
    }

    static List<Slice> of(List<List<String>> rows, double roomMm) {
        TableSlices table = new TableSlices(rows, roomMm);
        List<Slice> slices = new ArrayList<>();
        for (int row = 0; row < rows.size(); row++) {
            Slice slice = table.slice(row);
            slices.add(row == 0 ? slice.keepingNext() : slice);
        }
        return slices;
    }

    /** As wide as the widest cell; where the sheet is narrower, all give way in proportion. */
    private static double[] widths(List<List<String>> rows, double roomMm) {
        int columns = rows.stream().mapToInt(List::size).max().orElse(0);
        double[] widths = new double[columns];
        double sum = 0;
        for (int column = 0; column < columns; column++) {
            for (List<String> row : rows) {
                String cell = column < row.size() ? row.get(column) : "";
                widths[column] = Math.max(widths[column], Lettering.bold(SIZE_MM).widthMm(cell));
            }
            sum += widths[column];
        }
        double room = roomMm - BETWEEN_COLUMNS_MM * Math.max(0, columns - 1);
        if (sum > room) {
            for (int column = 0; column < columns; column++) {
                widths[column] *= room / sum;
            }
        }
        return widths;
    }

    private Slice slice(int row) {
        boolean isHead = row == 0;
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
