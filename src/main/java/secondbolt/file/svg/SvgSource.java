package secondbolt.file.svg;

import java.util.Arrays;
import java.util.List;
import javax.xml.stream.Location;
import secondbolt.file.source.Place;
import secondbolt.file.source.SourceFile;

/** The text of a drawing, and where things stand in it. */
final class SvgSource {
    private final SourceFile source;
    private final String text;

    /** Where each line begins. */
    private final int[] starts;

    /** The place told last, from which the next one on the same line is counted on. */
    private int lastLine = -1;

    private int lastOffset;
    private int lastColumn;

    SvgSource(SourceFile source) {
        this.source = source;
        List<String> lines = source.lines();
        this.text = String.join("\n", lines);
        this.starts = new int[lines.size()];
        for (int i = 1; i < starts.length; i++) {
            starts[i] = starts[i - 1] + lines.get(i - 1).length() + 1;
        }
    }

    String text() {
        return text;
    }

    SourceFile source() {
        return source;
    }

    /** Where the element begins whose opening tag the reader has just passed. */
    int beginning(Location passed) {
        int end = offset(passed);
        return Math.max(0, text.lastIndexOf('<', Math.max(0, end - 1)));
    }

    private int offset(Location location) {
        int line = Math.max(1, Math.min(location.getLineNumber(), starts.length)) - 1;
        int column = Math.max(0, location.getColumnNumber() - 1);
        return starts[line] + Math.min(column, source.lines().get(line).length());
    }

    Place place(Location location) {
        return place(offset(location));
    }

    Place place(int offset) {
        int line = lineOf(offset);
        int to = Math.min(offset, starts[line] + source.lines().get(line).length());
        if (line != lastLine || to < lastOffset) {
            lastLine = line;
            lastOffset = starts[line];
            lastColumn = 1;
        }
        lastColumn += text.codePointCount(lastOffset, to);
        lastOffset = to;
        return new Place(source.name(), line + 1, lastColumn);
    }

    private int lineOf(int offset) {
        int found = Arrays.binarySearch(starts, offset);
        return found >= 0 ? found : -found - 2;
    }

    /** The place of a letter of an attribute's value; without such an attribute, of its element. */
    Place place(int element, String attribute, int letter) {
        int at = passWord(element + 1);
        while (at < text.length() && text.charAt(at) != '>' && text.charAt(at) != '/') {
            int name = passBlanks(at);
            int nameEnd = passWord(name);
            int quote = passBlanks(passBlanks(nameEnd) + 1);
            if (nameEnd == name || quote >= text.length()) {
                break;
            }
            int close = text.indexOf(text.charAt(quote), quote + 1);
            if (close < 0) {
                break;
            }
            if (text.substring(name, nameEnd).equals(attribute)) {
                return place(letterOf(quote + 1, letter, close));
            }
            at = passBlanks(close + 1);
        }
        return place(element);
    }

    /** A letter that is written as its number or its name counts once. */
    private int letterOf(int value, int letter, int close) {
        int at = value;
        for (int i = 0; i < letter && at < close; i++) {
            at = text.charAt(at) == '&' ? text.indexOf(';', at) + 1 : at + 1;
        }
        return at;
    }

    private int passBlanks(int from) {
        int at = from;
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
        return at;
    }

    private int passWord(int from) {
        int at = from;
        while (at < text.length()
                && !Character.isWhitespace(text.charAt(at))
                && "=/>".indexOf(text.charAt(at)) < 0) {
            at++;
        }
        return at;
    }
}
