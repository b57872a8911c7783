package secondbolt.draw.paper;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import secondbolt.draw.Align;
import secondbolt.draw.Lettering;
import secondbolt.draw.Pen;
import secondbolt.draw.Sketch;
import secondbolt.measure.Counted;
import secondbolt.measure.Length;
import secondbolt.shape.Box;
import secondbolt.shape.Point;

/**
 * What lies in front of the tiles: what the sheet is, what to do, and whether the scale is true.
 */
final class LeadSheet {
    private static final Lettering HEADING = Lettering.bold(4.2);
    private static final Lettering PROJECT = Lettering.plain(4);
    private static final Lettering TITLE = Lettering.bold(7);
    private static final Lettering CODE = Lettering.bold(8);
    private static final Lettering CODE_NAME = Lettering.plain(3);
    private static final Lettering STRONG = Lettering.bold(4.2);
    private static final double CODE_ROOM_MM = 46;
    private static final double NUMBER_ROOM_MM = 7;
    private static final double BESIDE_GAP_MM = 8;
    private static final double LEAST_BESIDE_MM = 62;
    private static final double BOX_PADDING_MM = 2.5;
    private static final double LEAST_MAP_MM = 45;
    private static final double UNDER_HEADING_MM = 3;

    private static final String LARGE_CHECK =
            "Below the drawing on the large page, and on its left, runs a bar with its length beside"
                    + " it. Measure both. Not right? Have it printed again at 100 % (actual size),"
                    + " not fitted to the paper.";

    /** How closely the words stand. */
    private enum Density {
        /** As it reads best. */
        USUAL(3.6, 4),
        /** Where it saves a page. */
        CLOSE(3.2, 2.4);

        private final double sizeMm;
        private final double gapMm;

        Density(double sizeMm, double gapMm) {
            this.sizeMm = sizeMm;
            this.gapMm = gapMm;
        }
    }

    private final SheetText text;
    private final Tiling tiling;
    private final PrintCorrection correction;
    private final boolean isForLargePages;
    private final double widthMm;
    private final double pageMm;
    private final Lettering body;
    private final double gapMm;
    private final List<Slice> slices = new ArrayList<>();

    private LeadSheet(
            SheetText text,
            Tiling tiling,
            PrintCorrection correction,
            Box room,
            boolean isForLargePages,
            Density density) {
        this.isForLargePages = isForLargePages;
        this.body = Lettering.plain(density.sizeMm);
        this.gapMm = density.gapMm;
        this.text = text;
        this.tiling = tiling;
        this.correction = correction;
        this.widthMm = room.widthMm();
        this.pageMm = room.heightMm();
    }

    /**
     * The marks of the lead pages, one sketch to the page.
     *
     * @param isForLargePages whether the drawing is for a plotter, and this for a printer at home:
     *     then what is measured to check the print stands beside the drawing
     */
    static List<Sketch> pages(
            SheetText text,
            Tiling tiling,
            PrintCorrection correction,
            Box live,
            boolean isForLargePages) {
        Box room = room(live);
        List<Sketch> best = List.of();
        for (Density density : Density.values()) {
            LeadSheet lead =
                    new LeadSheet(text, tiling, correction, room, isForLargePages, density);
            List<Sketch> pages = lead.pages(room);
            if (best.isEmpty() || pages.size() < best.size()) {
                best = pages;
            }
            if (best.size() == 1) {
                break;
            }
        }
        return best;
    }

    private List<Sketch> pages(Box room) {
        header();
        warnings();
        instructions();
        if (isForLargePages) {
            largePages();
        } else {
            printCheck();
            ruler();
        }
        table();
        return Flow.pages(slices, room);
    }

    /** Clear of the heading in the band, if the square still fits. */
    private static Box room(Box live) {
        double square = TestSquare.SIDE_MM + TestSquare.LINE_MM;
        double down = Math.min(UNDER_HEADING_MM, live.heightMm() - square);
        return new Box(live.leftMm(), live.topMm() + down, live.widthMm(), live.heightMm() - down);
    }

