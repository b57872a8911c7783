package secondbolt.worksheet;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

/** Makes the names of sheets out of the maker's own names. */
public final class SheetName {
    /** On Latin, Greek and Cyrillic letters; the marks of other scripts are part of the word. */
    private static final String ACCENTS = "[\\u0300-\\u036F]+";

    private SheetName() {}

    /**
     * One name for each, in order: lower case, letters and figures of any script, hyphens between
     * words, no two the same.
     */
    public static List<String> forEach(Collection<String> names) {
        List<String> made = new ArrayList<>();
        for (String name : names) {
            String plain = plain(name);
            String free = plain;
            for (int i = 2; made.contains(free); i++) {
                free = plain + "-" + i;
            }
            made.add(free);
        }
        return List.copyOf(made);
    }

    private static String plain(String name) {
        String plain =
                Normalizer.normalize(name, Normalizer.Form.NFD)
                        .replaceAll(ACCENTS, "")
                        .toLowerCase(Locale.ROOT)
                        .replaceAll("[^\\p{L}\\p{M}\\p{Nd}]+\\p{M}*", "-")
                        .replaceAll("^[-\\p{M}]+|-+$", "");
        return plain.isEmpty() ? "sheet" : Normalizer.normalize(plain, Normalizer.Form.NFC);
    }
}
