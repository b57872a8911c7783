package secondbolt.file;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Finds the known word nearest to a misspelt one. */
public final class Spelling {
    private Spelling() {}

    /**
     * The nearest of the known words, if it is near enough to be meant: a third of its letters may
     * be wrong, missing, too many or swapped with a neighbour.
     */
    public static Optional<String> nearest(String word, Collection<String> known) {
        String sought = word.toLowerCase(Locale.ROOT).strip();
        return known.stream()
                .filter(k -> distance(sought, k.toLowerCase(Locale.ROOT)) <= most(k))
                .min(Comparator.comparingInt(k -> distance(sought, k.toLowerCase(Locale.ROOT))));
    }

    private static int most(String known) {
        return Math.max(1, known.length() / 3);
    }

    /** The same with plain spaces in place of no-break and other ones, which nobody can see. */
    public static String plainSpaces(String text) {
        return text.codePoints()
                .map(letter -> Character.isSpaceChar(letter) ? ' ' : letter)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    /** Words as the maker writes them, one after the other. */
    public static String quoted(Collection<String> words) {
        return words.stream().map(w -> "`" + w + "`").collect(Collectors.joining(", "));
    }

    /** Single-letter changes and swaps of neighbours between two words. */
    private static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                d[i][j] = i == 0 || j == 0 ? i + j : step(d, a, b, i, j);
            }
        }
        return d[a.length()][b.length()];
    }

    private static int step(int[][] d, String a, String b, int i, int j) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int best = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + change);
        boolean swapped =
                i > 1
                        && j > 1
                        && a.charAt(i - 1) == b.charAt(j - 2)
                        && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
    }
}
