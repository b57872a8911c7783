package secondbolt.draw.pdf;

import java.text.Bidi;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Text in the order it is seen from left to right, as PDF writes it; HTML does this by itself.
 *
 * <p>Source: Unicode Standard Annex 9, as the JDK's {@link Bidi} carries it out, for lines that run
 * from left to right, as the page's do.
 */
final class VisualText {
    private static final String BRACKETS = "()[]{}<>«»‹›≤≥";

    private VisualText() {}

    /** Composed, without characters that nobody sees, Arabic joined, right to left turned round. */
    static String of(String text) {
        String seen = seen(Normalizer.normalize(text, Normalizer.Form.NFC));
        char[] letters = seen.toCharArray();
        if (!Bidi.requiresBidi(letters, 0, letters.length)) {
            return seen;
        }
        String joined = ArabicForms.joined(seen);
        return ordered(joined, new Bidi(joined, Bidi.DIRECTION_LEFT_TO_RIGHT));
    }

    private static String seen(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> append(out, c));
        return out.toString();
    }

    private static void append(StringBuilder out, int c) {
        switch (Character.getType(c)) {
            case Character.CONTROL -> out.append(' ');
            case Character.FORMAT -> {
                // Joiners and marks of direction have no look of their own.
            }
            case Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> out.append(' ');
            default -> {
                if (!isVariationSelector(c)) {
                    out.appendCodePoint(c);
                }
            }
        }
    }

    private static boolean isVariationSelector(int c) {
        return (c >= 0xFE00 && c <= 0xFE0F) || (c >= 0xE0100 && c <= 0xE01EF);
    }

    private static String ordered(String text, Bidi bidi) {
        int count = bidi.getRunCount();
        byte[] levels = new byte[count];
        String[] runs = new String[count];
        for (int i = 0; i < count; i++) {
            levels[i] = (byte) bidi.getRunLevel(i);
            String run = text.substring(bidi.getRunStart(i), bidi.getRunLimit(i));
            runs[i] = levels[i] % 2 == 0 ? run : turned(run);
        }
        Bidi.reorderVisually(levels, 0, runs, 0, count);
        return String.join("", runs);
    }

    /** Backwards, each letter still followed by the signs that stand on it. */
    private static String turned(String run) {
        List<String> clusters = new ArrayList<>();
        for (int c : run.codePoints().toArray()) {
            int last = clusters.size() - 1;
            if (last >= 0 && Character.getType(c) == Character.NON_SPACING_MARK) {
                clusters.set(last, clusters.get(last) + Character.toString(c));
            } else {
                clusters.add(Character.toString(mirrored(c)));
            }
        }
        Collections.reverse(clusters);
        return String.join("", clusters);
    }

    private static int mirrored(int c) {
        int at = BRACKETS.indexOf(c);
        return at < 0 ? c : BRACKETS.charAt(at % 2 == 0 ? at + 1 : at - 1);
    }
}
