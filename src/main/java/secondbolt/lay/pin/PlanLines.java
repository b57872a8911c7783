package secondbolt.lay.pin;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The lines of a plan, each with the end it has in the file, and its own keys in them.
 *
 * @param lines each with its end
 * @param indent of the keys of the whole file
 * @param newLine how its lines end
 */
record PlanLines(List<String> lines, String indent, String newLine) {
    static final String PIECES = "pieces";

    private static final Pattern AFTER_LINE_END = Pattern.compile("(?<=\n)|(?<=\r)(?!\n)");

    /** A key that stands nowhere else, so that it tells how deep the keys of the file stand. */
    private static final Pattern UNITS = Pattern.compile("( *)([\"']?)units\\2\\s*:(\\s.*)?");

    /** Copies the lines. */
    PlanLines {
        lines = List.copyOf(lines);
    }

    /** Nothing if its keys do not stand in lines of their own, as between braces. */
    static Optional<PlanLines> of(String text) {
        List<String> lines = List.of(AFTER_LINE_END.split(text));
        String first = lines.get(0);
        String end = first.substring(bare(first).length());
        return lines.stream()
                .map(line -> UNITS.matcher(bare(line)))
                .filter(Matcher::matches)
                .findFirst()
                .map(units -> new PlanLines(lines, units.group(1), end.isEmpty() ? "\n" : end))
                .filter(plan -> plan.number(PIECES) >= 0);
    }

    /** A line without its end. */
    static String bare(String line) {
        return line.replaceFirst("[\r\n]+$", "");
    }

    /** Whether a line is blank, or has nothing but a remark. */
    static boolean isBetween(String line) {
        return line.isBlank() || line.stripLeading().startsWith("#");
    }

    /** How deep a line stands. */
    static int depth(String line) {
        return line.length() - line.stripLeading().length();
    }

    /** The remark at the end of a line; nothing if there is none. */
    static Optional<String> remark(String line) {
        char within = 0;
        char before = ':';
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            boolean isAfterSpace = i == 0 || Character.isWhitespace(line.charAt(i - 1));
            if (within != 0) {
                i += within == '"' && c == '\\' ? 1 : 0;
                within = c == within ? 0 : within;
            } else if (c == '#' && isAfterSpace) {
                return Optional.of(bare(line.substring(i)).stripTrailing());
            } else if ((c == '"' || c == '\'') && ":[{,-".indexOf(before) >= 0) {
                within = c;
            }
            before = Character.isWhitespace(c) ? before : c;
        }
        return Optional.empty();
    }

    private int number(String key) {
        Pattern pattern = Pattern.compile(indent + "([\"']?)" + key + "\\1\\s*:(\\s.*)?");
        for (int i = 0; i < lines.size(); i++) {
            if (pattern.matcher(bare(lines.get(i))).matches()) {
                return i;
            }
        }
        return -1;
    }

    /** The number of the line after the value of a key. */
    private int end(int key) {
        int end = key + 1;
        for (int i = end; i < lines.size(); i++) {
            String line = lines.get(i);
            if (!isBetween(line) && !goesOn(line)) {
                break;
            }
            end = isBetween(line) ? end : i + 1;
        }
        return end;
    }

    private boolean goesOn(String line) {
        return depth(line) > indent.length() || "-]}".indexOf(line.stripLeading().charAt(0)) >= 0;
    }

    /**
     * With another value of a key, every remark of the old one kept.
     *
     * @param value empty if lines follow
     * @param more the lines after the key's, without their ends
     */
    PlanLines with(String key, String value, List<String> more) {
        List<String> all = new ArrayList<>(lines);
        int at = number(key);
        List<String> old = at < 0 ? List.of() : lines.subList(at, end(at));
        at = at < 0 ? number(PIECES) : at;
        all.subList(at, at + old.size()).clear();
        List<String> anew = new ArrayList<>();
        String remark = old.isEmpty() ? "" : remark(old.get(0)).map(r -> "  " + r).orElse("");
        anew.add(indent + key + ":" + (value.isEmpty() ? "" : " " + value) + remark);
        old.stream()
                .skip(1)
                .flatMap(line -> remark(line).stream())
                .forEach(line -> anew.add(indent + line));
        anew.addAll(more);
        all.addAll(at, ended(anew));
        return new PlanLines(all, indent, newLine);
    }

    /** Lines with the end that those of the file have. */
    List<String> ended(List<String> bare) {
        return bare.stream().map(line -> line + newLine).toList();
    }

    /** The same file with other lines. */
    PlanLines with(List<String> others) {
        return new PlanLines(others, indent, newLine);
    }

    /** The text of the file: a line without an end gets one, but for the last. */
    String text() {
        StringBuilder text = new StringBuilder();
        for (String line : lines) {
            boolean isOpen = text.length() > 0 && !isLineEnd(text.charAt(text.length() - 1));
            text.append(isOpen ? newLine : "").append(line);
        }
        return text.toString();
    }

    private static boolean isLineEnd(char last) {
        return last == '\n' || last == '\r';
    }
}
