package secondbolt.cloth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import secondbolt.block.Block;
import secondbolt.block.Table;
import secondbolt.cloth.yields.ClothCalculation;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.draw.Drawing;
import secondbolt.draw.Mark;
import secondbolt.draw.svg.SvgRenderer;
import secondbolt.file.json.Json;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Open;
import secondbolt.worksheet.Subject;
import secondbolt.worksheet.Worksheet;

/** What the cloth worksheet tells, and that its picture can be read. */
class ClothWorksheetTest {
    private static Worksheet worksheet(String units, String... lines) {
        Tape tape = units.equals("in") ? Tape.INCH : Tape.CENTIMETRE;
        List<ClothResult> results = ClothCalculation.work(Written.cloths(units, lines));
        return new ClothWorksheet(results, tape).worksheet();
    }

    private static List<Finding> found(Worksheet worksheet, String code) {
        return worksheet.findings().stream().filter(f -> f.code().equals(code)).toList();
    }

    private static Drawing picture(Worksheet worksheet) {
        return worksheet.blocks().stream()
                .filter(Block.Picture.class::isInstance)
                .map(block -> ((Block.Picture) block).drawing())
                .findFirst()
                .orElseThrow();
    }

    /** The rows of all tables whose name begins so. */
    private static List<List<Table.Cell>> rows(Worksheet worksheet, String name) {
        return worksheet.blocks().stream()
                .filter(Block.Rows.class::isInstance)
                .map(block -> ((Block.Rows) block).table())
                .filter(table -> table.name().startsWith(name))
                .flatMap(table -> table.rows().stream())
                .toList();
    }

    /** 150 by 300 never washed stays 4.5 m²; what may still change it is told. */
    @Test
    void reckonsWoolThatIsNeverWashedAsMeasured() {
        String wool = "  coating: {size: [150, 300], fibre: wool, prewash: never}";
        ClothResult result = ClothCalculation.work(Written.cloths("cm", wool)).get(0);
        assertEquals(
                4_500_000,
                result.finished().orElseThrow().soundness().sound().region().areaMm2(),
                1e-3);
        Worksheet told = worksheet("cm", wool);
        assertEquals(List.of(), found(told, "cloth-prewash-untold"));
        assertTrue(told.assumed().toString().contains("never washed: it stays as measured"));
        assertFalse(told.open().toString().contains("draws in"));
    }

    /** Laid one way meanwhile, and asked. */
    @Test
    void laysAClothOfUnknownNapOneWayAndAsks() {
        Worksheet told = worksheet("cm", "  velvet: {size: [90, 90], nap: unknown, prewash: done}");
        assertTrue(told.open().toString().contains("the nap of velvet"));
        assertTrue(told.assumed().toString().contains("no piece is turned upside down"));
    }

    @Test
    void stopsWhenNoSoundClothIsLeft() {
        String[] rag = {
            "  rag:",
            "    size: [20, 20]",
            "    flaws: [{what: worn, at: [10, 10], size: [18, 18]}]",
            "    clear: 1"
        };
        List<Finding> stops =
                worksheet("cm", rag).findings().stream().filter(Finding::isStop).toList();
        assertEquals(List.of("cloth-none-sound"), stops.stream().map(Finding::code).toList());
        assertEquals(new Subject.Cloth("rag"), stops.get(0).about());
        assertTrue(Written.result("cm", rag).finished().orElseThrow().rectangles().isEmpty());
    }

    /** Shops cut in steps of 5 cm or an eighth of a yard; common practice, no source. */
    @Test
    void countsLessThanAShopStepAsNoClearRun() {
        Worksheet strip =
                worksheet(
                        "cm",
                        "  strip:",
                        "    size: [100, 5]",
                        "    trim: {top: 1}",
                        "    prewash: done");
        List<List<Table.Cell>> rows = rows(strip, "Lengths by ");
        assertEquals("90 cm", rows.get(0).get(0).value().own());
        List<String> runs = rows.stream().map(row -> row.get(2).value().own()).toList();
        assertTrue(runs.stream().noneMatch(run -> run.startsWith("0")), runs.toString());
        assertTrue(runs.contains("none"), runs.toString());
    }

    @Test
    void leavesTheWashOpenAndSaysHowToFindOut() {
        Worksheet cloth =
                worksheet(
                        "in",
                        "  cloth:",
                        "    size: [60, 90]",
                        "    prewash: {marked: [60, unknown], now: [56, unknown]}");
        Open open =
                cloth.open().stream()
                        .filter(o -> o.what().equals("how cloth draws in along"))
                        .findFirst()
                        .orElseThrow();
        assertTrue(open.findOut().contains("20 in"), open.findOut());
        String json = Json.write(cloth.figures().asMap());
        assertTrue(json.contains("\"size_mm\": null"), json);
        assertTrue(json.contains("\"along_percent\": null"), json);
        assertTrue(json.contains("\"across_percent\": -6.6667"), json);
    }

    @Test
    void listsWhatItAssumes() {
        Worksheet cloth = worksheet("cm", "  cloth: {size: [60, 90]}");
        assertEquals(
                List.of(
                        "role of cloth",
                        "nap of cloth",
                        "shrinkage of cloth",
                        "flaws of cloth",
                        "how much of a bolt the selvages take"),
                cloth.assumed().stream().map(a -> a.what()).toList());
    }

