package secondbolt.fuzz;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.lay.kept.LayDesk;
import secondbolt.measure.Tape;
import secondbolt.project.PlainYaml;
import secondbolt.project.ProjectSection;
import secondbolt.project.Topics;

/**
 * Every value at the least and the most that its key takes on either tape, left out, open, and
 * naming each thing that the project names; every key that is not written with what its reference
 * shows; every item of a list twice, and left out.
 */
final class ValueChanges {
    private static final Form<?> ROOT = ProjectSection.form(Topics.all(LayDesk.inMemory()));

    /** As the words of a form tell them: {@code a length from 1 mm to 5 m}. */
    private static final Pattern RANGE =
            Pattern.compile(
                    "(-?[\\d./]+(?: \\d+/\\d+)?(?: (?:mm|cm|m|in|yd|g|kg|oz|%))?) to"
                            + " (-?[\\d./]+(?: \\d+/\\d+)?(?: (?:mm|cm|m|in|yd|g/m2|oz/yd2|g|kg|%))?)");

    private final Map<String, Object> file;
    private final List<Change> changes = new ArrayList<>();

    private ValueChanges(Map<String, Object> file) {
        this.file = file;
    }

    /** The limits of all keys that are written, and the examples of those that are not. */
    static List<Change> limits(Map<String, Object> project) {
        ValueChanges all = new ValueChanges(project);
        all.keys(List.of(), ROOT.keys());
        return all.changes;
    }

    private void keys(List<Object> path, List<Key<?>> keys) {
        Object value = Tree.at(file, path);
        if (value instanceof List<?> items) {
            for (int i = 0; i < items.size(); i++) {
                keys(Tree.longer(path, i), keys);
            }
        } else if (value instanceof Map<?, ?>) {
            Map<String, Object> written = Tree.mapping(value);
            written.keySet().forEach(name -> written(Tree.longer(path, name), name, keys));
            if (keys.stream().anyMatch(key -> written.containsKey(key.name()))) {
                keys.stream()
                        .filter(key -> !written.containsKey(key.name()))
                        .forEach(key -> example(path, key));
            }
        }
    }

    private void written(List<Object> path, String name, List<Key<?>> keys) {
        keys.stream()
                .filter(key -> key.name().equals(name))
                .findFirst()
                .ifPresentOrElse(key -> limits(path, key), () -> keys(path, keys));
    }

    private void limits(List<Object> path, Key<?> key) {
        Set<String> ends = new LinkedHashSet<>();
        for (Tape tape : Tape.values()) {
            Matcher range = RANGE.matcher(key.form().words(tape));
            while (range.find()) {
                ends.add(range.group(1));
                ends.add(range.group(2));
            }
        }
        scalars(path, ends);
        for (String odd : List.of("none", "unknown", "[]", "{}", "''")) {
            put(path, odd);
        }
        changes.add(
                new Change(
                        path + " left out",
                        of -> {
                            Object parent = Tree.at(of, path.subList(0, path.size() - 1));
                            Tree.mapping(parent).remove(key.name());
                        }));
        keys(path, key.form().keys());
    }

    private void example(List<Object> path, Key<?> key) {
        put(Tree.longer(path, key.name()), key.example());
    }

    /** Each of these in the place of each value that is not a mapping or a list itself. */
    private void scalars(List<Object> below, Set<String> texts) {
        Tree.walk(
                Tree.at(file, below),
                below,
                (path, value) -> {
                    if (value instanceof String) {
                        texts.forEach(text -> put(path, text));
                    }
                });
    }

    private void put(List<Object> path, String text) {
        changes.add(
                new Change(path + " = " + text, of -> Tree.put(of, path, PlainYaml.load(text))));
    }

    /** Every value naming everything that the project names, and sizes that no cloth has. */
    static List<Change> references(Map<String, Object> project) {
        return references(project, project);
    }

    /** The same of the values of a plan beside the project. */
    static List<Change> references(Map<String, Object> file, Map<String, Object> project) {
        ValueChanges all = new ValueChanges(file);
        all.scalars(List.of(), names(project));
        return all.changes;
    }

    private static Set<String> names(Map<String, Object> project) {
        Set<String> names =
                new LinkedHashSet<>(
                        List.of("unknown", "none", "0", "1 mm", "0.01", "500", "20 m", "-1"));
        for (String key : List.of("cloth", "hems", "closures", "designs")) {
            if (project.get(key) instanceof Map<?, ?> map) {
                map.keySet().forEach(name -> names.add((String) name));
            }
        }
        Tree.inner(Tree.inner(project, "pattern"), "pieces")
                .forEach(
                        (piece, written) -> {
                            names.add(piece);
                            edges(written).forEach(edge -> names.add(piece + "." + edge));
                        });
        return names;
    }

    private static Set<String> edges(Object piece) {
        Set<String> edges = new LinkedHashSet<>();
        Tree.walk(
                piece,
                List.of(),
                (path, value) -> {
                    if (path.size() == 3 && path.get(2).equals("edge")) {
                        edges.add((String) value);
                    }
                });
        return edges;
    }

    /** Every item of every list twice, and left out. */
    static List<Change> items(Map<String, Object> project) {
        ValueChanges all = new ValueChanges(project);
        Tree.walk(
                project,
                List.of(),
                (path, value) -> {
                    if (value instanceof List<?> items) {
                        for (int i = 0; i < items.size(); i++) {
                            all.item(path, i);
                        }
                    }
                });
        return all.changes;
    }

    private void item(List<Object> path, int number) {
        changes.add(
                new Change(
                        path + " " + number + " left out",
                        of -> Tree.list(Tree.at(of, path)).remove(number)));
        changes.add(
                new Change(
                        path + " " + number + " twice",
                        of -> {
                            List<Object> items = Tree.list(Tree.at(of, path));
                            items.add(number, items.get(number));
                        }));
    }
}
