package secondbolt.draw.sheet;

import java.util.ArrayList;
import java.util.List;
import secondbolt.draw.Align;
import secondbolt.draw.Lettering;
import secondbolt.draw.Pen;
import secondbolt.draw.Sketch;
import secondbolt.shape.Box;
import secondbolt.shape.Point;

/** Things to tick off, each with its box. */
final class TickSlices {
    private static final double TICK_MM = 3;
    private static final double TICK_ROOM_MM = 5;
    private static final double BETWEEN_MM = 1.4;
    private static final double BETWEEN_CELLS_MM = 3;

    /** Farther apart the eye loses what belongs together. */
    private static final double MOST_ROW_MM = 100;

    private final Lettering body;
    private final double[] widths;

    private TickSlices(Lettering body, double[] widths) {
        this.body = body;
        this.widths = widths;
    }

    /** Those that stand together, whose cells stand below each other. */
    static TickSlices of(List<SheetText.Item> items, Lettering body) {
        return new TickSlices(body, widths(items, body));
    }

    /** A box to tick, a line that names it, and its rows, their last cells at the right. */
    Slice item(SheetText.Item item, double widthMm) {
        Lettering strong = Lettering.bold(body.sizeMm());
        List<Slice> lines = new ArrayList<>();
        List<Slice> title = Slice.paragraph(item.title(), strong, TICK_ROOM_MM, widthMm);
        double used = TICK_ROOM_MM + strong.widthMm(item.title()) + BETWEEN_CELLS_MM;
        List<String> notes = paragraphs(item.notes());
        boolean besideTitle =
                title.size() == 1
                        && notes.size() == 1
                        && used + body.widthMm(notes.get(0)) <= widthMm;
        lines.add(title.get(0).and((sketch, at) -> tick(sketch, at, body.sizeMm(), item.isDone())));
        lines.addAll(title.subList(1, title.size()));
        if (besideTitle) {
            Slice both = lines.get(0).and(Slice.line(notes.get(0), body, used).painter());
            lines.set(0, both);
        } else {
            notes.forEach(n -> lines.addAll(Slice.paragraph(n, body, TICK_ROOM_MM, widthMm)));
        }
        for (List<String> row : item.rows()) {
            lines.addAll(row(row, Math.min(widthMm, MOST_ROW_MM)));
        }
        lines.add(Slice.gap(BETWEEN_MM));
        return Slice.stacked(lines);
    }

    /** Words stand behind a comma; what follows a whole sentence begins a line of its own. */
    private static List<String> paragraphs(List<String> notes) {
        List<String> all = new ArrayList<>();
        for (String note : notes) {
            boolean goesOn = !all.isEmpty() && !all.get(all.size() - 1).endsWith(".");
            if (goesOn) {
                all.set(all.size() - 1, all.get(all.size() - 1) + ", " + note);
            } else {
                all.add(note);
            }
        }
        return all;
    }

    private static void tick(Sketch sketch, Point at, double sizeMm, boolean isDone) {
        Box box = new Box(at.xMm() + 0.2, at.yMm() + sizeMm - TICK_MM, TICK_MM, TICK_MM);
        sketch.box(box, Pen.PLAIN);
        if (isDone) {
            Point foot = box.middle().moved(-0.1 * TICK_MM, 0.3 * TICK_MM);
            sketch.line(foot.moved(-0.25 * TICK_MM, -0.3 * TICK_MM), foot, Pen.PLAIN);
            sketch.line(foot, foot.moved(0.45 * TICK_MM, -0.65 * TICK_MM), Pen.PLAIN);
        }
    }

    /** How wide the cells after the first are. */
    private static double[] widths(List<SheetText.Item> items, Lettering body) {
        int most =
                items.stream()
                        .flatMap(item -> item.rows().stream())
                        .mapToInt(List::size)
                        .max()
                        .orElse(0);
        double[] widths = new double[most];
        for (SheetText.Item item : items) {
            for (List<String> row : item.rows()) {
                for (int i = 1; i < row.size(); i++) {
                    widths[i] = Math.max(widths[i], body.widthMm(row.get(i)) + BETWEEN_CELLS_MM);
                }
            }
        }
        return widths;
    }

    private List<Slice> row(List<String> row, double widthMm) {
        double taken = 0;
        for (double width : widths) {
            taken += width;
        }
        List<Slice> lines =
                new ArrayList<>(Slice.paragraph(row.get(0), body, TICK_ROOM_MM, widthMm - taken));
        double end = widthMm;
        for (int i = row.size() - 1; i > 0; i--) {
            String cell = row.get(i);
            double right = end;
            lines.set(
                    0,
                    lines.get(0)
                            .and(
                                    (sketch, at) ->
                                            sketch.label(
                                                    cell,
                                                    at.moved(right, body.sizeMm()),
                                                    body,
                                                    Align.END)));
            end -= widths[i];
        }
        return lines;
    }
}
