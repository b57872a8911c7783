package secondbolt.figure;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * By what an item of a list is known again when others come before it. Of several with one name,
 * those that are as they were are the same ones; what then remains is paired in order.
 *
 * @param keys whose values, one behind the other, are its name; none if nothing names it
 */
record ItemNames(List<String> keys) {
    /** The first whose values tell all items apart is taken. */
    private static final List<List<String>> CHOICE =
            List.of(
                    List.of("number"),
                    List.of("name"),
                    List.of("piece", "copy"),
                    List.of("what"),
                    List.of("item"),
                    List.of("word"),
                    List.of("join"),
                    List.of("alteration"),
                    List.of("alteration", "what"),
                    List.of("edge"),
                    List.of("code", "about"),
                    List.of("cloth"),
                    List.of("role", "width"));

    /** Items by their names before and now; a name stands for the same item in both. */
    record Named(Map<String, Figure> before, Map<String, Figure> now) {}

    /** The items of a list before and now. */
    static Named of(List<Figures> before, List<Figures> now) {
        return choice(before, now).named(before, now);
    }

    /** Where none tells them apart, the one that says most. */
    private static ItemNames choice(List<Figures> before, List<Figures> now) {
        List<ItemNames> there =
                CHOICE.stream()
                        .map(ItemNames::new)
                        .filter(names -> names.nameAll(before) && names.nameAll(now))
                        .toList();
        return there.stream()
                .filter(names -> names.tellApart(before) && names.tellApart(now))
                .findFirst()
                .or(() -> there.stream().reduce((a, b) -> b.says() > a.says() ? b : a))
                .orElseGet(() -> new ItemNames(List.of()));
    }

    private int says() {
        return keys.size();
    }

    private boolean nameAll(List<Figures> items) {
        return items.stream().allMatch(item -> name(item).isPresent());
    }

    private Named named(List<Figures> before, List<Figures> now) {
        Map<String, List<Figures>> old = byName(before);
        Map<String, Figure> namedBefore = new LinkedHashMap<>();
        Map<String, Figure> namedNow = new LinkedHashMap<>();
        byName(now)
                .forEach(
                        (name, items) -> {
                            List<Figures> had = old.getOrDefault(name, List.of());
                            SameItems same = SameItems.of(had, items);
                            for (int i = 0; i < items.size(); i++) {
                                String label = label(name, i);
                                namedNow.put(label, group(items.get(i)));
                                same.before(i).ifPresent(b -> namedBefore.put(label, group(b)));
                            }
                            for (int i = 0; i < same.gone().size(); i++) {
                                String label = label(name, items.size() + i);
                                namedBefore.put(label, group(same.gone().get(i)));
                            }
                        });
        byName(now).keySet().forEach(old::remove);
        old.forEach(
                (name, items) -> {
                    for (int i = 0; i < items.size(); i++) {
                        namedBefore.put(label(name, i), group(items.get(i)));
                    }
                });
        return new Named(namedBefore, namedNow);
    }

    private Map<String, List<Figures>> byName(List<Figures> items) {
        Map<String, List<Figures>> byName = new LinkedHashMap<>();
        items.forEach(
                item ->
                        byName.computeIfAbsent(name(item).orElseThrow(), n -> new ArrayList<>())
                                .add(item));
        return byName;
    }

    /** What has no name of its own goes by its number. */
    private String label(String name, int index) {
        if (keys.isEmpty()) {
            return "" + (index + 1);
        }
        return index == 0 ? name : name + " (" + (index + 1) + ")";
    }

    private Figure group(Figures item) {
        return new Figure.Group(Optional.of(without(item)), "");
    }

    private boolean tellApart(List<Figures> items) {
        Set<String> seen = new HashSet<>();
        return items.stream().allMatch(item -> name(item).map(seen::add).orElse(false));
    }

    private Optional<String> name(Figures item) {
        List<String> words = new ArrayList<>();
        for (String key : keys) {
            FigureEntry entry = item.entries().get(key);
            if (entry == null) {
                return Optional.empty();
            }
            words.add(entry.figure().accept(PlainWords.ONLY));
        }
        return Optional.of(String.join(" ", words));
    }

    private Figures without(Figures item) {
        Figures rest = new Figures();
        item.entries()
                .forEach(
                        (key, entry) -> {
                            if (!keys.contains(key)) {
                                rest.put(key, entry.figure());
                            }
                        });
        return rest;
    }

    /** Text and numbers as they are; of everything else nothing. */
    private static final class PlainWords extends Leaves<String> {
        private static final PlainWords ONLY = new PlainWords();

        private PlainWords() {
            super("");
        }

        @Override
        public String text(Figure.Text text) {
            return text.value().orElse("");
        }

        @Override
        public String number(Figure.Amount number) {
            return FigureWords.plain(number);
        }

        @Override
        public String size(Figure.Size size) {
            return size.value().map(length -> "" + length.millimetres()).orElse("");
        }
    }
}
