package secondbolt.worksheet;

import java.util.Locale;

/** How a sentence begins, whatever name or word comes first. */
public final class Sentence {
    private Sentence() {}

    /** Words with a capital at the beginning; what has no capitals stays. */
    public static String capital(String words) {
        int first = words.offsetByCodePoints(0, 1);
        return words.substring(0, first).toUpperCase(Locale.ROOT) + words.substring(first);
    }
}
