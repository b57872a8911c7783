package secondbolt.file;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Finds the known word nearest to a misspelt one. */
public final class Spelling {
    /** Among more words than a person looks through none is guessed. */
    private static final int MOST_KNOWN = 300;

    /** More names than these are not told one by one. */
    private static final int MOST_LISTED = 80;

    /** Nor are names longer than this together; a dozen lines of a terminal are read by nobody. */
    private static final int MOST_LETTERS = 900;

    private Spelling() {}

    /**
     * The nearest of the known words, if it is near enough to be meant: a third of its letters may
     * be wrong, missing, too many or swapped with a neighbour, but never all of them.
     */
    public static Optional<String> nearest(String word, Collection<String> known) {
        if (known.size() > MOST_KNOWN) {
            return Optional.empty();
        }
        String sought = word.toLowerCase(Locale.ROOT).strip();
        int best = Integer.MAX_VALUE;
        Optional<String> nearest = Optional.empty();
        for (String one : known) {
            boolean isLike = Math.abs(one.length() - sought.length()) <= most(one);
            int off = isLike ? distance(sought, one.toLowerCase(Locale.ROOT)) : Integer.MAX_VALUE;
            if (off <= most(one) && off < one.length() && off < best) {
                best = off;
                nearest = Optional.of(one);
            }
        }
        return nearest;
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
        return some(words, word -> "`" + word + "`");
    }

    /** Names as they are, one after the other. */
    public static String listed(Collection<String> names) {
        return some(names, name -> name);
    }

    private static String some(Collection<String> words, UnaryOperator<String> put) {
        List<String> some = new ArrayList<>();
        int letters = 0;
        for (String word : words) {
            letters += word.length();
            boolean isMuch = some.size() == MOST_LISTED || letters > MOST_LETTERS;
            if (isMuch && !some.isEmpty()) {
                return String.join(", ", some) + ", …";
            }
            some.add(put.apply(word));
        }
        return String.join(", ", some);
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
