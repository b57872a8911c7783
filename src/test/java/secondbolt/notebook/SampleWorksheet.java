package secondbolt.notebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import secondbolt.block.Block;
import secondbolt.block.Both;
import secondbolt.block.Table;
import secondbolt.draw.Align;
import secondbolt.draw.Drawing;
import secondbolt.draw.Lettering;
import secondbolt.draw.Pen;
import secondbolt.draw.Sketch;
import secondbolt.figure.Figures;
import secondbolt.measure.Length;
import secondbolt.shape.Box;
import secondbolt.shape.Point;
import secondbolt.topic.Outcome;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Notes;
import secondbolt.worksheet.Open;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.Subject;
import secondbolt.worksheet.Worksheet;

/**
 * A worksheet that puts marks on a band, to try the notebook with.
 *
 * @param title its heading, to try letters with
 * @param edgeMm where the last mark comes to lie
 * @param findings what it found
 */
record SampleWorksheet(String title, int edgeMm, List<Finding> findings) {
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

    Worksheet worksheet() {
        return Worksheet.of("sample", title, () -> new Notes(findings, assumed(), open()))
                .showing(this::blocks)
                .printing(this::sheets)
                .telling(this::figures);
    }

    private List<Block> blocks() {
        List<List<Table.Cell>> rows = new ArrayList<>();
        for (int i = 1; i <= MARKS; i++) {
            double mm = markMm(i);
            String inches = String.format(Locale.ROOT, "%.1f in", mm / 25.4);
            rows.add(List.of(Table.Cell.of("" + i), Table.Cell.of(new Both(cm(mm), inches))));
        }
        return List.of(
                new Block.Prose("Seven buttons share the band " + title + "."),
                new Block.Picture(drawing(), "The band"),
                new Block.Rows(
                        new Table("Marks", "Where they come", List.of("Mark", "Centre"), rows)));
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

    private List<Sheet> sheets() {
        Table table =
                Table.of(
                        List.of("Button", "Centre"),
                        List.of(List.of("1", cm(markMm(1))), List.of("7", cm(markMm(7)))));
        Sheet sheet =
                new Sheet(
                        "front-band",
                        "Buttonhole guide: front band",
                        Set.of(new Subject.Closure("front band")),
                        drawing(),
                        List.of(
                                new Block.Steps(List.of("Lay the guide on the right front.")),
                                new Block.Rows(table)),
                        Sheet.Size.HOME);
        return List.of(sheet);
    }

    private List<Assumed> assumed() {
        return List.of(new Assumed("laps", "right over left", "usual for women; set `laps`"));
    }

    private List<Open> open() {
        return List.of(
                new Open(
                        "shrinkage along",
                        "how much longer to cut",
                        "wash a square marked 50 cm by 50 cm"));
    }

    private Figures figures() {
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

    /** As the only topic of a project. */
    Map<String, Outcome<?>> outcomes() {
        return Map.of(
                worksheet().name(),
                new Outcome<>(Optional.empty(), Optional.of(worksheet()), List.of()));
    }
}
