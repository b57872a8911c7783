package secondbolt.figure;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * By what an item of a list is known again when others come before it.
 *
 * @param keys whose values, one behind the other, are its name; none if items go by their number
 */
record ItemNames(List<String> keys) {
    /** The first whose values tell all items apart is taken. */
    private static final List<List<String>> CHOICE =
            List.of(
                    List.of("number"),
                    List.of("name"),
                    List.of("piece", "copy"),
                    List.of("what"),
                    List.of("join"),
                    List.of("alteration"),
                    List.of("alteration", "what"),
                    List.of("edge"),
                    List.of("code", "about"),
                    List.of("cloth"),
                    List.of("role", "width"),
                    List.of("text"));

    static ItemNames of(List<Figures> before, List<Figures> now) {
        return CHOICE.stream()
                .map(ItemNames::new)
                .filter(names -> names.tellApart(before) && names.tellApart(now))
                .findFirst()
                .orElseGet(() -> new ItemNames(List.of()));
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

    /** The items by their names, each without what its name says already. */
    Map<String, Figure> named(List<Figures> items) {
        Map<String, Figure> named = new LinkedHashMap<>();
        for (Figures item : items) {
            String name = keys.isEmpty() ? "" + (named.size() + 1) : name(item).orElseThrow();
            named.put(name, new Figure.Group(Optional.of(without(item)), ""));
        }
        return named;
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
