package secondbolt.draw.sheet;

import java.util.ArrayList;
import java.util.List;
import secondbolt.draw.Lettering;
import secondbolt.draw.Sketch;
import secondbolt.draw.paper.PrintCorrection;
import secondbolt.draw.paper.Tiling;
import secondbolt.measure.Length;
import secondbolt.measure.Plural;
import secondbolt.shape.Box;

/**
 * What lies in front of the tiles: what the sheet is, what to do, and whether the scale is true.
 */
final class LeadSheet {
    private static final double BESIDE_GAP_MM = 8;
    private static final double LEAST_BESIDE_MM = 62;
    private static final double LEAST_MAP_MM = 45;
    private static final double UNDER_HEADING_MM = 3;

    private static final String LARGE_CHECK =
            "Below the drawing on the large page, and on its left, runs a bar with its length"
                    + " beside it. Measure both. Not right? Have it printed again at 100 % (actual"
                    + " size), not fitted to the paper.";

    private final SheetText text;
    private final Tiling tiling;
    private final PrintCorrection correction;
    private final boolean isForLargePages;
    private final double widthMm;
    private final double pageMm;
    private final LeadWords words;
    private final Lettering body;
    private final double gapMm;
    private final List<Slice> slices = new ArrayList<>();

    private LeadSheet(
            SheetText text,
            Tiling tiling,
            PrintCorrection correction,
            Box room,
            boolean isForLargePages,
            LeadWords.Density density) {
        this.isForLargePages = isForLargePages;
        this.words = new LeadWords(text, room.widthMm(), density);
        this.body = density.body();
        this.gapMm = density.gapMm();
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
        for (LeadWords.Density density : LeadWords.Density.values()) {
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
        slices.addAll(words.all());
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

    private void largePages() {
        slices.add(LeadWords.heading("Check the print before you cut"));
        slices.addAll(Slice.paragraph(LARGE_CHECK, body, 0, widthMm));
        if (correction.isNeeded()) {
            slices.addAll(Slice.paragraph(correction.words(), body, 0, widthMm));
        }
        slices.add(Slice.gap(gapMm / 2));
        slices.add(LeadWords.heading("How the sheets lie"));
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
        slices.add(LeadWords.heading("Check the print before you cut"));
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
        lines.add(LeadWords.heading("How the sheets lie"));
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
        return Plural.of(printed, "sheet follows", "sheets follow")
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
}
