package secondbolt.draw.sheet;

import java.util.ArrayList;
import java.util.List;
import secondbolt.draw.Drawing;
import secondbolt.draw.Mark;
import secondbolt.draw.Sketch;
import secondbolt.draw.paper.JoinMarks;
import secondbolt.draw.paper.Page;
import secondbolt.draw.paper.PageArea;
import secondbolt.draw.paper.Paper;
import secondbolt.draw.paper.PrintCorrection;
import secondbolt.draw.paper.Tiling;
import secondbolt.shape.Box;
import secondbolt.shape.Point;

/** Lays out a whole sheet: the lead pages, then the drawing in tiles. */
public final class SheetPages {
    /** So far lines that run along the tile's edge may reach over it, so that none is halved. */
    private static final double BLEED_MM = 0.5;

    private SheetPages() {}

    /**
     * The pages to print, in order.
     *
     * @param drawing at true size
     * @param text what stands beside it
     * @param paper the paper in the printer
     * @param correction {@link PrintCorrection#NONE} for a printer that prints true; else it must
     *     be {@linkplain PrintCorrection#isSane sane}
     * @throws IllegalArgumentException if the correction is not sane
     */
    public static List<Page> of(
            Drawing drawing, SheetText text, Paper paper, PrintCorrection correction) {
        if (!correction.isSane()) {
            throw new IllegalArgumentException("correction must be sane, was " + correction);
        }
        Tiling tiling = Tiling.of(drawing, paper, correction);
        List<Page> pages = new ArrayList<>(lead(text, tiling, paper, correction));
        for (Tiling.Tile tile : tiling.tiles()) {
            pages.add(tile(text, tiling, tile));
        }
        return List.copyOf(pages);
    }

    /**
     * The pages of a sheet whose drawing is a picture and not true to size.
     *
     * @param picture as large as it shall be printed, no larger than a page
     */
    public static List<Page> ofPicture(
            Drawing picture, SheetText text, Paper paper, PrintCorrection correction) {
        PageArea area = PageArea.of(paper.forLead(), correction, PageArea.Way.UPRIGHT);
        List<Sketch> sketches = PictureSheet.pages(text, picture, area.live());
        return pages(sketches, text, area, "one page", "page");
    }

    /** The pages of a sheet that has no drawing. */
    public static List<Page> ofWords(SheetText text, Paper paper, PrintCorrection correction) {
        PageArea area = PageArea.of(paper.forLead(), correction, PageArea.Way.UPRIGHT);
        return pages(WordsSheet.pages(text, area.live()), text, area, "one page", "page");
    }

    private static List<Page> pages(
            List<Sketch> sketches, SheetText text, PageArea area, String one, String several) {
        List<Page> pages = new ArrayList<>();
        for (Sketch sketch : sketches) {
            String place =
                    sketches.size() == 1
                            ? one
                            : several + " " + (pages.size() + 1) + " of " + sketches.size();
            new EdgeBand(sketch, area).heading(text, place);
            pages.add(area.page(text.sheetTitle(), sketch));
        }
        return pages;
    }

    private static List<Page> lead(
            SheetText text, Tiling tiling, Paper paper, PrintCorrection correction) {
        PageArea area = PageArea.of(paper.forLead(), correction, PageArea.Way.UPRIGHT);
        boolean large = !paper.isForHome();
        List<Sketch> sketches = LeadSheet.pages(text, tiling, correction, area.live(), large);
        return pages(sketches, text, area, "lead sheet", "lead sheet");
    }

    private static Page tile(SheetText text, Tiling tiling, Tiling.Tile tile) {
        PageArea area = tiling.area();
        Box view = tile.window().grown(BLEED_MM);
        Point at = tiling.onPage(tile, new Point(view.leftMm(), view.topMm()));
        Sketch sketch = new Sketch();
        sketch.add(new Mark.Window(tiling.drawing(), view, at));
        EdgeBand band = new EdgeBand(sketch, area);
        band.heading(text, place(tiling, tile));
        band.bars(text.tape());
        if (JoinMarks.draw(sketch, tiling, tile)) {
            band.joining(JoinMarks.WORDS);
        }
        return area.page(text.sheetTitle(), sketch);
    }

    private static String place(Tiling tiling, Tiling.Tile tile) {
        if (tiling.rows() * tiling.columns() == 1) {
            return "one sheet";
        }
        return "row "
                + tile.row()
                + " of "
                + tiling.rows()
                + ", column "
                + tile.column()
                + " of "
                + tiling.columns();
    }
}
