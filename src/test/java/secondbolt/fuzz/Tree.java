package secondbolt.fuzz;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import secondbolt.project.PlainYaml;

/** A project file as plain mappings and lists, and paths of names and numbers into it. */
final class Tree {
    private Tree() {}

    static Map<String, Object> mapping(Object value) {
        return PlainYaml.mapping(value);
    }

    @SuppressWarnings("unchecked") // of scalars that are all text
    static List<Object> list(Object value) {
        return (List<Object>) value;
    }

    /** What is read from a text: a mapping of its own where there is none yet. */
    static Map<String, Object> inner(Map<String, Object> of, String key) {
        if (!(of.get(key) instanceof Map<?, ?>)) {
            of.put(key, new LinkedHashMap<String, Object>());
        }
        return mapping(of.get(key));
    }

    /** The same with nothing in it twice, as YAML would write by a reference. */
    static Object copy(Object tree) {
        if (tree instanceof Map<?, ?>) {
            Map<String, Object> copy = new LinkedHashMap<>();
            mapping(tree).forEach((key, value) -> copy.put(key, copy(value)));
            return copy;
        }
        return tree instanceof List<?> items
                ? new ArrayList<Object>(items.stream().map(Tree::copy).toList())
                : tree;
    }

    static Object at(Object tree, List<Object> path) {
        Object now = tree;
        for (Object step : path) {
            now = step instanceof Integer number ? list(now).get(number) : mapping(now).get(step);
        }
        return now;
    }

    static void put(Object tree, List<Object> path, Object value) {
        Object parent = at(tree, path.subList(0, path.size() - 1));
        Object last = path.get(path.size() - 1);
        if (last instanceof Integer number) {
            list(parent).set(number, value);
        } else {
            mapping(parent).put((String) last, value);
        }
    }

    /** Visits everything below a path, the outer before the inner. */
    static void walk(Object value, List<Object> path, BiConsumer<List<Object>, Object> visit) {
        visit.accept(path, value);
        if (value instanceof Map<?, ?> map) {
            map.forEach((key, inner) -> walk(inner, longer(path, key), visit));
        } else if (value instanceof List<?> items) {
            for (int i = 0; i < items.size(); i++) {
                walk(items.get(i), longer(path, i), visit);
            }
        }
    }

    static List<Object> longer(List<Object> path, Object step) {
        List<Object> more = new ArrayList<>(path);
        more.add(step);
        return more;
    }
}
