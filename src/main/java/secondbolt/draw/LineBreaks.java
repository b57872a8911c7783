package secondbolt.draw;

import java.util.ArrayList;
import java.util.List;

/**
 * Breaks text into lines: after a blank, beside a Han, kana or Hangul letter, and within a word
 * only where the word alone is wider than the line.
 */
public final class LineBreaks {
    private static final int FIRST_HAN = 0x2E80;
    private static final String ELLIPSIS = "…";

    private LineBreaks() {}

    /**
     * The lines of a text, by {@link Lettering#widthMm}; at least one, which may be empty.
     *
     * @param widthMm what a line may take; a single letter is never broken, however narrow this is
     */
    public static List<String> lines(String text, Lettering lettering, double widthMm) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String part : parts(text)) {
            for (String piece : pieces(part, lettering, widthMm)) {
                if (!fits(line + piece, lettering, widthMm) && line.length() > 0) {
                    lines.add(line.toString().strip());
                    line.setLength(0);
                }
                line.append(piece);
            }
        }
        lines.add(line.toString().strip());
        return List.copyOf(lines);
    }

    /** A text on one line, its end left out for … where it would be too wide. */
    public static String shortened(String text, Lettering lettering, double widthMm) {
        String left = text;
        while (!left.isEmpty()
                && !fits(left.equals(text) ? text : left + ELLIPSIS, lettering, widthMm)) {
            left = left.substring(0, left.offsetByCodePoints(left.length(), -1)).strip();
        }
        return left.equals(text) ? text : left + ELLIPSIS;
    }

    private static boolean fits(String text, Lettering lettering, double widthMm) {
        return lettering.widthMm(text.strip()) <= widthMm;
    }

    private static List<String> parts(String text) {
        List<String> parts = new ArrayList<>();
        StringBuilder part = new StringBuilder();
        for (int c : text.codePoints().toArray()) {
            if (Character.isIdeographic(c) || (c >= FIRST_HAN && Character.isLetter(c))) {
                cut(parts, part);
            }
            part.appendCodePoint(Character.isWhitespace(c) ? ' ' : c);
            if (Character.isWhitespace(c)) {
                cut(parts, part);
            }
        }
        cut(parts, part);
        return parts;
    }

    private static void cut(List<String> parts, StringBuilder part) {
        if (part.length() > 0) {
            parts.add(part.toString());
            part.setLength(0);
        }
    }

    /** The part whole if a line can hold it, else as much of it to a line as fits. */
    private static List<String> pieces(String part, Lettering lettering, double widthMm) {
        if (fits(part, lettering, widthMm)) {
            return List.of(part);
        }
        List<String> pieces = new ArrayList<>();
        StringBuilder piece = new StringBuilder();
        for (int c : part.codePoints().toArray()) {
            String longer = piece + Character.toString(c);
            if (!fits(longer, lettering, widthMm)) {
                cut(pieces, piece);
            }
            piece.appendCodePoint(c);
        }
        cut(pieces, piece);
        return pieces;
    }
}
