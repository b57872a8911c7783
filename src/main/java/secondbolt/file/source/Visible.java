package secondbolt.file.source;

/**
 * Words that come from a file or a file's name, made fit to be shown: of bounded length, and
 * without letters that nobody sees but a terminal or a page obeys.
 */
public final class Visible {
    /** Of a value no more letters are told. */
    static final int LONGEST_VALUE = 200;

    private static final int LONGEST_FOUND = 600;
    private static final int LONGEST_RIGHT = 4000;

    private Visible() {}

    /**
     * Whether a letter is not to be seen and does something: a control character, a separator of
     * lines or paragraphs, the mark of a file's beginning, one that turns the direction of what
     * follows, half of a letter.
     */
    public static boolean isUnseen(int letter) {
        return Character.isISOControl(letter)
                || letter == '\u2028'
                || letter == '\u2029'
                || letter == '\uFEFF'
                || (letter >= 0xFFFE && letter <= 0xFFFF)
                || turns(letter)
                || Character.getType(letter) == Character.SURROGATE;
    }

    /** The embeddings, overrides and isolates of Unicode's bidirectional algorithm. */
    private static boolean turns(int letter) {
        return (letter >= '\u202A' && letter <= '\u202E')
                || (letter >= '\u2066' && letter <= '\u2069');
    }

    /** The text with each unseen letter as its number, such as {@code \u001B}; a line end as \n. */
    public static String escaped(String text) {
        if (text.codePoints().noneMatch(Visible::isUnseen)) {
            return text;
        }
        StringBuilder seen = new StringBuilder();
        text.codePoints().forEach(letter -> append(seen, letter));
        return seen.toString();
    }

    private static void append(StringBuilder seen, int letter) {
        if (!isUnseen(letter)) {
            seen.appendCodePoint(letter);
        } else if (letter == '\n') {
            seen.append("\\n");
        } else {
            seen.append(String.format("\\u%04X", letter));
        }
    }

    /** What was found, with each value in it, and itself, cut short. */
    static String found(String text) {
        return escaped(cut(values(text), LONGEST_FOUND));
    }

    /** What would be right, with each value in it, and itself, cut short. */
    static String right(String text) {
        return escaped(cut(values(text), LONGEST_RIGHT));
    }

    /** A value, cut short. */
    public static String value(String text) {
        return cut(text, LONGEST_VALUE);
    }

    /** Values stand between backquotes. */
    private static String values(String text) {
        if (text.length() <= LONGEST_VALUE) {
            return text;
        }
        StringBuilder all = new StringBuilder();
        int from = 0;
        for (int open = text.indexOf('`'); open >= 0; open = text.indexOf('`', from)) {
            int close = text.indexOf('`', open + 1);
            if (close < 0) {
                break;
            }
            all.append(text, from, open + 1).append(value(text.substring(open + 1, close)));
            all.append('`');
            from = close + 1;
        }
        return all.append(text, from, text.length()).toString();
    }

    /** The beginning and the end of a text that is too long. */
    private static String cut(String text, int longest) {
        if (text.length() <= longest) {
            return text;
        }
        int end = text.length() - longest / 4;
        int begin = longest - 1 - longest / 4;
        begin -= Character.isHighSurrogate(text.charAt(begin - 1)) ? 1 : 0;
        end += Character.isLowSurrogate(text.charAt(end)) ? 1 : 0;
        return text.substring(0, begin) + "…" + text.substring(end);
    }
}