    @Test
    void saysHowFarFromSquare() {
        // d² = w² + r² + 2 w s: 60² + 80² = 100²; with s = 1, d² = 10 120.
        Worksheet cloth =
                worksheet(
                        "cm",
                        "  cloth:",
                        "    size: [60, 80]",
                        "    sides measured: {diagonal: 100.6}");
        Finding lean = found(cloth, "cloth-out-of-square").get(0);
        assertEquals(Finding.Level.CAUTION, lean.level());
        assertTrue(lean.text().contains("lies 1 cm (⅜ in) right"), lean.text());
    }

    /** The side that was not measured is as long as written, not as long as the other. */
    @Test
    void saysThatALongerSideDiffersFromTheWrittenOne() {
        Worksheet cloth =
                worksheet(
                        "cm",
                        "  cloth:",
                        "    size: [100, 200]",
                        "    sides measured: {left: 201}");
        String text = found(cloth, "cloth-sides-differ").get(0).text();
        assertTrue(text.contains("left 201 cm") && text.contains("right 200 cm"), text);
        assertTrue(text.contains("slants by 1 cm"), text);
    }

    @Test
    void namesTheFiguresOtherProgramsRead() {
        Map<String, Object> figures =
                worksheet("cm", "  cloth: {size: [60, 90], prewash: done}").figures().asMap();
        @SuppressWarnings("unchecked")
        Map<String, Object> cloth = (Map<String, Object>) figures.get("cloth");
        assertEquals(List.of(600.0, 900.0), cloth.get("size_mm"));
        assertEquals(540_000.0, cloth.get("sound_mm2"));
        assertEquals(0.0, cloth.get("flawed_mm2"));
        assertEquals(
                Map.of("at_mm", List.of(0.0, 0.0), "size_mm", List.of(600.0, 900.0)),
                cloth.get("largest_rectangle"));
        @SuppressWarnings("unchecked")
        List<Map<String, Object>> lengths =
                (List<Map<String, Object>>) cloth.get("equivalent_lengths");
        // 60 by 90 cm over the 85 cm that are between the selvages of 90.
        assertEquals(
                Map.of("bolt_width_mm", 900.0, "by_area_mm", 540_000.0 / 850, "clear_run_mm", 0.0),
                lengths.get(0));
    }

    @Test
    void printsAClearRectangleNoLargerThanItIs() {
        // 25.4 cm less twice 1.07 cm leaves 23.26 cm, from 1.07 cm on: 1.1 to 24.3 on the tape.
        Worksheet cloth =
                worksheet(
                        "cm",
                        "  cloth:",
                        "    size: [25.4, 30]",
                        "    prewash: done",
                        "    flaws:",
                        "      - {what: l, at: [5.35 mm, 15], size: [10.7 mm, 30]}",
                        "      - {what: r, at: [248.65 mm, 15], size: [10.7 mm, 30]}");
        List<Table.Cell> row = rows(cloth, "Clear rectangles of cloth").get(0);
        assertEquals("1.1 cm", row.get(1).value().own());
        assertEquals("23.2 cm", row.get(3).value().own());
    }

    @Test
    void keepsLabelsApartAndInTheFrame() {
        List<String> lines = new ArrayList<>();
        lines.add("  cloth:");
        lines.add("    size: [140, 220]");
        lines.add("    edges: {left: hem, right: selvage, top: heading tape, bottom: deep hem}");
        lines.add("    flaws:");
        for (int i = 0; i < 12; i++) {
            lines.add(
                    "      - {what: hole, at: ["
                            + (40 + 3 * (i % 4))
                            + ", "
                            + (60 + 3 * (i / 4))
                            + "], round: 2}");
        }
        String[] written = lines.toArray(new String[0]);
        Drawing drawing = picture(worksheet("cm", written));
        List<Box> boxes = new ArrayList<>();
        for (Mark mark : drawing.marks()) {
            if (mark instanceof Mark.Label label) {
                double width = label.lettering().widthMm(label.text());
                double height = label.lettering().sizeMm() * 0.7;
                boolean upright = label.lettering().turnDegrees() == 0;
                double share =
                        switch (label.align()) {
                            case START -> 0;
                            case MIDDLE -> 0.5;
                            case END -> 1;
                        };
                double x = label.at().xMm();
                double y = label.at().yMm();
                boxes.add(
                        upright
                                ? new Box(x - share * width, y - height, width, height)
                                : new Box(x - height, y - (1 - share) * width, height, width));
            }
        }
        assertTrue(boxes.size() > 30, "labels " + boxes.size());
        for (int i = 0; i < boxes.size(); i++) {
            Box with = drawing.frame().with(boxes.get(i));
            assertEquals(drawing.frame().areaMm2(), with.areaMm2(), 1e-6);
            for (int j = 0; j < i; j++) {
                assertFalse(boxes.get(i).overlaps(boxes.get(j)), boxes.get(i) + " " + boxes.get(j));
            }
        }
        assertEquals(
                SvgRenderer.render(drawing), SvgRenderer.render(picture(worksheet("cm", written))));
    }
}
