package secondbolt.file.svg;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.Location;
import secondbolt.file.source.Place;
import secondbolt.file.source.SourceFile;

/** The text of a drawing, and where things stand in it. */
final class SvgSource {
    private final SourceFile source;
    private final String text;

    SvgSource(SourceFile source) {
        this.source = source;
        this.text = String.join("\n", source.lines());
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
        int line = Math.max(1, Math.min(location.getLineNumber(), source.lines().size()));
        int offset = 0;
        for (int i = 0; i < line - 1; i++) {
            offset += source.lines().get(i).length() + 1;
        }
        int column = Math.max(0, location.getColumnNumber() - 1);
        return offset + Math.min(column, source.lines().get(line - 1).length());
    }

    Place place(Location location) {
        return place(offset(location));
    }

    Place place(int offset) {
        int line = 0;
        int before = 0;
        while (line < source.lines().size() - 1
                && before + source.lines().get(line).length() < offset) {
            before += source.lines().get(line).length() + 1;
            line++;
        }
        String own = source.lines().get(line);
        int column = own.codePointCount(0, Math.min(offset - before, own.length()));
        return new Place(source.name(), line + 1, 1 + column);
    }

    /** The place of a letter of an attribute's value; without such an attribute, of its element. */
    Place place(int element, String attribute, int letter) {
        Matcher value =
                Pattern.compile("\\s" + Pattern.quote(attribute) + "\\s*=\\s*[\"']")
                        .matcher(text)
                        .region(element, text.length());
        int close = text.indexOf('>', element);
        return value.find() && (close < 0 || value.start() < close)
                ? place(value.end() + letter)
                : place(element);
    }
}
