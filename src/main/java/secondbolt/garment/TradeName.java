package secondbolt.garment;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The name of an edge or a line, read as the trade's English: its last words say what it is, as in
 * {@code left side seam} or {@code sleeve cap}; a {@code side pocket} is no side.
 *
 * @param words in small letters
 */
record TradeName(List<String> words) {
    /** These tell which of several it is, or only that it is an edge or a length. */
    private static final Set<String> WHICH =
            Set.of(
                    "front", "back", "left", "right", "seam", "seams", "edge", "edges", "line",
                    "length");

    /** Copies the words. */
    TradeName {
        words = List.copyOf(words);
    }

    static TradeName of(String name) {
        return new TradeName(
                Stream.of(name.toLowerCase(Locale.ROOT).split("[\\s_-]+", -1))
                        .filter(word -> !word.isEmpty())
                        .toList());
    }

    /** Whether a word only tells which it is: of the usual ones, a number or a single letter. */
    static boolean tellsWhich(String word) {
        return WHICH.contains(word) || word.matches("\\d+|\\p{L}");
    }

    /**
     * What the last words mean, words that only tell which it is left out.
     *
     * @param phrases the trade's words for each meaning
     */
    Optional<Serves> read(Function<Serves, List<String>> phrases) {
        for (int end = words.size(); end > 0; end--) {
            Optional<Serves> said = endingIn(String.join(" ", words.subList(0, end)), phrases);
            if (said.isPresent() || !tellsWhich(words.get(end - 1))) {
                return said;
            }
        }
        return Optional.empty();
    }

    /** The meaning with the longest phrase the name ends in: {@code crotch depth} over one word. */
    private static Optional<Serves> endingIn(String name, Function<Serves, List<String>> phrases) {
        return Stream.of(Serves.values())
                .filter(serves -> longest(name, phrases.apply(serves)) > 0)
                .max(Comparator.comparingInt(s -> longest(name, phrases.apply(s))));
    }

    private static int longest(String name, List<String> phrases) {
        return phrases.stream()
                .filter(phrase -> (" " + name).endsWith(" " + phrase))
                .mapToInt(String::length)
                .max()
                .orElse(0);
    }
}
