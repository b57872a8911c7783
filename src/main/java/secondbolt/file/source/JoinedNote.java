package secondbolt.file.source;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A note of the maker's own that the line after it was joined to, so that its key is unread. */
final class JoinedNote {
    private static final Pattern NOTE = Pattern.compile("^\\s*#.*");

    /** The last word before a colon, or the last ones after a stop. */
    private static final Pattern KEY =
            Pattern.compile("(?<=\\S)(?:(?<=\\p{Punct}) *\\p{L}[\\p{L} ]*|\\p{L}+):(?:\\s|$)");

    private static final int MOST_PARTED = 12;

    private JoinedNote() {}

    /** The ways to part a line into a note and a key, if it is such a note. */
    static Stream<Repair> parted(List<String> lines, int line) {
        if (line < 0 || line >= lines.size() || !NOTE.matcher(lines.get(line)).matches()) {
            return Stream.empty();
        }
        String text = lines.get(line);
        return KEY.matcher(text)
                .results()
                .reduce((one, later) -> later)
                .map(key -> IntStream.range(key.start(), key.end()))
                .orElse(IntStream.empty())
                .limit(MOST_PARTED)
                .mapToObj(at -> parted(text, line, at));
    }

    private static Repair parted(String text, int line, int at) {
        return new Repair(
                line + 1,
                at,
                0,
                "\n",
                1 + text.codePointCount(0, at),
                "a key in a note of your own, which is not read",
                "the key on a line of its own");
    }
}
