package secondbolt.measure;

import java.util.ArrayList;
import java.util.List;

/** Counts and numbers of things in words: {@code 1 edge}, {@code 2 edges}; {@code 2 to 13}. */
public final class Plural {
    /** From so many numbers in a row on they are told as a run. */
    private static final int RUN = 3;

    private Plural() {}

    /**
     * So many things, for a word that adds an s in the plural.
     *
     * @param count 0 or more
     * @param one the word for one of them
     */
    public static String of(int count, String one) {
        return of(count, one, one + "s");
    }

    /**
     * So many things.
     *
     * @param count 0 or more
     * @param one the words for one of them
     * @param many the words for none or several
     */
    public static String of(int count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }

    /**
     * Numbers as one reads them out: three or more in a row become {@code 2 to 13}.
     *
     * @param numbers in rising order
     */
    public static String runs(List<Integer> numbers) {
        List<String> told = new ArrayList<>();
        int from = 0;
        while (from < numbers.size()) {
            int to = from;
            while (to + 1 < numbers.size() && numbers.get(to + 1) == numbers.get(to) + 1) {
                to++;
            }
            if (to - from + 1 >= RUN) {
                told.add(numbers.get(from) + " to " + numbers.get(to));
            } else {
                numbers.subList(from, to + 1).forEach(n -> told.add(Integer.toString(n)));
            }
            from = to + 1;
        }
        return String.join(", ", told);
    }
}