    private void header() {
        List<Slice> lines = new ArrayList<>();
        double room = widthMm - CODE_ROOM_MM;
        lines.addAll(Slice.paragraph(text.projectTitle(), PROJECT, 0, room));
        lines.addAll(Slice.paragraph(text.sheetTitle(), TITLE, 0, room));
        Slice first = lines.get(0);
        lines.set(0, first.and(this::code));
        lines.add(Slice.gap(gapMm).and(this::rule));
        addTogether(lines);
    }

    private void code(Sketch sketch, Point leftTop) {
        Point right = leftTop.moved(widthMm, 0);
        sketch.label("code", right.moved(0, CODE_NAME.sizeMm()), CODE_NAME, Align.END);
        sketch.label(text.code().text(), right.moved(0, 11), CODE, Align.END);
    }

    private void rule(Sketch sketch, Point leftTop) {
        Point left = leftTop.moved(0, gapMm / 2);
        sketch.line(left, left.moved(widthMm, 0), Pen.PLAIN);
    }

    private void warnings() {
        for (String warning : text.warnings()) {
            boolean forbids = warning.toUpperCase(Locale.ROOT).contains("DO NOT");
            warning(warning, forbids ? STRONG : body);
            slices.add(Slice.gap(gapMm / 2));
        }
    }

    /** The box is drawn line by line, so that even one longer than a page is never cut off. */
    private void warning(String warning, Lettering lettering) {
        double room = widthMm - BOX_PADDING_MM;
        List<Slice> lines = new ArrayList<>();
        lines.add(Slice.gap(BOX_PADDING_MM / 2));
        lines.addAll(Slice.paragraph(warning, lettering, BOX_PADDING_MM, room));
        lines.add(Slice.gap(BOX_PADDING_MM));
        int last = lines.size() - 1;
        for (int i = 0; i <= last; i++) {
            Slice line = lines.get(i);
            lines.set(i, line.and(side(line.heightMm(), i == 0, i == last)));
        }
        addTogether(lines);
    }

    private Slice.Painter side(double heightMm, boolean isFirst, boolean isLast) {
        double in = Pen.CUT.widthMm() / 2;
        double over = isFirst || isLast ? in : 0;
        return (sketch, leftTop) -> {
            Point left = leftTop.moved(in, isFirst ? in : 0);
            Point right = left.moved(widthMm - 2 * in, 0);
            double down = heightMm - over;
            if (isFirst) {
                sketch.line(left.moved(-in, 0), right.moved(in, 0), Pen.CUT);
            }
            sketch.line(left, left.moved(0, down), Pen.CUT);
            sketch.line(right, right.moved(0, down), Pen.CUT);
            if (isLast) {
                sketch.line(left.moved(-in, down), right.moved(in, down), Pen.CUT);
            }
        };
    }

    private void instructions() {
        if (text.instructions().isEmpty()) {
            return;
        }
        slices.add(heading("What to do"));
        int number = 0;
        for (String instruction : text.instructions()) {
            number++;
            String name = number + ".";
            List<Slice> lines = Slice.paragraph(instruction, body, NUMBER_ROOM_MM, widthMm);
            Slice.Painter writesNumber =
                    (sketch, leftTop) ->
                            sketch.label(name, leftTop.moved(5, body.sizeMm()), body, Align.END);
            lines.set(0, lines.get(0).and(writesNumber));
            addTogether(lines);
        }
        slices.add(Slice.gap(gapMm));
    }

    private Slice heading(String words) {
        return Slice.stacked(List.of(Slice.line(words, HEADING, 0), Slice.gap(0.6))).keepingNext();
    }

