package secondbolt.pattern.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.form.Forms;
import secondbolt.file.form.ListForm;
import secondbolt.file.form.MapForm;
import secondbolt.file.form.NamedForm;
import secondbolt.file.svg.SvgDrawing;
import secondbolt.file.svg.TracedEdge;
import secondbolt.file.value.AcrossAlong;
import secondbolt.file.value.LengthRange;
import secondbolt.measure.Length;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;

/** How the shape of a piece is written, in each of the ways there are. */
public final class ShapeKeys {
    private static final LengthRange SIDE = LengthRange.of("1 mm", "5 m");
    private static final Form<Length> LENGTH = Forms.length(SIDE);

    static final Key<List<NamedEdge>> OUTLINE =
            Key.optional(
                    "outline",
                    OutlineKeys.FORM,
                    "Its sewing line, edge after edge; positions are [across, along] from the left"
                            + " and the top.",
                    "[{start: [0, 0]}, {edge: top, to: [20, 0]}, {edge: side, to: [20, 60]}, {edge:"
                            + " hem, to: [0, 60]}, {edge: centre, to: start}]");
    static final Key<AcrossAlong<Length>> RECTANGLE =
            Key.optional(
                    "rectangle",
                    ListForm.acrossAlong(LENGTH),
                    "A rectangle; its edges are top, right, bottom, left.",
                    "[6, 90]");

    private static final Key<Length> TOP =
            Key.required("top", LENGTH, "How wide it is at the waist.", "30");
    private static final Key<Length> BOTTOM =
            Key.required("bottom", LENGTH, "How wide it is at the hem.", "44");
    private static final Key<Length> ALONG =
            Key.required("along", LENGTH, "From waist to hem, down the middle.", "60");
    static final Key<List<NamedEdge>> PANEL =
            Key.optional(
                    "panel",
                    MapForm.of("a panel", List.of(TOP, BOTTOM, ALONG), ShapeKeys::panel),
                    "A straight panel, wider below than above or not; its edges are waist, right,"
                            + " hem, left.",
                    "{top: 30, bottom: 44, along: 60}");

    private static final Key<Length> INNER =
            Key.required("inner", LENGTH, "The radius of the waist.", "12.4");
    private static final Key<Length> OUTER =
            Key.required("outer", LENGTH, "The radius of the hem.", "77");
    private static final Key<Integer> TURN =
            Key.required(
                    "turn",
                    Forms.whole(
                            5,
                            355,
                            "; a full circle is cut as two halves, `cut: 2` with `turn: 180`, or"
                                    + " four quarters, `cut: 4` with `turn: 90`, and joined at left"
                                    + " and right, one of the joins left open at the top to get"
                                    + " into it"),
                    "How far round one piece goes, in degrees.",
                    "180");
    static final Key<List<NamedEdge>> RING =
            Key.optional(
                    "ring",
                    MapForm.of("a ring", List.of(INNER, OUTER, TURN), ShapeKeys::ring),
                    "A part of a circle skirt; its edges are waist, right, hem, left.",
                    "{inner: 12.4, outer: 77, turn: 180}");

    static final Key<AcrossAlong<Length>> BOX =
            Key.optional(
                    "box",
                    ListForm.acrossAlong(LENGTH),
                    "How wide and how long it is, for a piece known by tape only; its `edges` are"
                            + " then measured. It is not printed full size.",
                    "[31, 74]");
    static final Key<Map<String, Length>> EDGES =
            Key.optional(
                    "edges",
                    NamedForm.of("edge", LENGTH),
                    "The edges of a `box`, measured by tape along the sewing line.",
                    "{side: 47.1, centre front: 65}");

    static final Key<List<NamedEdge>> SVG =
            Key.optional(
                    "svg",
                    Forms.file(
                            "the path of an SVG drawing at real size, its edges named by id or"
                                    + " title",
                            (file, mistakes) ->
                                    SvgDrawing.read(file.name(), file.text(), mistakes)
                                            .map(ShapeKeys::named)),
                    "A traced drawing at real size, in the project's folder.",
                    "pieces/pocket.svg");

    static final List<Key<?>> ALL = List.of(OUTLINE, RECTANGLE, PANEL, RING, SVG, BOX, EDGES);

    private ShapeKeys() {}

    private static List<NamedEdge> named(List<TracedEdge> edges) {
        return edges.stream().map(e -> new NamedEdge(e.name(), e.line())).toList();
    }

