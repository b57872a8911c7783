package secondbolt.file.svg;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The name of an edge as a drawing's {@code id} can hold it. */
final class EdgeName {
    /** Drawing programs write letters that an id may not have as their number. */
    private static final Pattern HEX = Pattern.compile("_x([0-9A-Fa-f]{2,4})_");

    private static final Pattern BETWEEN_WORDS = Pattern.compile("[\\s_-]+");

    private EdgeName() {}

    /** Hyphens and underscores stand for blanks: {@code centre-front} is centre front. */
    static String ofId(String id) {
        String letters =
                HEX.matcher(id)
                        .replaceAll(
                                found ->
                                        Matcher.quoteReplacement(
                                                String.valueOf(
                                                        (char)
                                                                Integer.parseInt(
                                                                        found.group(1), 16))));
        return BETWEEN_WORDS.matcher(letters).replaceAll(" ").strip();
    }

    static String ofTitle(String title) {
        return title.strip().replaceAll("\\s+", " ");
    }
}
