package secondbolt.file.source;

import java.util.ArrayList;
import java.util.List;

/**
 * How the lines of a file are indented, for finding the line to blame.
 *
 * @param lines of the file, or what is left of them after a slip
 */
record Layout(List<String> lines) {
    /**
     * How far a line is indented; behind a tab nobody knows, and nothing is taken to hang on it.
     */
    static int indent(String line) {
        int i = 0;
        while (i < line.length() && line.charAt(i) == ' ') {
            i++;
        }
        return i < line.length() && line.charAt(i) == '\t' ? Integer.MAX_VALUE : i;
    }

    /** Whether it begins with a space that YAML does not count as one. */
    static boolean beginsWithStrangeSpace(String line) {
        String rest = line.substring(Math.min(line.length(), indent(line)));
        return !rest.isEmpty() && Character.isSpaceChar(rest.charAt(0));
    }

    /** The nearest line before with anything on it, or -1. */
    int before(int line) {
        int i = line - 1;
        while (i >= 0 && isEmpty(i)) {
            i--;
        }
        return i;
    }

    /**
     * The lines that a line may hang on: the nearest one that is indented less, and for an item of
     * a list the nearest one indented alike that is none.
     */
    List<Integer> above(int line) {
        List<Integer> above = new ArrayList<>();
        int indent = indent(lines.get(line));
        boolean isItem = isItem(line);
        int i = before(line);
        while (i >= 0 && indent(lines.get(i)) >= indent) {
            if (isItem && indent(lines.get(i)) == indent && !isItem(i)) {
                above.add(i);
                isItem = false;
            }
            i = before(i);
        }
        if (i >= 0) {
            above.add(i);
        }
        return above;
    }

    private boolean isItem(int line) {
        return lines.get(line).stripLeading().startsWith("-");
    }

    /** The lines that this one hangs on by its indent, the nearest first. */
    List<Integer> ancestors(int line) {
        List<Integer> ancestors = new ArrayList<>();
        int indent = indent(lines.get(line));
        for (int i = before(line); i >= 0 && indent > 0; i = before(i)) {
            if (indent(lines.get(i)) < indent) {
                indent = indent(lines.get(i));
                ancestors.add(i);
            }
        }
        return ancestors;
    }

    /** The nearest line after with anything on it, or how many lines there are. */
    int after(int line) {
        int i = line + 1;
        while (i < lines.size() && isEmpty(i)) {
            i++;
        }
        return i;
    }

    boolean isEmpty(int line) {
        String text = lines.get(line).strip();
        return text.isEmpty() || text.startsWith("#");
    }

    /**
     * Whether the first of two lines is the one to blame, if the second is indented more though the
     * first has a value already: it is, if the lines round both are indented like the second.
     */
    boolean standsOut(int first, int second) {
        int less = indent(lines.get(first));
        int more = indent(lines.get(second));
        int above = before(first);
        if (more <= less || above < 0) {
            return false;
        }
        int below = after(second);
        int indentAbove = indent(lines.get(above));
        int indentBelow = below < lines.size() ? indent(lines.get(below)) : -1;
        boolean isOneOfMoreAbove = indentAbove >= more;
        boolean isFirstOfItsBlock = indentAbove < less;
        return (isOneOfMoreAbove && (indentBelow == more || indentBelow < less))
                || (isFirstOfItsBlock && indentBelow == more);
    }
}
