package secondbolt.draw.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.ResourceLock;
import secondbolt.draw.Drawing;
import secondbolt.draw.Pen;
import secondbolt.draw.Sketch;
import secondbolt.draw.paper.Paper;
import secondbolt.draw.paper.PrintCorrection;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.shape.Point;
import secondbolt.tools.Raster;

/**
 * Sheets measured on pixels of poppler's, as a maker measures paper. 300 dots to the inch are 0.085
 * mm each, and their grey tells parts of them. What is held to: 0.1 mm, a fifth of the finest
 * division of a tape.
 */
// One at a time, since the pictures of a long strip fill the memory.
@ResourceLock("large pictures")
class PrintedScaleTest {
    private static final int DPI = 300;

    /** For eight tiles in a row, since what each is read off by adds up. */
    private static final int FINE_DPI = 600;

    private static final double TOLERANCE_MM = 0.1;

    @TempDir Path folder;

    private List<Raster> print(Drawing drawing, Paper paper, PrintCorrection correction)
            throws IOException {
        return print(drawing, paper, correction, DPI);
    }

    private List<Raster> print(Drawing drawing, Paper paper, PrintCorrection correction, int dpi)
            throws IOException {
        byte[] bytes =
                PdfSheet.render(
                        "Front band",
                        "en",
                        SampleSheet.pages(drawing, paper, correction, Tape.CENTIMETRE));
        Path pdf = folder.resolve("sheet.pdf");
        Files.write(pdf, bytes);
        return Raster.pages(pdf, dpi);
    }

    private static Drawing small() {
        return SampleSheet.band(110, 200);
    }

    /** Looks for the row on which two lines stand about 100 mm apart and nothing between them. */
    private static double topOfSquare(Raster page) {
        for (double y = 20; y < 250; y += 0.5) {
            List<Raster.Run> runs = page.across(y, 7, 116);
            boolean isSquare =
                    runs.size() == 2
                            && Math.abs(runs.get(1).middleMm() - runs.get(0).middleMm() - 100) < 6;
            if (isSquare && runs.get(0).widthMm() < 0.3) {
                return y;
            }
        }
        throw new AssertionError("no test square found");
    }

    private static void assertSquare(Raster page, double across, double along) {
        double y = topOfSquare(page) + 20;
        List<Raster.Run> sides = page.across(y, 7, 116);
        double width = sides.get(1).middleMm() - sides.get(0).middleMm();
        double x = sides.get(0).middleMm() + 20;
        List<Raster.Run> ends = page.down(x, y - 21.5, y + along - 15);
        double height = ends.get(ends.size() - 1).middleMm() - ends.get(0).middleMm();
        assertEquals(across, width, TOLERANCE_MM);
        assertEquals(along, height, TOLERANCE_MM);
    }

    @Test
    void printsTheTestSquareTrue() throws IOException {
        for (Paper paper : List.of(Paper.A4, Paper.LETTER, Paper.A4_AND_LETTER)) {
            assertSquare(print(small(), paper, PrintCorrection.NONE).get(0), 100, 100);
        }
    }

    /** 100 ÷ 0.994 = 100.6036 mm of paper, which that printer prints as 100. */
    @Test
    void printsTheTestSquareLargerForAPrinterThatShrinks() throws IOException {
        PrintCorrection correction =
                new PrintCorrection(Length.ofComputedMillimetres(99.4), Length.ofMillimetres(100));
        assertSquare(print(small(), Paper.A4, correction).get(0), 100.6036, 100);
    }

