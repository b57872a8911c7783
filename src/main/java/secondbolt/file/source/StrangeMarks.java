package secondbolt.file.source;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What no project file holds, wherever it stands: letters that nobody can see, lines that an editor
 * counts otherwise than YAML, directives, a second document, of which no more is read. Each is told
 * at its own place, and a plain space or nothing is read instead, so that every later place stays
 * right.
 *
 * @param lines to be read
 * @param mistakes one a line at most
 */
record StrangeMarks(List<String> lines, List<Mistake> mistakes) {
    private static final int MOST_TOLD = 30;
    private static final Pattern SECOND = Pattern.compile("(---|\\.\\.\\.)(\\s.*)?");

    static StrangeMarks in(SourceFile source) {
        List<String> lines = new ArrayList<>();
        List<Mistake> mistakes = new ArrayList<>();
        boolean isBegun = false;
        boolean isOver = false;
        int last = lastWritten(source.lines());
        for (int i = 0; i < source.lines().size(); i++) {
            String line = source.lines().get(i);
            Optional<Mistake> whole =
                    isOver ? Optional.empty() : whole(source, i, isBegun, i < last);
            Optional<Mistake> letter = whole.isPresent() ? whole : letter(source, i);
            letter.filter(m -> mistakes.size() < MOST_TOLD).ifPresent(mistakes::add);
            isOver |= whole.isPresent() && !line.startsWith("%");
            lines.add(isOver || whole.isPresent() ? "" : letter.isPresent() ? plain(line) : line);
            isBegun |= isWritten(line);
        }
        return new StrangeMarks(lines, mistakes);
    }

    private static int lastWritten(List<String> lines) {
        int last = lines.size() - 1;
        while (last > 0 && !isWritten(lines.get(last))) {
            last--;
        }
        return last;
    }

    private static boolean isWritten(String line) {
        String text = line.strip();
        return !text.isEmpty() && !text.startsWith("#");
    }

    /** What is wrong with a line as a whole, whatever stands in it. */
    private static Optional<Mistake> whole(
            SourceFile source, int line, boolean isBegun, boolean goesOn) {
        String text = source.lines().get(line);
        if (text.startsWith("%")) {
            return Optional.of(
                    at(
                            source,
                            line,
                            0,
                            "a directive (%), which project files do not use",
                            "no such line"));
        }
        boolean isSecond = text.startsWith("-") ? isBegun : goesOn;
        return Optional.of(text)
                .filter(t -> isSecond && SECOND.matcher(t).matches())
                .map(
                        t ->
                                at(
                                        source,
                                        line,
                                        0,
                                        "a second document in one file",
                                        "one project a file"));
    }

    private static Optional<Mistake> letter(SourceFile source, int line) {
        String text = source.lines().get(line);
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            int letter = text.codePointAt(i);
            if (isStrange(letter)) {
                return Optional.of(
                        at(source, line, i, "the " + name(letter), "the text without it"));
            }
        }
        return Optional.empty();
    }

    private static String name(int letter) {
        String kind =
                switch (letter) {
                    case 0x2028 -> "line separator";
                    case 0x2029 -> "paragraph separator";
                    case 0x85 -> "next line mark";
                    case 0xFEFF -> "byte order mark";
                    default -> "control character";
                };
        return String.format("%s U+%04X", kind, letter);
    }

    /** The first space of a text that is no plain one, by name; a plain one if there is none. */
    static String strangeSpace(String text) {
        int letter =
                text.codePoints()
                        .filter(c -> c != ' ' && Character.isSpaceChar(c))
                        .findFirst()
                        .orElse(' ');
        return switch (letter) {
            case 0xA0, 0x202F, 0x2007 -> String.format("a no-break space (U+%04X)", letter);
            case ' ' -> "a space";
            default -> String.format("a space of another width (U+%04X)", letter);
        };
    }

    private static String plain(String line) {
        return line.codePoints()
                .map(letter -> isStrange(letter) ? ' ' : letter)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    /** Whether a letter, though it can be typed or told by its number, stands in no text. */
    static boolean isStrange(int letter) {
        return switch (letter) {
            case '\t', '\n' -> false;
            case 0x2028, 0x2029, 0xFEFF, 0xFFFE, 0xFFFF -> true;
            default ->
                    Character.isISOControl(letter)
                            || Character.getType(letter) == Character.SURROGATE;
        };
    }

    private static Mistake at(SourceFile source, int line, int index, String found, String right) {
        int column = 1 + source.lines().get(line).codePointCount(0, index);
        return source.mistake(new Place(source.name(), line + 1, column), found, right);
    }
}
