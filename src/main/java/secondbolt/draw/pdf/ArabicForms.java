package secondbolt.draw.pdf;

import java.util.HashMap;
import java.util.Map;

/**
 * Joins Arabic letters: puts the form for its place in the word in place of each letter.
 *
 * <p>Source: The Unicode Standard, section 9.2 (cursive joining) and the charts of Arabic
 * Presentation Forms A and B, whose forms stand in the order isolated, final, initial, medial.
 */
final class ArabicForms {
    /** Letter, its isolated form, how many forms it has: joins none, the one before, or both. */
    private static final String[] TABLE = {
        "0621 FE80 1", "0622 FE81 2", "0623 FE83 2", "0624 FE85 2", "0625 FE87 2", "0626 FE89 4",
        "0627 FE8D 2", "0628 FE8F 4", "0629 FE93 2", "062A FE95 4", "062B FE99 4", "062C FE9D 4",
        "062D FEA1 4", "062E FEA5 4", "062F FEA9 2", "0630 FEAB 2", "0631 FEAD 2", "0632 FEAF 2",
        "0633 FEB1 4", "0634 FEB5 4", "0635 FEB9 4", "0636 FEBD 4", "0637 FEC1 4", "0638 FEC5 4",
        "0639 FEC9 4", "063A FECD 4", "0641 FED1 4", "0642 FED5 4", "0643 FED9 4", "0644 FEDD 4",
        "0645 FEE1 4", "0646 FEE5 4", "0647 FEE9 4", "0648 FEED 2", "0649 FEEF 2", "064A FEF1 4",
        "0679 FB66 4", "067E FB56 4", "0686 FB7A 4", "0688 FB88 2", "0691 FB8C 2", "0698 FB8A 2",
        "06A9 FB8E 4", "06AF FB92 4", "06BA FB9E 2", "06BE FBAA 4", "06C1 FBA6 4", "06CC FBFC 4",
        "06D2 FBAE 2"
    };

    private static final int LAM = 0x0644;
    private static final int TATWEEL = 0x0640;

    /** Alef, and the isolated form of lam with that alef; the final form follows it. */
    private static final Map<Integer, Integer> LAM_ALEF =
            Map.of(0x0622, 0xFEF5, 0x0623, 0xFEF7, 0x0625, 0xFEF9, 0x0627, 0xFEFB);

    private static final Map<Integer, Letter> LETTERS = letters();

    private ArabicForms() {}

    private record Letter(int isolated, int forms) {}

    private static Map<Integer, Letter> letters() {
        Map<Integer, Letter> letters = new HashMap<>();
        for (String row : TABLE) {
            int letter = Integer.parseInt(row.substring(0, 4), 16);
            int isolated = Integer.parseInt(row.substring(5, 9), 16);
            letters.put(letter, new Letter(isolated, row.charAt(10) - '0'));
        }
        return letters;
    }

    /** The text with its letters joined, still in the order it is read. */
    static String joined(String text) {
        int[] in = text.codePoints().toArray();
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < in.length; i++) {
            int next = after(in, i);
            boolean joinsBefore = joinsOn(in, before(in, i));
            if (in[i] == LAM && next < in.length && LAM_ALEF.containsKey(in[next])) {
                out.appendCodePoint(LAM_ALEF.get(in[next]) + (joinsBefore ? 1 : 0));
                for (int mark = i + 1; mark < next; mark++) {
                    out.appendCodePoint(in[mark]);
                }
                i = next;
            } else {
                boolean joinsAfter = joinsOn(in, i) && next < in.length && joinsBack(in[next]);
                out.appendCodePoint(form(in[i], joinsBefore, joinsAfter));
            }
        }
        return out.toString();
    }

    private static int form(int c, boolean joinsBefore, boolean joinsAfter) {
        Letter letter = LETTERS.get(c);
        if (letter == null) {
            return c;
        }
        int before = joinsBefore && letter.forms() > 1 ? 1 : 0;
        int after = joinsAfter ? 2 : 0;
        return letter.isolated() + before + after;
    }

    /** Whether the letter at a place joins the one that follows it. */
    private static boolean joinsOn(int[] text, int at) {
        if (at < 0) {
            return false;
        }
        Letter letter = LETTERS.get(text[at]);
        return text[at] == TATWEEL || (letter != null && letter.forms() == 4);
    }

    /** Whether a letter joins the one that stands before it. */
    private static boolean joinsBack(int c) {
        Letter letter = LETTERS.get(c);
        return c == TATWEEL || (letter != null && letter.forms() > 1);
    }

    private static int before(int[] text, int at) {
        int i = at - 1;
        while (i >= 0 && isPassedOver(text[i])) {
            i--;
        }
        return i;
    }

    private static int after(int[] text, int at) {
        int i = at + 1;
        while (i < text.length && isPassedOver(text[i])) {
            i++;
        }
        return i;
    }

    /** Vowel signs stand above or below the letters and leave them joined. */
    private static boolean isPassedOver(int c) {
        return Character.getType(c) == Character.NON_SPACING_MARK;
    }
}
