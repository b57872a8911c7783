package secondbolt.cloth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import secondbolt.draw.Drawing;
import secondbolt.draw.Mark;
import secondbolt.draw.svg.SvgRenderer;
import secondbolt.file.Json;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Open;

/** What the cloth worksheet tells, and that its picture can be read. */
class ClothWorksheetTest {
    private static ClothWorksheet worksheet(String units, String... lines) {
        Tape tape = units.equals("in") ? Tape.INCH : Tape.CENTIMETRE;
        return ClothWorksheet.of(Written.cloths(units, lines), tape);
    }

    private static List<String> texts(ClothWorksheet worksheet, Finding.Level level) {
        return worksheet.findings().stream()
                .filter(f -> f.level() == level)
                .map(Finding::text)
                .toList();
    }

    @Test
    void stopsWhenNoSoundClothIsLeft() {
        ClothWorksheet worn =
                worksheet(
                        "cm",
                        "  rag:",
                        "    size: [20, 20]",
                        "    flaws: [{what: worn, at: [10, 10], size: [18, 18]}]",
                        "    clear: 1");
        assertEquals(1, texts(worn, Finding.Level.STOP).size());
        assertTrue(worn.results().get(0).finished().orElseThrow().rectangles().isEmpty());
    }

    /** Shops cut in steps of 5 cm or an eighth of a yard; common practice, no source. */
    @Test
    void countsLessThanAShopStepAsNoClearRun() {
        ClothWorksheet strip =
                worksheet(
                        "cm",
                        "  strip:",
                        "    size: [100, 5]",
                        "    trim: {top: 1}",
                        "    prewash: done");
        String view = strip.view().toString();
        assertTrue(view.contains("width=90 cm"), view);
        assertFalse(view.contains("clearRun=Both[own=0"), view);
        assertTrue(view.contains("clearRun=Both[own=none"), view);
    }

    @Test
    void leavesTheWashOpenAndSaysHowToFindOut() {
        ClothWorksheet cloth =
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
        ClothWorksheet cloth = worksheet("cm", "  cloth: {size: [60, 90]}");
        assertEquals(
                List.of("role of cloth", "nap of cloth", "prewash of cloth"),
                cloth.assumed().stream().map(a -> a.what()).toList());
    }

    @Test
    void saysHowFarFromSquare() {
        // d² = w² + r² + 2 w s: 60² + 80² = 100²; with s = 1, d² = 10 120.
        ClothWorksheet cloth =
                worksheet(
                        "cm",
                        "  cloth:",
                        "    size: [60, 80]",
                        "    sides measured: {diagonal: 100.6}");
        List<String> texts = texts(cloth, Finding.Level.CAUTION);
        assertTrue(texts.stream().anyMatch(t -> t.contains("lies 1 cm (⅜ in) right")), "" + texts);
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
        assertEquals(
                Map.of("bolt_width_mm", 900.0, "by_area_mm", 600.0, "clear_run_mm", 0.0),
                lengths.get(0));
    }

    @Test
    void printsAClearRectangleNoLargerThanItIs() {
        // 25.4 cm less twice 1.07 cm leaves 23.26 cm, from 1.07 cm on: 1.1 to 24.3 on the tape.
        ClothView view =
                (ClothView)
                        worksheet(
                                        "cm",
                                        "  cloth:",
                                        "    size: [25.4, 30]",
                                        "    prewash: done",
                                        "    flaws:",
                                        "      - {what: l, at: [5.35 mm, 15], size: [10.7 mm, 30]}",
                                        "      - {what: r, at: [248.65 mm, 15], size: [10.7 mm, 30]}")
                                .view();
        ClothView.RectangleRow row = view.cloths().get(0).rectangles().get(0);
        assertEquals("1.1 cm", row.across().own());
        assertEquals("23.2 cm", row.width().own());
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
        ClothWorksheet worksheet = worksheet("cm", lines.toArray(new String[0]));
        Drawing drawing = worksheet.pictures().get("cloth-1");
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
                SvgRenderer.render(drawing),
                SvgRenderer.render(worksheet.pictures().get("cloth-1")));
    }
}