    private void largePages() {
        slices.add(heading("Check the print before you cut"));
        slices.addAll(Slice.paragraph(LARGE_CHECK, body, 0, widthMm));
        if (correction.isNeeded()) {
            slices.addAll(Slice.paragraph(correction.words(), body, 0, widthMm));
        }
        slices.add(Slice.gap(gapMm / 2));
        slices.add(heading("How the sheets lie"));
        slices.addAll(Slice.paragraph(howTheyLie(), body, 0, widthMm));
        slices.add(Slice.gap(gapMm));
        if (tiling.rows() * tiling.columns() > 1) {
            slices.add(TileMap.slice(tiling, widthMm, TestSquare.SIDE_MM));
            slices.add(Slice.gap(gapMm));
        }
    }

    /** The square, and beside it, or below it on narrow paper, what belongs to it. */
    private void printCheck() {
        double square = TestSquare.SIDE_MM + TestSquare.LINE_MM;
        double beside = widthMm - square - BESIDE_GAP_MM;
        slices.add(heading("Check the print before you cut"));
        Slice alone = new Slice(square, false, TestSquare::draw);
        Slice words = Slice.stacked(besideSquare(Math.max(beside, LEAST_BESIDE_MM)));
        double height = Math.max(square, words.heightMm());
        if (beside >= LEAST_BESIDE_MM && height <= pageMm) {
            Slice both =
                    alone.and((s, p) -> words.painter().paint(s, p.moved(widthMm - beside, 0)));
            slices.add(new Slice(height, false, both.painter()));
        } else {
            slices.add(alone);
            slices.add(Slice.gap(gapMm / 2));
            slices.addAll(besideSquare(widthMm));
        }
        slices.add(Slice.gap(gapMm));
    }

    private List<Slice> besideSquare(double roomMm) {
        List<Slice> lines = new ArrayList<>();
        for (String words : TestSquare.words(correction)) {
            lines.addAll(Slice.paragraph(words, body, 0, roomMm));
            lines.add(Slice.gap(gapMm / 2));
        }
        lines.add(heading("How the sheets lie"));
        lines.addAll(Slice.paragraph(howTheyLie(), body, 0, roomMm));
        lines.add(Slice.gap(gapMm / 2));
        if (tiling.rows() * tiling.columns() > 1) {
            double used = lines.stream().mapToDouble(Slice::heightMm).sum();
            double height = Math.max(LEAST_MAP_MM, TestSquare.SIDE_MM - used);
            lines.add(TileMap.slice(tiling, roomMm, height));
        }
        return lines;
    }

    private String howTheyLie() {
        int printed = tiling.tiles().size();
        int all = tiling.rows() * tiling.columns();
        if (all == 1) {
            return isForLargePages
                    ? "The drawing is on one large page, "
                            + onTape(tiling.area().widthMm())
                            + " by "
                            + onTape(tiling.area().heightMm())
                            + ". Have it printed in black at 100 % on a large printer, as a copy"
                            + " shop has one; this sheet is for your own."
                    : "The drawing is on one sheet.";
        }
        String left = printed == all ? "" : " Where the map shows a stroke, nothing is drawn.";
        return Counted.of(printed, "sheet follows", "sheets follow")
                + ". Cut each one along the dotted lines at its top and left, lay it"
                + " over the sheet above or to the left until lines and crosses meet, and tape."
                + left;
    }

    private String onTape(double mm) {
        return text.tape().print(Length.ofComputedMillimetres(mm));
    }

    private void ruler() {
        slices.add(
                new Slice(
                        Ruler.HEIGHT_MM,
                        false,
                        (sketch, leftTop) -> Ruler.draw(sketch, leftTop, widthMm)));
        slices.add(Slice.gap(gapMm / 2));
    }

    private void table() {
        if (!text.table().isEmpty()) {
            slices.addAll(TableSlices.of(text.table(), widthMm));
        }
    }

    private void addTogether(List<Slice> lines) {
        for (Slice line : lines.subList(0, lines.size() - 1)) {
            slices.add(line.keepingNext());
        }
        slices.addAll(Collections.unmodifiableList(lines.subList(lines.size() - 1, lines.size())));
    }
}
