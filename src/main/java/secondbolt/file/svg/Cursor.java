package secondbolt.file.svg;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Goes through an attribute's value: letters, numbers, and the commas and blanks between. */
final class Cursor {
    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(?:[0-9]++\\.?[0-9]*+|\\.[0-9]++)(?:[eE][+-]?[0-9]++)?+");

    private final String text;
    private int at;

    Cursor(String text) {
        this.text = text;
    }

    int at() {
        return at;
    }

    /** Passes blanks, and one comma among them. */
    void passSeparator() {
        passBlanks();
        if (at < text.length() && text.charAt(at) == ',') {
            at++;
            passBlanks();
        }
    }

    void passBlanks() {
        while (at < text.length() && " \t\r\n\f".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
    }

    boolean isAtEnd() {
        return at >= text.length();
    }

    /** The letter ahead; a zero letter at the end. */
    char peek() {
        return isAtEnd() ? '\0' : text.charAt(at);
    }

    char take() {
        return text.charAt(at++);
    }

    boolean takes(char letter) {
        boolean found = peek() == letter;
        if (found) {
            at++;
        }
        return found;
    }

    /** The letters of a word ahead. */
    String word() {
        int from = at;
        while (Character.isLetter(peek())) {
            at++;
        }
        return text.substring(from, at);
    }

    boolean isAtNumber() {
        Matcher matcher = NUMBER.matcher(text).region(at, text.length());
        return matcher.lookingAt();
    }

    /** A number and the separator after it. */
    double number() throws Slip {
        Matcher matcher = NUMBER.matcher(text).region(at, text.length());
        if (!matcher.lookingAt()) {
            throw new Slip(at, ahead(), "a number such as 12.5");
        }
        if (matcher.end() - at > Bounds.LONGEST_NUMBER) {
            throw new Slip(at, "a number of " + (matcher.end() - at) + " letters", "12.5");
        }
        double value = Double.parseDouble(matcher.group());
        if (!(Math.abs(value) <= Bounds.LARGEST_NUMBER)) {
            throw new Slip(at, ahead(), "a number that is not so large");
        }
        at = matcher.end();
        passSeparator();
        return value;
    }

    /** One of the two flags of an arc, which need nothing between them. */
    boolean flag() throws Slip {
        if (peek() != '0' && peek() != '1') {
            throw new Slip(at, ahead(), "the flag 0 or 1 of an arc");
        }
        boolean value = take() == '1';
        passSeparator();
        return value;
    }

    /** What stands here, for a message. */
    String ahead() {
        if (isAtEnd()) {
            return "the end of `" + (text.length() > 24 ? "…" + tail() : text) + "`";
        }
        int to = Math.min(text.length(), at + 12);
        return "`" + text.substring(at, to) + (to < text.length() ? "…" : "") + "`";
    }

    private String tail() {
        return text.substring(text.length() - 23);
    }
}
