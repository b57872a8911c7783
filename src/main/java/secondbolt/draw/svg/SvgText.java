package secondbolt.draw.svg;

/** Writes text so that XML and HTML read it back unchanged. */
final class SvgText {
    private static final int REPLACEMENT = 0xFFFD;

    private SvgText() {}

    /** Escapes what is markup, and replaces what XML 1.0 section 2.2 forbids by U+FFFD. */
    static String escaped(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> append(out, c));
        return out.toString();
    }

    private static void append(StringBuilder out, int c) {
        switch (c) {
            case '&' -> out.append("&amp;");
            case '<' -> out.append("&lt;");
            case '>' -> out.append("&gt;");
            case '"' -> out.append("&quot;");
            default -> out.appendCodePoint(isAllowed(c) ? c : REPLACEMENT);
        }
    }

    /** XML's own list, less the C1 controls and non-characters, which HTML forbids. */
    private static boolean isAllowed(int c) {
        boolean blank = c == '\t' || c == '\n' || c == '\r';
        boolean surrogate = c >= 0xD800 && c <= 0xDFFF;
        boolean nonCharacter = (c & 0xFFFE) == 0xFFFE || (c >= 0xFDD0 && c <= 0xFDEF);
        return blank || !(Character.isISOControl(c) || surrogate || nonCharacter);
    }
}
