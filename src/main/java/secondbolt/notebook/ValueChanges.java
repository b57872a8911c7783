package secondbolt.notebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import secondbolt.measure.Counted;

/** Compares two trees of values and tells each difference with its path. */
final class ValueChanges {
    private static final String STEP = " › ";

    /** By these an item of a list is known again when others come before it. */
    private static final List<String> IDENTITIES = List.of("number", "name", "what", "text");

    /** A group with more values than this is counted, not printed. */
    private static final int MOST_IN_FULL = 12;

    private final List<String> lines = new ArrayList<>();

    List<String> of(Object before, Object now) {
        compare("", before, now);
        return List.copyOf(lines);
    }

    private void compare(String path, Object before, Object now) {
        if (before instanceof Map<?, ?> old && now instanceof Map<?, ?> changed) {
            compareKeys(path, old, changed);
        } else if (before instanceof List<?> old && now instanceof List<?> changed) {
            compareItems(path, old, changed);
        } else if (!Changes.text(before).equals(Changes.text(now))) {
            lines.add(path + ": " + words(before) + " -> " + words(now));
        }
    }

    private void compareKeys(String path, Map<?, ?> before, Map<?, ?> now) {
        for (Map.Entry<?, ?> entry : now.entrySet()) {
            String step = step(path, String.valueOf(entry.getKey()));
            if (before.containsKey(entry.getKey())) {
                compare(step, before.get(entry.getKey()), entry.getValue());
            } else {
                lines.add("new: " + step + ": " + words(entry.getValue()));
            }
        }
        for (Map.Entry<?, ?> entry : before.entrySet()) {
            if (!now.containsKey(entry.getKey())) {
                String step = step(path, String.valueOf(entry.getKey()));
                lines.add("no longer: " + step + ": " + words(entry.getValue()));
            }
        }
    }

    private void compareItems(String path, List<?> before, List<?> now) {
        Optional<String> identity =
                IDENTITIES.stream()
                        .filter(key -> tellsApart(before, key) && tellsApart(now, key))
                        .findFirst();
        if (isFlat(before) && isFlat(now)) {
            compare(path, words(before), words(now));
        } else if (identity.isPresent()) {
            compareKeys(path, named(before, identity.get()), named(now, identity.get()));
        } else if (!before.equals(now) && isOutline(before) && isOutline(now)) {
            lines.add(path + ": changed");
        } else if (!isOutline(before) || !isOutline(now)) {
            compareKeys(path, numbered(before), numbered(now));
        }
    }

    private static boolean tellsApart(List<?> items, String key) {
        long named =
                items.stream()
                        .filter(item -> item instanceof Map<?, ?> map && map.get(key) != null)
                        .map(item -> Changes.text(((Map<?, ?>) item).get(key)))
                        .distinct()
                        .count();
        return named == items.size();
    }

    private static Map<String, Object> named(List<?> items, String key) {
        Map<String, Object> named = new LinkedHashMap<>();
        for (Object item : items) {
            Map<Object, Object> rest = new LinkedHashMap<>((Map<?, ?>) item);
            named.put(Changes.text(rest.remove(key)), rest);
        }
        return named;
    }

    private static Map<String, Object> numbered(List<?> items) {
        Map<String, Object> numbered = new LinkedHashMap<>();
        for (int i = 0; i < items.size(); i++) {
            numbered.put(String.valueOf(i + 1), items.get(i));
        }
        return numbered;
    }

    private static boolean isFlat(List<?> items) {
        return items.stream().noneMatch(item -> item instanceof Map || item instanceof List);
    }

    private static boolean isOutline(List<?> items) {
        return items.stream().allMatch(item -> item instanceof List<?> point && isFlat(point));
    }

    private static String step(String path, String key) {
        return path.isEmpty() ? key : path + STEP + key;
    }

    /** A value in full with all that is inside it; how many there are, where they are too many. */
    private static String words(Object value) {
        if (value instanceof Map<?, ?> map) {
            return map.isEmpty()
                    ? "nothing"
                    : map.entrySet().stream()
                            .map(e -> e.getKey() + " " + inside(e.getValue(), count(map)))
                            .collect(Collectors.joining(", "));
        }
        if (value instanceof List<?> list) {
            return isFlat(list) || count(list) <= MOST_IN_FULL
                    ? list.stream()
                            .map(item -> inside(item, 0))
                            .collect(Collectors.joining(", ", "[", "]"))
                    : Counted.of(list.size(), "item");
        }
        return value == null ? "open" : Changes.text(value);
    }

    /** A value inside another that holds so many in all. */
    private static String inside(Object value, int all) {
        boolean holdsOthers = value instanceof Map || value instanceof List;
        if (holdsOthers && all > MOST_IN_FULL) {
            return "(" + count(value) + (count(value) == 1 ? " value)" : " values)");
        }
        return value instanceof Map ? "(" + words(value) + ")" : words(value);
    }

    private static int count(Object value) {
        if (value instanceof Map<?, ?> map) {
            return map.values().stream().mapToInt(ValueChanges::count).sum();
        }
        return value instanceof List<?> list
                ? list.stream().mapToInt(ValueChanges::count).sum()
                : 1;
    }
}