    /** The bar on the tile: 15 cm and its 16 ticks, 1 cm apart. */
    @Test
    void printsTheBarsTrue() throws IOException {
        List<Raster> pages = print(small(), Paper.A4, PrintCorrection.NONE);
        Raster tile = pages.get(pages.size() - 1);
        // The bar's line lies 0.8 mm under the live area, which ends 10 mm above the paper's edge.
        List<Raster.Run> ticks = tile.across(297 - 10 + 0.8 + 0.5, 7, 161);
        assertEquals(16, ticks.size());
        for (int i = 0; i < 16; i++) {
            double from = ticks.get(i).middleMm() - ticks.get(0).middleMm();
            assertEquals(10.0 * i, from, TOLERANCE_MM);
        }
        List<Raster.Run> along = tile.down(10 - 0.8 - 0.5, 7, 211);
        assertEquals(21, along.size());
        assertEquals(200, along.get(20).middleMm() - along.get(0).middleMm(), TOLERANCE_MM);
    }

    /** Millimetre ticks on one side, sixteenths of an inch on the other; 1 in is 25.4 mm. */
    @Test
    void printsBothRulersTrue() throws IOException {
        Raster lead = print(small(), Paper.A4, PrintCorrection.NONE).get(0);
        double line = rulerLine(lead);
        List<Raster.Run> millimetres = lead.across(line - 0.7, 7, 203);
        assertTrue(millimetres.size() >= 151, "ticks: " + millimetres.size());
        for (int i = 0; i < millimetres.size(); i++) {
            double from = millimetres.get(i).middleMm() - millimetres.get(0).middleMm();
            assertEquals(i, from, TOLERANCE_MM);
        }
        List<Raster.Run> sixteenths = lead.across(line + 0.7, 7, 203);
        assertTrue(sixteenths.size() >= 97, "ticks: " + sixteenths.size());
        for (int i = 0; i < sixteenths.size(); i++) {
            double from = sixteenths.get(i).middleMm() - sixteenths.get(0).middleMm();
            assertEquals(i * 25.4 / 16, from, TOLERANCE_MM);
        }
    }

    /** Below the square: the lowest row with more than 150 strokes is just above the line. */
    private static double rulerLine(Raster lead) {
        for (double y = topOfSquare(lead) + 101; y < 285; y += 0.1) {
            if (lead.across(y, 7, 203).size() > 150) {
                // The millimetre ticks are 2 mm long and end on the line.
                double x = lead.across(y, 7, 203).get(1).middleMm() + 0.5;
                return lead.down(x, y, y + 3).get(0).middleMm();
            }
        }
        throw new AssertionError("no ruler found");
    }

    @Test
    void joinsATwoMetreStripTrueFromEndToEnd() throws IOException {
        Sketch sketch = new Sketch();
        sketch.line(new Point(5, 5), new Point(60, 5), Pen.FINE);
        sketch.line(new Point(50, 5), new Point(50, 1995), Pen.FINE);
        sketch.line(new Point(5, 1995), new Point(60, 1995), Pen.FINE);
        Drawing strip = sketch.drawing("Strip", new Box(0, 0, 100, 2000));
        List<Raster> pages = print(strip, Paper.A4, PrintCorrection.NONE, FINE_DPI);
        List<Raster> tiles = pages.subList(pages.size() - 8, pages.size());
        double total = 0;
        for (int i = 0; i < tiles.size(); i++) {
            Raster tile = tiles.get(i);
            double from = i == 0 ? endLine(tile) : cross(tile, 10, 20);
            double to = i == 7 ? endLine(tile) : cross(tile, 277, 287);
            total += to - from;
        }
        assertEquals(1990, total, TOLERANCE_MM);
    }

    /** The line across at the strip's end, met 10 mm right of the live area's left side. */
    private static double endLine(Raster tile) {
        List<Raster.Run> runs = tile.down(20 + 20, 11, 274);
        return runs.stream()
                .filter(run -> tile.across(run.middleMm(), 16, 69).size() == 1)
                .findFirst()
                .orElseThrow()
                .middleMm();
    }

    /** Beside the cross's centre a line down meets the circle, the arm, and the circle again. */
    private static double cross(Raster tile, double fromMm, double toMm) {
        List<Raster.Run> runs = tile.down(10 + 18 + 1, fromMm + 1, toMm - 1);
        assertEquals(3, runs.size());
        return runs.get(1).middleMm();
    }
}
