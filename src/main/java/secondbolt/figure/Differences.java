package secondbolt.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Compares two sets of figures. */
public final class Differences {
    private final List<Difference> found = new ArrayList<>();

    private Differences() {}

    /**
     * Every figure that differs, in the order of the new ones; what is gone comes behind what is
     * still there, group by group.
     */
    public static List<Difference> between(Figures before, Figures now) {
        Differences differences = new Differences();
        differences.compare(List.of(), named(before), named(now));
        return List.copyOf(differences.found);
    }

    /**
     * What a maker is told of, where it differs: each under what she calls it, in the order of the
     * new figures. What is only new or only gone is left out, for then a piece or a closure is.
     *
     * @param before by what she calls it
     * @param now likewise
     */
    public static List<Difference> ofTold(Map<String, Figure> before, Map<String, Figure> now) {
        List<Difference> differences = new ArrayList<>();
        now.forEach(
                (told, is) -> {
                    Figure old = before.getOrDefault(told, is);
                    if (!old.equals(is)) {
                        differences.add(
                                new Difference(List.of(told), Optional.of(old), Optional.of(is)));
                    }
                });
        return differences;
    }

    private static Map<String, Figure> named(Figures figures) {
        Map<String, Figure> named = new LinkedHashMap<>();
        figures.entries().forEach((key, entry) -> named.put(key, entry.figure()));
        return named;
    }

    private void compare(List<String> path, Map<String, Figure> before, Map<String, Figure> now) {
        now.forEach(
                (name, figure) -> {
                    List<String> at = step(path, name);
                    if (before.containsKey(name)) {
                        compare(at, before.get(name), figure);
                    } else {
                        found.add(new Difference(at, Optional.empty(), Optional.of(figure)));
                    }
                });
        before.forEach(
                (name, figure) -> {
                    if (!now.containsKey(name)) {
                        found.add(
                                new Difference(
                                        step(path, name), Optional.of(figure), Optional.empty()));
                    }
                });
    }

    private void compare(List<String> path, Figure before, Figure now) {
        if (Objects.equals(before, now)) {
            return;
        }
        Inside was = Inside.of(before);
        Inside is = Inside.of(now);
        if (was.groups().isPresent() && is.groups().isPresent()) {
            compare(path, named(was.groups().get()), named(is.groups().get()));
        } else if (was.items().isPresent() && is.items().isPresent()) {
            ItemNames.Named items = ItemNames.of(was.items().get(), is.items().get());
            compare(path, items.before(), items.now());
        } else {
            found.add(new Difference(path, Optional.of(before), Optional.of(now)));
        }
    }

    private static List<String> step(List<String> path, String name) {
        List<String> longer = new ArrayList<>(path);
        longer.add(name);
        return longer;
    }
}
