package secondbolt.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import secondbolt.block.Block;
import secondbolt.cutting.line.CutPiece;
import secondbolt.cutting.line.CuttingResult;
import secondbolt.draw.SheetCode;
import secondbolt.draw.paper.Page;
import secondbolt.draw.paper.Paper;
import secondbolt.draw.paper.PrintCorrection;
import secondbolt.draw.paper.Tiling;
import secondbolt.draw.pdf.PdfSheet;
import secondbolt.draw.sheet.SheetPages;
import secondbolt.draw.sheet.SheetText;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.tools.Raster;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.Worksheet;

/** What the piece sheets print, measured on the pixels of their glued tiles. */
class PieceSheetsTest {
    private static final int DPI = 300;
    private static final double WITHIN_MM = 0.2;

    @TempDir Path folder;

    private static String[] shirt(String by) {
        return new String[] {
            "pattern:",
            "  rights: bought",
            "  seam allowance: {of: 1.5, included: false}",
            "  pieces:",
            "    front: {cut: pair, rectangle: [30, 70], lines: {body: 40}}",
            "    back: {cut: 1, fold: left, rectangle: [28, 70], lines: {body: 40}}",
            "    sleeve: {cut: pair, rectangle: [40, 55], lines: {sleeve: 20}}",
            "    collar: {cut: 2, rectangle: [12, 8]}",
            "    pocket: {cut: 1, rectangle: [7.5, 9]}",
            "    loop: {cut: 4, rectangle: [3, 5]}",
            "    yoke: {cut: 2, box: [20, 12], edges: {lower: 20}}",
            "alterations: [{lengthen: body, by: " + by + "}]"
        };
    }

    private static Worksheet worksheet(CuttingResult result) {
        return new CuttingWorksheet(result, Tape.CENTIMETRE).worksheet();
    }

    private static List<Sheet> sheets(String by) {
        return worksheet(Written.result("cm", shirt(by))).sheets();
    }

    private static Map<String, SheetCode> codes(String by) {
        Map<String, SheetCode> codes = new LinkedHashMap<>();
        sheets(by).forEach(sheet -> codes.put(sheet.name(), SheetCode.of(sheet.drawing())));
        return codes;
    }

    @Test
    void putsSmallPiecesTogetherAndTheGridLast() {
        assertEquals(
                List.of(
                        "piece-front",
                        "piece-back",
                        "piece-sleeve",
                        "small-pieces-1",
                        "all-pieces",
                        "grid"),
                sheets("2").stream().map(Sheet::name).toList());
        Sheet small = sheets("2").get(3);
        assertEquals("Small pieces: collar, pocket, loop", small.title());
        for (Paper paper : List.of(Paper.A4, Paper.LETTER, Paper.A4_AND_LETTER)) {
            Tiling tiling = Tiling.of(small.drawing(), paper, PrintCorrection.NONE);
            assertEquals(1, tiling.tiles().size(), paper.name());
        }
    }

    @Test
    void laysAllPiecesOnOneLengthOfAPlottersRoll() {
        Sheet all = sheets("2").get(4);
        assertEquals(Sheet.Size.LARGE, all.size());
        List<Page> pages = pages(all, Paper.ROLL_36);
        assertEquals(2, pages.size());
        assertEquals(215.9 - 5.9, pages.get(0).widthMm(), 1e-9, "the lead sheet is for home");
        assertEquals(914.4, pages.get(1).widthMm(), 1e-9);
        // Front, back and sleeve: 33, 29.5 and 43 cm across with their allowances.
        assertTrue(pages.get(1).heightMm() < 760 + 440 + 40, "long " + pages.get(1).heightMm());
    }

    @Test
    void changesOnlyTheCodesOfPiecesThatCarryTheLine() {
        Map<String, SheetCode> before = codes("2");
        Map<String, SheetCode> after = codes("2.5");
        assertNotEquals(before.get("piece-front"), after.get("piece-front"));
        assertNotEquals(before.get("piece-back"), after.get("piece-back"));
        for (String same : List.of("piece-sleeve", "small-pieces-1", "grid")) {
            assertEquals(before.get(same), after.get(same), same);
        }
    }

    @Test
    void saysThatABoughtPatternIsForOwnUse() {
        assertTrue(
                sheets("2").get(0).blocks().stream()
                        .filter(Block.Warnings.class::isInstance)
                        .anyMatch(block -> block.toString().contains("For your own use")));
    }

