package secondbolt.notebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import secondbolt.draw.Align;
import secondbolt.draw.Drawing;
import secondbolt.draw.Lettering;
import secondbolt.draw.Pen;
import secondbolt.draw.Sketch;
import secondbolt.measure.Length;
import secondbolt.shape.Box;
import secondbolt.shape.Point;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Figures;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Open;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.Table;
import secondbolt.worksheet.Worksheet;

/**
 * A worksheet that puts marks on a band, to try the notebook with.
 *
 * @param title its heading, to try letters with
 * @param edgeMm where the last mark comes to lie
 * @param findings what it found
 */
record SampleWorksheet(String title, int edgeMm, List<Finding> findings) implements Worksheet {
    private static final int MARKS = 7;

    /** What the template shows. */
    public record View(String intro, List<Row> rows) {}

    /** One mark. */
    public record Row(
            String name, String centre, String other, String start, String end, String why) {}

    private double markMm(int number) {
        return 10 + (edgeMm - 120.0) * (number - 1) / (MARKS - 1);
    }

    private static String cm(double mm) {
        return String.format(Locale.ROOT, "%.2f cm", mm / 10);
    }

    @Override
    public String name() {
        return "sample";
    }

    @Override
    public Object view() {
        List<Row> rows = new ArrayList<>();
        for (int i = 1; i <= MARKS; i++) {
            double mm = markMm(i);
            String why = i == 1 ? "first" : i == MARKS ? "last" : "even gaps";
            String inches = String.format(Locale.ROOT, "%.1f in", mm / 25.4);
            rows.add(new Row("" + i, cm(mm), inches, cm(mm - 3), cm(mm + 11), why));
        }
        return new View("Seven buttons share the band " + title + ".", rows);
    }

    private Drawing drawing() {
        Sketch sketch = new Sketch();
        sketch.box(new Box(10, 5, 36, edgeMm), Pen.PLAIN);
        sketch.line(new Point(28, 5), new Point(28, 5 + edgeMm), Pen.CENTRE);
        for (int i = 1; i <= MARKS; i++) {
            double y = 5 + markMm(i);
            sketch.line(new Point(28, y - 3), new Point(28, y + 11), Pen.BOLD);
            sketch.label("" + i, new Point(50, y + 3), Lettering.bold(8), Align.START);
        }
        sketch.label(title, new Point(64, 20), Lettering.plain(7));
        return sketch.drawing("Marks for " + title, new Box(0, 0, 150, edgeMm + 10));
    }

    @Override
    public Map<String, Drawing> pictures() {
        return Map.of("band", drawing());
    }

    @Override
    public List<Sheet> sheets() {
        Table table =
                new Table(
                        List.of("Button", "Centre"),
                        List.of(List.of("1", cm(markMm(1))), List.of("7", cm(markMm(7)))));
        Sheet sheet =
                new Sheet(
                        "front-band",
                        "Buttonhole guide: front band",
                        drawing(),
                        List.of("Lay the guide on the right front."),
                        List.of(),
                        table);
        return List.of(sheet);
    }

    @Override
    public List<Assumed> assumed() {
        return List.of(new Assumed("laps", "right over left", "usual for women; set `laps`"));
    }

    @Override
    public List<Open> open() {
        return List.of(
                new Open(
                        "shrinkage along",
                        "how much longer to cut",
                        "wash a square marked 50 cm by 50 cm"));
    }

    @Override
    public Figures figures() {
        List<Figures> marks = new ArrayList<>();
        for (int i = 1; i <= MARKS; i++) {
            Length mm = Length.ofMillimetres(Math.round(markMm(i)));
            marks.add(new Figures().count("number", i).length("from_top", mm));
        }
        return new Figures()
                .inside(
                        "front band",
                        new Figures()
                                .length("edge_length", Length.ofMillimetres(edgeMm))
                                .list("marks", marks));
    }
}