    /**
     * The one shape that was written; a mistake if there is none, or more than one.
     *
     * @param crosses which edges a line crosses, where the maker says
     */
    static Optional<PieceShape> shape(Fields fields, Map<String, List<String>> crosses) {
        List<PieceShape> shapes = new ArrayList<>();
        fields.get(OUTLINE).ifPresent(edges -> shapes.add(new PieceShape.Drawn(edges)));
        fields.get(PANEL).ifPresent(edges -> shapes.add(new PieceShape.Drawn(edges)));
        fields.get(RING).ifPresent(edges -> shapes.add(new PieceShape.Drawn(edges)));
        fields.get(SVG).ifPresent(edges -> shapes.add(new PieceShape.Drawn(edges)));
        fields.get(RECTANGLE).ifPresent(sides -> shapes.add(rectangle(sides)));
        fields.get(BOX)
                .ifPresent(
                        sides ->
                                shapes.add(
                                        PieceShape.Taped.of(
                                                sides,
                                                fields.get(EDGES).orElse(Map.of()),
                                                crosses)));
        if (shapes.size() != 1) {
            fields.tell(
                    fields.place(),
                    shapes.isEmpty() ? "a piece without a shape" : "a piece with two shapes",
                    "one of `outline`, `rectangle`, `panel`, `ring`, `svg` or `box`");
            return Optional.empty();
        }
        if (fields.get(EDGES).isPresent() && fields.get(BOX).isEmpty()) {
            fields.tell(EDGES, "`edges` for a piece that is drawn", "`edges` with `box` only");
            return Optional.empty();
        }
        return isSimple(shapes.get(0), fields) ? Optional.of(shapes.get(0)) : Optional.empty();
    }

    private static boolean isSimple(PieceShape shape, Fields fields) {
        Optional<Point> crossing =
                shape.asDrawn().flatMap(drawn -> new Outline(points(drawn)).crossing());
        crossing.ifPresent(
                at ->
                        fields.tell(
                                OUTLINE,
                                String.format(
                                        Locale.ROOT,
                                        "an outline that crosses itself near [%.1f cm, %.1f cm]",
                                        at.xMm() / 10,
                                        at.yMm() / 10),
                                "points in order round the piece"));
        return crossing.isEmpty();
    }

    /** The corners of an outline of straight lines, within a twentieth of a millimetre. */
    public static List<Point> points(PieceShape.Drawn drawn) {
        List<Point> points = new ArrayList<>();
        for (NamedEdge edge : drawn.edges()) {
            List<Point> line = edge.line().flattened(0.05);
            points.addAll(line.subList(0, line.size() - 1));
        }
        return points;
    }

    private static PieceShape rectangle(AcrossAlong<Length> sides) {
        double w = sides.across().millimetres();
        double h = sides.along().millimetres();
        List<Point> corners =
                List.of(new Point(0, 0), new Point(w, 0), new Point(w, h), new Point(0, h));
        return new PieceShape.Drawn(straight(List.of("top", "right", "bottom", "left"), corners));
    }

    private static Optional<List<NamedEdge>> panel(Fields fields) {
        double top = fields.require(TOP).millimetres();
        double bottom = fields.require(BOTTOM).millimetres();
        double along = fields.require(ALONG).millimetres();
        double wide = Math.max(top, bottom);
        List<Point> corners =
                List.of(
                        new Point((wide - top) / 2, 0),
                        new Point((wide + top) / 2, 0),
                        new Point((wide + bottom) / 2, along),
                        new Point((wide - bottom) / 2, along));
        return Optional.of(straight(List.of("waist", "right", "hem", "left"), corners));
    }

    private static List<NamedEdge> straight(List<String> names, List<Point> corners) {
        List<NamedEdge> edges = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            Point to = corners.get((i + 1) % corners.size());
            edges.add(new NamedEdge(names.get(i), EdgeLine.straight(corners.get(i), to)));
        }
        return edges;
    }

    private static Optional<List<NamedEdge>> ring(Fields fields) {
        double inner = fields.require(INNER).millimetres();
        double outer = fields.require(OUTER).millimetres();
        if (inner >= outer) {
            fields.tell(INNER, "`inner` that is not smaller than `outer`", "a smaller radius");
            return Optional.empty();
        }
        // The ring opens downward, its middle along the grain; across grows to the right.
        double half = StrictMath.toRadians(fields.require(TURN)) / 2;
        double down = Math.PI / 2;
        Point centre = Point.ORIGIN;
        EdgeLine waist = EdgeLine.arc(centre, inner, down + half, -2 * half);
        EdgeLine hem = EdgeLine.arc(centre, outer, down - half, 2 * half);
        return Optional.of(
                List.of(
                        new NamedEdge("waist", waist),
                        new NamedEdge("right", EdgeLine.straight(waist.end(), hem.start())),
                        new NamedEdge("hem", hem),
                        new NamedEdge("left", EdgeLine.straight(hem.end(), waist.start()))));
    }
}