    /** The cutting lines of a rectangle, on whichever tile each of them lies. */
    @ParameterizedTest
    @ValueSource(strings = {"a4", "letter", "a4+letter", "a3"})
    void printsTheCuttingLineWhereItIs(String paperName) throws IOException {
        CuttingResult result = Written.result("cm", shirt("2"));
        CutPiece front = result.pieces().get(0);
        Sheet sheet = worksheet(result).sheets().get(0);
        Paper paper = Paper.named(paperName).orElseThrow();
        List<Page> pages = pages(sheet, paper);
        Path pdf = folder.resolve(paperName + ".pdf");
        Files.write(pdf, PdfSheet.render("front", "en", pages));
        List<Raster> rasters = Raster.pages(pdf, DPI);
        Tiling tiling = Tiling.of(sheet.drawing(), paper, PrintCorrection.NONE);
        int lead = pages.size() - tiling.tiles().size();
        Box cut = front.cut().box();
        assertEquals(330, cut.widthMm(), 1e-6);
        assertEquals(750, cut.heightMm(), 1e-6);
        int seen = 0;
        for (int i = 0; i < tiling.tiles().size(); i++) {
            Box window = tiling.tiles().get(i).window();
            Raster raster = rasters.get(lead + i);
            for (double x : List.of(cut.leftMm(), cut.rightMm())) {
                seen += upright(raster, window, x, cut) ? 1 : 0;
            }
            for (double y : List.of(cut.topMm(), cut.bottomMm())) {
                seen += level(raster, window, y, cut) ? 1 : 0;
            }
        }
        assertTrue(seen >= 4, "lines seen: " + seen);
    }

    private static List<Page> pages(Sheet sheet, Paper paper) {
        SheetText text =
                new SheetText(
                        "Shirt",
                        sheet.title(),
                        SheetCode.of(sheet.drawing()),
                        List.of("Cut along the heavy line."),
                        List.of(),
                        List.of(),
                        Tape.CENTIMETRE);
        return SheetPages.of(sheet.drawing(), text, paper, PrintCorrection.NONE);
    }

    /** Ten millimetres of margin lie before the window's edge on every page. */
    private static boolean upright(Raster raster, Box window, double x, Box cut) {
        double top = Math.max(cut.topMm(), window.topMm() + 25);
        double bottom = Math.min(cut.bottomMm(), window.bottomMm() - 25);
        if (x < window.leftMm() + 2 || x > window.rightMm() - 2 || top + 20 > bottom) {
            return false;
        }
        double at = x - window.leftMm() + 10;
        double y = (top + bottom) / 2 - window.topMm() + 10;
        assertTrue(
                raster.across(y + 7.3, at - 1.5, at + 1.5).stream()
                        .anyMatch(run -> Math.abs(run.middleMm() - at) < WITHIN_MM),
                "upright line at " + x);
        return true;
    }

    private static boolean level(Raster raster, Box window, double y, Box cut) {
        double left = Math.max(cut.leftMm(), window.leftMm() + 25);
        double right = Math.min(cut.rightMm(), window.rightMm() - 25);
        if (y < window.topMm() + 2 || y > window.bottomMm() - 2 || left + 20 > right) {
            return false;
        }
        double at = y - window.topMm() + 10;
        double x = (left + right) / 2 - window.leftMm() + 10;
        assertTrue(
                raster.down(x + 7.3, at - 1.5, at + 1.5).stream()
                        .anyMatch(run -> Math.abs(run.middleMm() - at) < WITHIN_MM),
                "level line at " + y);
        return true;
    }

    private static String warnings(Sheet sheet) {
        return sheet.blocks().stream()
                .filter(Block.Warnings.class::isInstance)
                .map(Object::toString)
                .reduce("", String::concat);
    }

    /** The sheet itself says what its cutting line only takes, of the pieces it shows. */
    @Test
    void saysOnTheSheetWhatIsOnlyTakenMeanwhile() {
        List<Sheet> sheets =
                worksheet(
                                Written.result(
                                        "cm",
                                        "pattern:",
                                        "  seam allowance: {of: 1.5, included: false}",
                                        "  pieces:",
                                        "    front: {cut: pair, rectangle: [30, 70]}",
                                        "    back: {cut: pair, rectangle: [28, 70]}",
                                        "hems:",
                                        "  hem: {on: [front.bottom], depth: unknown, turned: once}"))
                        .sheets();
        assertTrue(warnings(sheets.get(0)).contains("depth: 5 cm"), warnings(sheets.get(0)));
        assertTrue(warnings(sheets.get(0)).contains("the bottom edge of the front"));
        assertEquals("", warnings(sheets.get(1)).replaceAll("Warnings\\[\\w+=\\[\\]\\]", ""));
        assertTrue(warnings(sheets.get(2)).contains("depth: 5 cm"), "all pieces on one page");
    }

    /** Nor is a seam allowance that nobody told silently cut by. */
    @Test
    void saysOnTheSheetThatTheSeamAllowanceIsTaken() {
        List<Sheet> sheets =
                worksheet(
                                Written.result(
                                        "cm",
                                        "pattern:",
                                        "  pieces:",
                                        "    front: {cut: pair, rectangle: [30, 70]}"))
                        .sheets();
        String told = warnings(sheets.get(0));
        assertTrue(told.contains("seam allowance: 1.5 cm"), told);
    }
}
