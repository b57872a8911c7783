package secondbolt.draw.sheet;

import java.util.ArrayList;
import java.util.List;
import secondbolt.draw.Drawing;
import secondbolt.draw.Mark;
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

    private final SheetText text;
    private final Drawing picture;
    private final Box room;
    private final LeadWords.Density density;
    private final TickSlices ticks;
    private final List<Sketch> pages = new ArrayList<>();

    private PictureSheet(SheetText text, Drawing picture, Box room, LeadWords.Density density) {
        this.text = text;
        this.picture = picture;
        this.room = room;
        this.density = density;
        this.ticks = TickSlices.of(text.items(), density.body());
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
                    || used + ticks.item(item, columns.get(0).widthMm()).heightMm()
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
            Slice slice = ticks.item(item, column.widthMm());
            slice.painter().paint(last(), new Point(column.leftMm(), column.topMm() + used));
            used += slice.heightMm();
        }
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
