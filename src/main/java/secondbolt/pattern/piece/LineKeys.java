package secondbolt.pattern.piece;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.Spelling;
import secondbolt.file.form.Forms;
import secondbolt.file.form.ListForm;
import secondbolt.file.form.MapForm;
import secondbolt.file.form.NamedForm;
import secondbolt.file.value.LengthRange;
import secondbolt.file.value.Trouble;
import secondbolt.measure.Length;

/** How the lengthen and shorten lines of a piece are written. */
final class LineKeys {
    private static final Form<Length> FROM_TOP = Forms.length(LengthRange.of("1 mm", "5 m"));
    private static final Key<Length> AT =
            Key.required("at", FROM_TOP, "How far it lies from the piece's top.", "42");
    private static final Key<List<String>> CROSSES =
            Key.required(
                    "crosses",
                    Forms.either(
                            ListForm.of("edges", Forms.nameOf(60), 0, 60),
                            Forms.none(List.<String>of())),
                    "For a piece known by tape, the edges of the `box` that the line crosses, which"
                            + " change with it; all its others stay. `none` if it crosses none that is"
                            + " taped. A drawn piece shows it.",
                    "[side, centre front]");

    static final Key<Map<String, Line>> LINES =
            Key.optional(
                    "lines",
                    NamedForm.of(
                            "line",
                            Forms.either(
                                    Forms.map(FROM_TOP, at -> new Line(at, Optional.empty())),
                                    MapForm.of("a line", List.of(AT, CROSSES), LineKeys::line))),
                    "Its lengthen and shorten lines: how far each lies from the piece's top; for a"
                            + " `box` also which edges it crosses.",
                    "{body: 42}");

    private LineKeys() {}

    /**
     * A line.
     *
     * @param at how far from the piece's top
     * @param crosses the edges it crosses, if told
     */
    record Line(Length at, Optional<List<String>> crosses) {}

    private static Optional<Line> line(Fields fields) {
        return Optional.of(new Line(fields.require(AT), Optional.of(fields.require(CROSSES))));
    }

    static Map<String, Length> places(Fields fields) {
        Map<String, Length> places = new LinkedHashMap<>();
        fields.get(LINES).orElse(Map.of()).forEach((name, line) -> places.put(name, line.at()));
        return places;
    }

    /** Which edges the lines cross, where that is told. */
    static Map<String, List<String>> crosses(Fields fields) {
        Map<String, List<String>> told = new LinkedHashMap<>();
        fields.get(LINES)
                .orElse(Map.of())
                .forEach((name, line) -> line.crosses().ifPresent(edges -> told.put(name, edges)));
        return told;
    }

    /** Whether every line lies inside the piece and crosses edges of a box only. */
    static boolean areRight(Fields fields, PieceShape shape) {
        return areInside(fields, alongMm(shape)) && crossEdges(fields, shape);
    }

    private static boolean crossEdges(Fields fields, PieceShape shape) {
        for (Map.Entry<String, List<String>> line : crosses(fields).entrySet()) {
            if (shape.asTaped().isEmpty()) {
                fields.tell(
                        LINES,
                        "`crosses` for a line of a piece that is drawn",
                        "`"
                                + line.getKey()
                                + "` with its length alone; the drawing shows what it crosses");
                return false;
            }
            for (String edge : line.getValue()) {
                if (!shape.edgeNames().contains(edge)) {
                    fields.tell(
                            new Trouble(
                                            fields.place(LINES),
                                            "`" + edge + "`, which is no taped edge of the piece",
                                            shape.edgeNames().isEmpty()
                                                    ? "an edge first measured under `edges`"
                                                    : "one of "
                                                            + Spelling.listed(shape.edgeNames()))
                                    .ofName(edge, shape.edgeNames()));
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean areInside(Fields fields, double alongMm) {
        for (Map.Entry<String, Length> line : places(fields).entrySet()) {
            if (line.getValue().millimetres() >= alongMm) {
                fields.tell(
                        LINES,
                        "a line `" + line.getKey() + "` below the piece's bottom",
                        "less than the piece is long");
                return false;
            }
        }
        return true;
    }

    private static double alongMm(PieceShape shape) {
        return shape.accept(
                new PieceShape.Visitor<Double>() {
                    @Override
                    public Double drawn(PieceShape.Drawn drawn) {
                        return drawn.box().heightMm();
                    }

                    @Override
                    public Double taped(PieceShape.Taped taped) {
                        return taped.along().millimetres();
                    }
                });
    }
}
