package secondbolt.draw.sheet;

import java.util.ArrayList;
import java.util.List;
import secondbolt.draw.Align;
import secondbolt.draw.Drawing;
import secondbolt.draw.Lettering;
import secondbolt.draw.Mark;
import secondbolt.draw.Pen;
import secondbolt.draw.Sketch;
import secondbolt.shape.Box;
import secondbolt.shape.Point;

/**
 * A sheet whose drawing is a picture and not true to size: words, picture and list on one page as
 * long as they have room. The list stands beside the picture, then below it.
 */
final class PictureSheet {
    private static final double GAP_MM = 5;
    private static final double LEAST_COLUMN_MM = 62;
    private static final double UNDER_HEADING_MM = 3;
    private static final double TICK_MM = 3;
    private static final double TICK_ROOM_MM = 5;
    private static final double BETWEEN_MM = 1.4;
    private static final double BETWEEN_CELLS_MM = 3;

    private final SheetText text;
    private final Drawing picture;
    private final Box room;
    private final LeadWords.Density density;
    private final double[] widths;
    private final List<Sketch> pages = new ArrayList<>();

    private PictureSheet(SheetText text, Drawing picture, Box room, LeadWords.Density density) {
        this.text = text;
        this.picture = picture;
        this.room = room;
        this.density = density;
        this.widths = widths(text, density.body());
    }

    /** The marks of its pages, one sketch to the page. */
    static List<Sketch> pages(SheetText text, Drawing picture, Box live) {
        Box room =
                new Box(
                        live.leftMm(),
                        live.topMm() + UNDER_HEADING_MM,
                        live.widthMm(),
                        live.heightMm() - UNDER_HEADING_MM);
        List<Sketch> best = List.of();
        for (LeadWords.Density density : LeadWords.Density.values()) {
            List<Sketch> pages = new PictureSheet(text, picture, room, density).pages();
            if (best.isEmpty() || pages.size() < best.size()) {
                best = pages;
            }
        }
        return best;
    }

    private List<Sketch> pages() {
        List<Slice> words = new LeadWords(text, room.widthMm(), density).all();
        double used = words.stream().mapToDouble(Slice::heightMm).sum();
        Box frame = picture.frame();
        pages.addAll(Flow.pages(words, room));
        if (used + frame.heightMm() > room.heightMm()) {
            pages.add(new Sketch());
            used = 0;
        }
        Point at = new Point(room.leftMm(), room.topMm() + used);
        last().add(new Mark.Window(picture, frame, at));
        List<Box> columns = columns(at, frame);
        if (!text.items().isEmpty()) {
            list(columns);
        } else if (!text.table().isEmpty()) {
            table(at.yMm() + frame.heightMm() + GAP_MM);
        }
        return pages;
    }

    private Sketch last() {
        return pages.get(pages.size() - 1);
    }

    /** Beside the picture, and below it; only what is wide enough. */
    private List<Box> columns(Point at, Box frame) {
        double beside = room.widthMm() - frame.widthMm() - GAP_MM;
        double below = at.yMm() + frame.heightMm() + GAP_MM;
        double bottom = room.bottomMm();
        double half = (room.widthMm() - GAP_MM) / 2;
        List<Box> columns = new ArrayList<>();
        if (beside >= LEAST_COLUMN_MM) {
            double left = room.rightMm() - beside;
            columns.add(new Box(left, at.yMm(), beside, bottom - at.yMm()));
            double under = Math.max(frame.widthMm(), LEAST_COLUMN_MM);
            if (under + GAP_MM + beside <= room.widthMm() && bottom > below) {
                columns.add(new Box(room.leftMm(), below, under, bottom - below));
            }
        } else if (bottom > below) {
            columns.addAll(halves(below, half, bottom - below));
        }
        return columns;
    }

    private List<Box> halves(double top, double widthMm, double heightMm) {
        return List.of(
                new Box(room.leftMm(), top, widthMm, heightMm),
                new Box(room.rightMm() - widthMm, top, widthMm, heightMm));
    }

    private void list(List<Box> firstColumns) {
        List<Box> columns = new ArrayList<>(firstColumns);
        double half = (room.widthMm() - GAP_MM) / 2;
        double used = 0;
        for (SheetText.Item item : text.items()) {
            while (columns.isEmpty()
                    || used + item(item, columns.get(0).widthMm()).heightMm()
                            > columns.get(0).heightMm()) {
                boolean tooHighForAny = used == 0 && !columns.isEmpty() && columns.size() == 1;
                if (tooHighForAny && columns.get(0).heightMm() >= room.heightMm()) {
                    break;
                }
                if (!columns.isEmpty()) {
                    columns.remove(0);
                }
                if (columns.isEmpty()) {
                    pages.add(new Sketch());
                    columns.addAll(halves(room.topMm(), half, room.heightMm()));
                }
                used = 0;
            }
            Box column = columns.get(0);
            Slice slice = item(item, column.widthMm());
            slice.painter().paint(last(), new Point(column.leftMm(), column.topMm() + used));
            used += slice.heightMm();
        }
    }

    /** A box to tick, a line that names it, and its rows, their last cells at the right. */
    private Slice item(SheetText.Item item, double widthMm) {
        Lettering body = density.body();
        Lettering strong = Lettering.bold(body.sizeMm());
        List<Slice> lines = new ArrayList<>();
        List<Slice> title = Slice.paragraph(item.title(), strong, TICK_ROOM_MM, widthMm);
        double used = TICK_ROOM_MM + strong.widthMm(item.title()) + BETWEEN_CELLS_MM;
        String note = String.join(", ", item.notes());
        boolean besideTitle = title.size() == 1 && used + body.widthMm(note) <= widthMm;
        lines.add(title.get(0).and((sketch, at) -> tick(sketch, at, body.sizeMm(), item.isDone())));
        lines.addAll(title.subList(1, title.size()));
        if (besideTitle) {
            Slice both = lines.get(0).and(Slice.line(note, body, used).painter());
            lines.set(0, both);
        } else if (!note.isEmpty()) {
            lines.addAll(Slice.paragraph(note, body, TICK_ROOM_MM, widthMm));
        }
        for (List<String> row : item.rows()) {
            lines.addAll(row(row, body, widths, widthMm));
        }
        lines.add(Slice.gap(BETWEEN_MM));
        return Slice.stacked(lines);
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
    private static double[] widths(SheetText text, Lettering body) {
        int most =
                text.items().stream()
                        .flatMap(item -> item.rows().stream())
                        .mapToInt(List::size)
                        .max()
                        .orElse(0);
        double[] widths = new double[most];
        for (SheetText.Item item : text.items()) {
            for (List<String> row : item.rows()) {
                for (int i = 1; i < row.size(); i++) {
                    widths[i] = Math.max(widths[i], body.widthMm(row.get(i)) + BETWEEN_CELLS_MM);
                }
            }
        }
        return widths;
    }

    private static List<Slice> row(
            List<String> row, Lettering body, double[] widths, double widthMm) {
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

    private void table(double topMm) {
        List<Slice> slices = TableSlices.of(text.table(), room.widthMm());
        double height = slices.stream().mapToDouble(Slice::heightMm).sum();
        double left = room.bottomMm() - topMm;
        Point at = new Point(room.leftMm(), topMm);
        if (height <= left) {
            Slice.stacked(slices).painter().paint(last(), at);
        } else {
            pages.addAll(Flow.pages(slices, room));
        }
    }
}
