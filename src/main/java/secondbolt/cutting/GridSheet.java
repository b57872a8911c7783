package secondbolt.cutting;

import java.util.List;
import java.util.Set;
import secondbolt.block.Block;
import secondbolt.draw.Align;
import secondbolt.draw.Drawing;
import secondbolt.draw.Lettering;
import secondbolt.draw.Pen;
import secondbolt.draw.Sketch;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.shape.Point;
import secondbolt.worksheet.Convention;
import secondbolt.worksheet.Sheet;

/** The grid to lay a tissue pattern on and read its points from: squares of one cm or one inch. */
final class GridSheet {
    private static final Pen THIN = new Pen(0.1, List.of());
    private static final Pen MIDDLE = new Pen(0.2, List.of());
    private static final Pen THICK = new Pen(0.4, List.of());
    private static final Lettering NUMBER = Lettering.bold(4);
    private static final Lettering SMALL = Lettering.plain(2.6);
    private static final double BORDER_MM = 8;

    /** A square of the grid. */
    private static final Convention SQUARE =
            Convention.common(Length.ofInches(1, 1), Length.ofMillimetres(10));

    private final int columns;
    private final int rows;
    private final int each;
    private final double squareMm;
    private final Sketch sketch = new Sketch();

    private GridSheet(Tape tape) {
        boolean inches = tape == Tape.INCH;
        // As many squares as three by three sheets of Letter or A4 hold.
        this.columns = inches ? 21 : 52;
        this.rows = inches ? 29 : 78;
        this.each = inches ? 4 : 5;
        this.squareMm = SQUARE.on(tape).millimetres();
    }

    /** The sheet for this tape. */
    static Sheet of(Tape tape) {
        return new Sheet(
                "grid",
                "Grid to read points from",
                Set.of(),
                new GridSheet(tape).drawing(tape),
                List.of(new Block.Steps(steps(tape))),
                Sheet.Size.HOME);
    }

    private static List<String> steps(Tape tape) {
        return List.of(
                "Glue the grid once; it serves for every piece.",
                "Lay the tissue on it with the grain along the upright lines, its left edge"
                        + " on 0 and its top on 0, and weight it down.",
                "Read each corner, and two or three points on each curve, first how far across,"
                        + " then how far along, in "
                        + (tape == Tape.INCH ? "inches" : tape.symbol())
                        + ", and write them in the project file.",
                "Compare the picture of the piece on the page with your tissue.");
    }

    private Drawing drawing(Tape tape) {
        double acrossMm = columns * squareMm;
        double alongMm = rows * squareMm;
        for (int i = 0; i <= columns; i++) {
            sketch.line(new Point(i * squareMm, 0), new Point(i * squareMm, alongMm), pen(i));
        }
        for (int i = 0; i <= rows; i++) {
            sketch.line(new Point(0, i * squareMm), new Point(acrossMm, i * squareMm), pen(i));
        }
        numbers();
        Box frame =
                new Box(-BORDER_MM, -BORDER_MM, acrossMm + BORDER_MM + 1, alongMm + BORDER_MM + 1);
        return sketch.drawing("Grid in " + tape.symbol(), frame);
    }

    private Pen pen(int number) {
        return number % (2 * each) == 0 ? THICK : number % each == 0 ? MIDDLE : THIN;
    }

    private void numbers() {
        for (int i = 0; i <= columns; i += each) {
            sketch.label(Integer.toString(i), new Point(i * squareMm, -2), NUMBER, Align.MIDDLE);
        }
        for (int i = 0; i <= rows; i += each) {
            sketch.label(
                    Integer.toString(i), new Point(-1.5, i * squareMm + 1.4), NUMBER, Align.END);
        }
        for (int row = each; row < rows; row += each) {
            for (int column = each; column < columns; column += each) {
                sketch.label(
                        column + ", " + row,
                        new Point(column * squareMm + 0.8, row * squareMm - 0.8),
                        SMALL);
            }
        }
    }
}
