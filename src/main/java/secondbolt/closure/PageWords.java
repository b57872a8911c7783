package secondbolt.closure;

import java.util.Locale;

/** Words as a page writes them. */
final class PageWords {
    private PageWords() {}

    static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
