package secondbolt.fuzz;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import secondbolt.project.PlainYaml;

/**
 * What is written of pieces and their edges as far as it goes and beyond: hems deeper than the
 * piece, allowances wider, closures longer, alterations by more than there is, darts, notches,
 * marks and lines outside or on each other, folds anywhere, any number of copies, any rectangle.
 */
final class WrittenChanges {
    private static final List<String> OF_PIECE =
            List.of(
                    "cut: 0",
                    "cut: 99",
                    "cut: pair",
                    "cut: {main: 0}",
                    "cut: {lining: 1}",
                    "cut: {main: 1, lining: 2, interfacing: 1}",
                    "grain: any",
                    "grain: bias",
                    "grain: across",
                    "allowance: 0",
                    "allowance: 30",
                    "lines: {b: 0}",
                    "lines: {b: 1, c: 1, d: 1.001}",
                    "lines: {b: 500}",
                    "marks: [{what: x, at: [0, 0]}, {what: x, at: [0, 0]}]",
                    "marks: [{what: x, at: [-90, 300]}]");
    private static final List<String> SIDES =
            List.of("0.01, 0.01", "0.1, 0.1", "0.1, 500", "500, 0.1", "500, 500", "1, 1", "200, 2");
    private static final List<String> OF_EDGE =
            List.of(
                    "fold: E",
                    "darts: [{edge: E, at: 5, takes: 3, long: 8}]",
                    "darts: [{edge: E, at: 0, takes: 3, long: 8}]",
                    "darts: [{edge: E, at: 3, takes: 30, long: 100}]",
                    "darts: [{edge: E, at: 5, takes: 3, long: 8}, {edge: E, at: 6, takes: 3, long: 8}]",
                    "pleats: [{edge: E, at: 1, takes: 2}, {edge: E, at: 1.5, takes: 2}]",
                    "pleats: [{edge: E, at: 2, takes: 50}]",
                    "notches: [{edge: E, at: 0}, {edge: E, at: 0}]",
                    "notches: [{edge: E, at: 300}]",
                    "allowance: {E: 0}",
                    "allowance: {E: 0.01}",
                    "allowance: {E: 5}",
                    "allowance: {E: 20 cm}");
    private static final List<String> DEPTHS = List.of("0.1", "0.5", "3", "10", "30 cm");
    private static final List<String> TURNED = List.of("once", "twice", "narrow", "faced");
    private static final List<String> ENDS =
            List.of("first: 0.5, last: 0.5", "first: 1, last: 100", "first: 0, last: 0");
    private static final List<String> MOVES =
            List.of(
                    "0.1",
                    "1",
                    "20",
                    "200",
                    "2, from: 0, to: 0",
                    "2, from: 50, to: 10",
                    "2, from: 0, to: 500");

    private final List<Change> changes = new ArrayList<>();

    private WrittenChanges() {}

    /** All changes of what is written of a project's pieces. */
    static List<Change> of(Map<String, Object> project) {
        WrittenChanges all = new WrittenChanges();
        Object pieces = Tree.inner(Tree.inner(project, "pattern"), "pieces");
        Tree.mapping(pieces)
                .forEach(
                        (name, piece) -> {
                            if (piece instanceof Map<?, ?>) {
                                all.piece(name, Tree.mapping(piece));
                            }
                        });
        return all.changes;
    }

    private void piece(String name, Map<String, Object> piece) {
        OF_PIECE.forEach(text -> ofPiece(name, text));
        if (piece.get("rectangle") instanceof List<?>) {
            SIDES.forEach(sides -> ofPiece(name, "rectangle: [" + sides + "]"));
        }
        if (piece.get("lines") instanceof Map<?, ?> lines) {
            lines.keySet().forEach(line -> moved("shorten", "lengthen", String.valueOf(line)));
        }
        edges(piece).forEach(edge -> edge(name, edge));
    }

    private static List<String> edges(Map<String, Object> piece) {
        return piece.get("outline") instanceof List<?> lines
                ? lines.stream()
                        .filter(Map.class::isInstance)
                        .map(Tree::mapping)
                        .flatMap(WrittenChanges::name)
                        .toList()
                : List.of("left", "right", "top", "bottom", "hem", "waist");
    }

    private static Stream<String> name(Map<String, Object> line) {
        return Stream.ofNullable((String) line.get("edge"));
    }

    private void edge(String piece, String edge) {
        OF_EDGE.forEach(text -> ofPiece(piece, text.replace("E", quoted(edge))));
        moved("widen", "narrow", edge);
        String on = quoted(piece + "." + edge);
        for (String depth : DEPTHS) {
            for (String turned : TURNED) {
                ofProject(
                        "hems: {x: {on: [%s], depth: %s, turned: %s}}"
                                .formatted(on, depth, turned));
            }
        }
        for (String ends : ENDS) {
            for (String extension : List.of("0.5", "30")) {
                ofProject(
                        "closures: {x: {on: %s, extension: %s, buttons: 2, %s, button: {across: 15 mm, thick: 3 mm}, holes: level, laps: right over left}}"
                                .formatted(on, extension, ends));
            }
        }
    }

    private void moved(String one, String other, String what) {
        for (String by : MOVES) {
            for (String how : List.of(one, other)) {
                ofProject("alterations: [{%s: %s, by: %s}]".formatted(how, quoted(what), by));
            }
        }
    }

    private static String quoted(String name) {
        return "'" + name.replace("'", "''") + "'";
    }

    private void ofPiece(String piece, String text) {
        changes.add(
                new Change(
                        piece + " + " + text,
                        file ->
                                Tree.inner(Tree.inner(Tree.inner(file, "pattern"), "pieces"), piece)
                                        .putAll(read(text))));
    }

    private void ofProject(String text) {
        changes.add(new Change(text, file -> file.putAll(read(text))));
    }

    private static Map<String, Object> read(String text) {
        return Tree.mapping(PlainYaml.load("{" + text + "}"));
    }
}
