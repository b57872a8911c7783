package secondbolt.measure;

import java.math.BigDecimal;
import java.text.Normalizer;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads one number off the front of a text, as makers write numbers: {@code 12}, {@code 3.5},
 * {@code 3,5}, {@code 5/8}, {@code 1 3/8}, {@code 1-3/8}, {@code 1½}, {@code 2 ³⁄₁₆}.
 *
 * <p>A comma is a decimal comma, but one before three figures is refused: it could as well part
 * thousands.
 */
final class NumberScanner {
    private static final Pattern MIXED =
            Pattern.compile("([+-]?)\\s*(\\d{1,9})(?:\\s*-\\s*|\\s+)(\\d{1,9})\\s?/\\s?(\\d{1,9})");
    private static final Pattern FRACTION =
            Pattern.compile("([+-]?)\\s*(\\d{1,9})\\s?/\\s?(\\d{1,9})");
    private static final Pattern DECIMAL =
            Pattern.compile("([+-]?)\\s*(\\d{0,12})(?:([.,])(\\d{1,9}))?");
    private static final Map<Character, String> VULGAR =
            Map.ofEntries(
                    Map.entry('½', "1/2"),
                    Map.entry('¼', "1/4"),
                    Map.entry('¾', "3/4"),
                    Map.entry('⅓', "1/3"),
                    Map.entry('⅔', "2/3"),
                    Map.entry('⅛', "1/8"),
                    Map.entry('⅜', "3/8"),
                    Map.entry('⅝', "5/8"),
                    Map.entry('⅞', "7/8"));

    private NumberScanner() {}

    /** A number and what follows it; or no number, with the reason. */
    record Scanned(Optional<Exact> number, String rest, String trouble) {}

    /** Plain figures, spaces and slashes in place of the typographer's. */
    static String plain(String text) {
        StringBuilder plain = new StringBuilder();
        boolean inFraction = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean raised = "⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(c) >= 0;
            if (VULGAR.containsKey(c)) {
                plain.append(' ').append(VULGAR.get(c));
            } else if (raised && !inFraction && startsFraction(text, i)) {
                inFraction = true;
                plain.append(' ').append(Normalizer.normalize("" + c, Normalizer.Form.NFKC));
            } else if (inFraction && (raised || "₀₁₂₃₄₅₆₇₈₉".indexOf(c) >= 0)) {
                plain.append(Normalizer.normalize("" + c, Normalizer.Form.NFKC));
            } else if (c == '\u2044') {
                plain.append('/');
            } else if (c == '\u2212' || c == '\u2013') {
                plain.append('-');
            } else if (Character.isSpaceChar(c)) {
                plain.append(' ');
            } else {
                inFraction = false;
                plain.append(c);
            }
        }
        return plain.toString().strip();
    }

    /** Whether a run of raised figures at this place ends at a fraction slash (else it is cm²). */
    private static boolean startsFraction(String text, int at) {
        int i = at;
        while (i < text.length() && "⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(text.charAt(i)) >= 0) {
            i++;
        }
        return i < text.length() && text.charAt(i) == '\u2044';
    }

    static Scanned scan(String text) {
        Matcher mixed = MIXED.matcher(text);
        if (mixed.lookingAt()) {
            return fraction(text, mixed, Exact.of(mixed.group(2)), 3);
        }
        Matcher fraction = FRACTION.matcher(text);
        if (fraction.lookingAt()) {
            return fraction(text, fraction, Exact.ZERO, 2);
        }
        Matcher decimal = DECIMAL.matcher(text);
        if (decimal.lookingAt() && decimal.end() > decimal.end(1)) {
            return decimal(text, decimal);
        }
        return new Scanned(Optional.empty(), text, "no number");
    }

    private static Scanned fraction(String text, Matcher m, Exact whole, int group) {
        Exact under = Exact.of(m.group(group + 1));
        if (under.signum() == 0) {
            return new Scanned(Optional.empty(), text, "a fraction over 0");
        }
        Exact number = whole.plus(Exact.of(m.group(group)).dividedBy(under));
        return found(m, number, text);
    }

    private static Scanned decimal(String text, Matcher m) {
        String decimals = m.group(4) == null ? "" : m.group(4);
        if (",".equals(m.group(3)) && decimals.length() == 3) {
            return new Scanned(Optional.empty(), text, "a comma that could part thousands");
        }
        String whole = m.group(2).isEmpty() ? "0" : m.group(2);
        return found(m, Exact.of(new BigDecimal(whole + "." + decimals + "0")), text);
    }

    private static Scanned found(Matcher m, Exact number, String text) {
        if (m.end() < text.length() && Character.isDigit(text.charAt(m.end()))) {
            return new Scanned(Optional.empty(), text, "a number of too many figures");
        }
        Exact signed = "-".equals(m.group(1)) ? number.negated() : number;
        return new Scanned(Optional.of(signed), text.substring(m.end()).strip(), "");
    }
}
