package secondbolt.fuzz;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/**
 * Outlines as they are mistyped, or drawn by nobody who sews: points doubled or left out, edges of
 * no or hardly any length, spikes, loops, curves through a point twice, pieces turned, mirrored,
 * run round the other way, as small as a crumb and as large as a room.
 */
final class OutlineChanges {
    private static final List<Double> LENGTHS = List.of(0.0001, 0.01, 0.05, 0.1, 0.5);
    private static final List<Double> SCALES = List.of(0.0, 0.001, 0.01, 0.05, 0.1, 0.3, 5.0, 15.0);

    private final List<Object> piece;
    private final List<Object> outline;
    private final List<Change> changes = new ArrayList<>();

    private OutlineChanges(List<Object> piece, List<Object> outline) {
        this.piece = piece;
        this.outline = outline;
    }

    /** All changes of the outlines of a project. */
    static List<Change> of(Map<String, Object> project) {
        List<Change> all = new ArrayList<>();
        Tree.walk(
                project,
                List.of(),
                (path, value) -> {
                    if (value instanceof Map<?, ?> map
                            && map.get("outline") instanceof List<?> o
                            && o.stream().allMatch(line -> line instanceof Map<?, ?>)) {
                        OutlineChanges of = new OutlineChanges(path, Tree.list(o));
                        of.whole();
                        of.edges();
                        all.addAll(of.changes);
                    }
                });
        return all;
    }

    private void add(String what, Consumer<List<Object>> change) {
        changes.add(
                new Change(
                        piece + " " + what,
                        file ->
                                change.accept(
                                        Tree.list(Tree.at(file, Tree.longer(piece, "outline"))))));
    }

    private void whole() {
        for (double by : SCALES) {
            points("times " + by, at -> new Corner(at.x() * by, at.y() * by));
            points("across times " + by, at -> new Corner(at.x() * by, at.y()));
            points("along times " + by, at -> new Corner(at.x(), at.y() * by));
        }
        points("mirrored", at -> new Corner(-at.x(), at.y()));
        points(
                "turned",
                at -> new Corner(at.x() * 0.8 - at.y() * 0.6, at.x() * 0.6 + at.y() * 0.8));
        points("far off", at -> at.moved(400, -400));
        add("the other way round", OutlineChanges::turnBack);
        add("closed twice", lines -> lines.add(edge("closing", "start")));
    }

    private void points(String what, UnaryOperator<Corner> move) {
        add(
                what,
                lines ->
                        Tree.walk(
                                List.copyOf(lines),
                                List.of(),
                                (path, value) ->
                                        Corner.of(value)
                                                .ifPresent(
                                                        at ->
                                                                Tree.put(
                                                                        lines,
                                                                        path,
                                                                        move.apply(at)
                                                                                .written()))));
    }

    private static void turnBack(List<Object> lines) {
        List<Object> back = new ArrayList<>(List.of(lines.get(0)));
        for (int i = lines.size() - 1; i > 0; i--) {
            Map<String, Object> line = Tree.mapping(lines.get(i));
            line.put("to", i == 1 ? "start" : Tree.mapping(lines.get(i - 1)).get("to"));
            if (line.get("through") instanceof List<?> through) {
                Collections.reverse(through);
            }
            back.add(line);
        }
        lines.clear();
        lines.addAll(back);
    }

    private void edges() {
        for (int i = 1; i < outline.size(); i++) {
            Optional<Corner> from = point(i - 1);
            Optional<Corner> to = point(i);
            if (from.isPresent() && to.isPresent()) {
                more(i, from.get(), to.get());
                curved(i, from.get(), to.get());
                ended(i, from.get(), to.get());
            }
        }
    }

    /** Where a line of the outline ends. */
    private Optional<Corner> point(int line) {
        Object to = Tree.mapping(outline.get(line)).get("to");
        Object start = Tree.mapping(outline.get(0)).get("start");
        return Corner.of(line == 0 || "start".equals(to) ? start : to);
    }

    private static Map<String, Object> edge(String name, Object to) {
        Map<String, Object> edge = new LinkedHashMap<>();
        edge.put("edge", name);
        edge.put("to", to);
        return edge;
    }

    /** Edges put before one: of hardly any length, on the line itself, out and back. */
    private void more(int line, Corner from, Corner to) {
        before(line, "no edge", from);
        LENGTHS.forEach(
                length ->
                        before(
                                line,
                                "an edge of " + length,
                                from.towards(to, from.share(to, length), 0)));
        before(line, "half of it", from.towards(to, 0.5, 0));
        before(line, "past its end", from.towards(to, 1.5, 0));
        before(line, "out and back", from.moved(-3, -7), from);
        before(line, "a thin spike", from.moved(-3, -7), from.moved(0.05, 0));
        add(line + " left out", lines -> lines.remove(line));
    }

    private void before(int line, String what, Corner... points) {
        add(
                line + " after " + what,
                lines -> {
                    for (int i = 0; i < points.length; i++) {
                        lines.add(line + i, edge("extra " + i, points[i].written()));
                    }
                });
    }

    private void curved(int line, Corner from, Corner to) {
        Corner middle = from.towards(to, 0.5, 0.02);
        through(line, "its ends", from, to);
        through(line, "its end", to);
        through(line, "a point twice", middle, middle);
        through(line, "a point nearly twice", middle, middle.moved(0.02, 0));
        through(line, "its middle", from.towards(to, 0.5, 0));
        through(line, "far out", from.towards(to, 0.5, 1));
        through(line, "far in", from.towards(to, 0.5, -0.8));
        through(line, "back and forth", from.towards(to, 0.7, 0), from.towards(to, 0.3, 0));
        through(line, "a loop", from.towards(to, 0.7, 0.1), from.towards(to, 0.3, 0.1));
    }

    private void through(int line, String what, Corner... points) {
        changed(
                line,
                "through " + what,
                (file, edge) ->
                        edge.put(
                                "through",
                                new ArrayList<>(
                                        List.of(points).stream().map(Corner::written).toList())));
    }

    private void ended(int line, Corner from, Corner to) {
        Object name = Tree.mapping(outline.get(line)).get("edge");
        changed(line, "without length", (file, edge) -> edge.put("to", from.written()));
        changed(
                line,
                "mirrored",
                (file, edge) -> edge.put("to", new Corner(-to.x(), to.y()).written()));
        changed(line, "moved in", (file, edge) -> edge.put("to", to.moved(-20, 10).written()));
        changed(line, "moved out", (file, edge) -> edge.put("to", to.moved(20, -10).written()));
        changed(line, "on the fold", (file, edge) -> file.put("fold", name));
        changed(
                line,
                "on the fold, bent",
                (file, edge) -> {
                    file.put("fold", name);
                    edge.put("through", List.of(from.towards(to, 0.5, 0.03).written()));
                });
    }

    /** A change of an edge, and of its piece. */
    private void changed(
            int line, String what, BiConsumer<Map<String, Object>, Map<String, Object>> change) {
        changes.add(
                new Change(
                        piece + " " + line + " " + what,
                        file -> {
                            Map<String, Object> of = Tree.mapping(Tree.at(file, piece));
                            change.accept(of, Tree.mapping(Tree.list(of.get("outline")).get(line)));
                        }));
    }
}
