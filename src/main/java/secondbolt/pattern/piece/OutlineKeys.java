package secondbolt.pattern.piece;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.Rule;
import secondbolt.file.form.Forms;
import secondbolt.file.form.ListForm;
import secondbolt.file.form.MapForm;
import secondbolt.file.source.Place;
import secondbolt.file.value.AcrossAlong;
import secondbolt.file.value.LengthRange;
import secondbolt.file.value.Trouble;
import secondbolt.measure.Length;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Point;

/** How the outline of a piece is written: edge after edge from a start, back to the start. */
final class OutlineKeys {
    private static final int MOST_EDGES = 60;
    private static final int MOST_POINTS = 60;

    /** Closer together, two points have no direction from one to the other that is hers. */
    private static final double LEAST_APART_MM = 0.1;

    private static final Form<AcrossAlong<Length>> POINT =
            ListForm.acrossAlong(Forms.length(LengthRange.of("-5 m", "5 m")));
    private static final Key<AcrossAlong<Length>> START =
            Key.optional("start", POINT, "Where the outline starts; its first line.", "[0, 9]");
    private static final Key<String> EDGE =
            Key.optional("edge", Forms.text(60), "The name of an edge.", "neckline");
    private static final Key<Optional<AcrossAlong<Length>>> TO =
            Key.optional(
                    "to",
                    Forms.either(
                            Forms.map(POINT, Optional::of),
                            Forms.word("start", Optional.<AcrossAlong<Length>>empty())),
                    "Where the edge ends; the last one ends at the start.",
                    "[7.5, 0]");
    private static final Key<List<AcrossAlong<Length>>> THROUGH =
            Key.optional(
                    "through",
                    ListForm.of("points on the edge", POINT, 1, MOST_POINTS),
                    "Points it passes on a smooth curve; a straight edge has none.",
                    "[[3, 8.4], [6, 4.6]]");

    /** The whole outline. */
    static final Form<List<NamedEdge>> FORM =
            Forms.map(
                    Forms.untroubled(
                            Forms.checked(
                                    ListForm.of(
                                            "a start and its edges",
                                            MapForm.of(
                                                            "a line of an outline",
                                                            List.of(START, EDGE, TO, THROUGH),
                                                            OutlineKeys::line)
                                                    .with(
                                                            Rule.one("start", "edge"),
                                                            Rule.when(
                                                                    Rule.has("edge"),
                                                                    Rule.has("to"))),
                                            4,
                                            MOST_EDGES),
                                    OutlineKeys::isWhole,
                                    "{start: [across, along]} first, then three edges or more with names of"
                                            + " their own, {edge: name, to: [across, along]}, the last one"
                                            + " `to: start`"),
                            OutlineKeys::meeting),
                    OutlineKeys::edges);

    private OutlineKeys() {}

    /**
     * A line of an outline: a start, or an edge.
     *
     * @param place where it stands
     * @param start where it starts, on the first line
     * @param edge the edge's name, on the others
     * @param to where the edge ends; nothing for the start
     * @param through points it passes
     */
    record Line(
            Place place,
            Optional<Point> start,
            Optional<String> edge,
            Optional<Point> to,
            List<Point> through) {
        /** All its points behind the one it begins at, in order. */
        List<Point> onwards(Point begin) {
            List<Point> points = new ArrayList<>(through);
            points.add(to.orElse(begin));
            return points;
        }
    }

    private static Optional<Line> line(Fields fields) {
        boolean start = fields.get(START).isPresent();
        boolean edge = fields.get(EDGE).isPresent() && fields.get(TO).isPresent();
        if (start == edge || (start && fields.get(EDGE).isPresent())) {
            fields.tell(
                    fields.place(),
                    "neither a start nor an edge",
                    "{start: [0, 9]}, or {edge: name, to: [7.5, 0]}");
            return Optional.empty();
        }
        return Optional.of(
                new Line(
                        fields.place(),
                        fields.get(START).map(OutlineKeys::point),
                        fields.get(EDGE),
                        fields.get(TO).flatMap(to -> to).map(OutlineKeys::point),
                        fields.get(THROUGH).orElse(List.of()).stream()
                                .map(OutlineKeys::point)
                                .toList()));
    }

    static Point point(AcrossAlong<Length> written) {
        return new Point(written.across().millimetres(), written.along().millimetres());
    }

    private static boolean isWhole(List<Line> lines) {
        Set<String> names = new LinkedHashSet<>();
        boolean whole = lines.get(0).start().isPresent();
        for (int i = 1; i < lines.size(); i++) {
            Line line = lines.get(i);
            boolean last = i == lines.size() - 1;
            Point start = lines.get(0).start().orElse(Point.ORIGIN);
            boolean closes = line.to().isEmpty() || line.to().get().equals(start);
            whole &= line.edge().map(names::add).orElse(false) && closes == last;
        }
        return whole;
    }

    /** An edge that stands still, or turns back between points that no tape tells apart. */
    private static Optional<Trouble> meeting(List<Line> lines) {
        Point start = lines.get(0).start().orElseThrow();
        Point at = start;
        for (Line line : lines.subList(1, lines.size())) {
            for (Point next : line.onwards(start)) {
                if (at.distanceMm(next) < LEAST_APART_MM) {
                    return Optional.of(meeting(line));
                }
                at = next;
            }
        }
        return Optional.empty();
    }

    private static Trouble meeting(Line line) {
        String name = "`" + line.edge().orElseThrow() + "`";
        return line.through().isEmpty()
                ? new Trouble(
                        line.place(),
                        "the edge " + name + ", which ends where it begins",
                        "an end 0.1 mm away at least, or no such edge")
                : new Trouble(
                        line.place(),
                        "the edge " + name + " with the same point twice in a row",
                        "each point once, in order along the edge, 0.1 mm apart at least");
    }

    private static List<NamedEdge> edges(List<Line> lines) {
        List<NamedEdge> edges = new ArrayList<>();
        Point start = lines.get(0).start().orElseThrow();
        Point at = start;
        for (Line line : lines.subList(1, lines.size())) {
            List<Point> points = new ArrayList<>(List.of(at));
            points.addAll(line.onwards(start));
            EdgeLine edge =
                    points.size() == 2
                            ? EdgeLine.straight(points.get(0), points.get(1))
                            : EdgeLine.through(points);
            edges.add(new NamedEdge(line.edge().orElseThrow(), edge));
            at = edge.end();
        }
        return edges;
    }
}
