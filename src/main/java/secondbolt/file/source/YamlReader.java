package secondbolt.file.source;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * Reads YAML as nodes, and goes on after a slip of syntax: the line that is wrong is passed over,
 * with what hangs on it, and the rest is read, so that one missing quote does not hide the other
 * mistakes of the file.
 */
public final class YamlReader {
    private static final int MOST_SLIPS_TOLD = 30;
    private static final Pattern HASH = Pattern.compile("\\s#[^\"']*$");
    private static final Pattern TIGHT = Pattern.compile("^ *+(?:- )?+[\\p{L}\\p{N} -]++:(?=\\S)");

    private static final Pattern HAS_KEY = Pattern.compile(":(\\s|$)");
    private static final Pattern HAS_VALUE = Pattern.compile(":\\s+[^\\s#]");

    private static final Pattern ESCAPE_BEYOND =
            Pattern.compile("\\\\U(?!0000|000[0-9A-Fa-f]|0010)[0-9A-Fa-f]{8}");

    private final SourceFile source;
    private final Mistakes mistakes;
    private final List<String> lines;

    /** Lines, from 0, whose key may have lost its value with a line that was passed over. */
    private final Set<Integer> bereft = new HashSet<>();

    /** Lines, from 1, with a letter that nobody can see: what else they bring is no news. */
    private final Set<Integer> told = new HashSet<>();

    private final List<Mistake> strange;
    private int slips;
    private boolean whole;

    /** Makes a reader that tells the mistakes it finds. */
    public YamlReader(SourceFile source, Mistakes mistakes) {
        this.source = source;
        this.mistakes = mistakes;
        StrangeMarks marks = StrangeMarks.in(source);
        mistakes.addAll(marks.mistakes());
        this.lines = new ArrayList<>(marks.lines());
        this.slips = marks.mistakes().size();
        this.whole = slips == 0;
        this.strange = marks.mistakes();
        strange.forEach(mistake -> told.add(mistake.place().line()));
    }

    /** How many slips were passed over. */
    public int slips() {
        return slips;
    }

    /** Without what is told of a line only because of a letter in it that nobody can see. */
    public List<Mistake> once(List<Mistake> all) {
        return all.stream()
                .filter(
                        m ->
                                strange.contains(m)
                                        || !m.place().file().equals(source.name())
                                        || !told.contains(m.place().line()))
                .toList();
    }

    /** Whether nothing was passed over. */
    public boolean isWhole() {
        return whole;
    }

    /** The root of the file, if there is any. */
    public Optional<Node> read() {
        for (int passed = 0; passed < MOST_SLIPS_TOLD; passed++) {
            String text = String.join("\n", lines);
            NodeBuilder builder = new NodeBuilder(source, text, bereft);
            try {
                Optional<Node> root =
                        builder.build(new ParserImpl(new StreamReader(text), new LoaderOptions()));
                builder.mistakes().forEach(this::tell);
                return root;
            } catch (MarkedYAMLException e) {
                passOver(SyntaxSlip.of(e));
            } catch (NodeBuilder.Unreadable e) {
                whole = false;
                slips++;
                tell(e.in(source));
                return Optional.empty();
            } catch (YAMLException | IllegalArgumentException e) {
                passOver(escape(builder.lastLine()));
            }
        }
        return Optional.empty();
    }

    private void tell(Mistake mistake) {
        if (!told.contains(mistake.place().line())) {
            mistakes.add(mistake);
        }
    }

    /** The scanner takes an escape for a letter though there is none of its number. */
    private SyntaxSlip escape(int from) {
        for (int line = from; line < lines.size(); line++) {
            Matcher beyond = ESCAPE_BEYOND.matcher(lines.get(line));
            if (beyond.find()) {
                return new SyntaxSlip(
                        line,
                        beyond.start(),
                        "`" + beyond.group() + "`, which is no letter",
                        "the letter itself");
            }
        }
        return new SyntaxSlip(from, 0, "text that is not YAML", "`key: value`");
    }

    private void passOver(SyntaxSlip slip) {
        whole = false;
        slips++;
        int seen = Math.min(slip.line(), lines.size() - 1);
        int line = culprit(slip, seen);
        boolean isOut = line != seen && HAS_KEY.matcher(lines.get(line)).find();
        int column = line == seen ? column(slip) : 1 + indent(lines.get(line));
        Place place = new Place(source.name(), line + 1, column);
        tell(
                source.mistake(
                        place,
                        isOut ? "a line that is not indented like its neighbours" : slip.found(),
                        isOut ? otherIndent(line, seen) : slip.right() + unseen(line)));
        drop(line, !slip.isAboutIndent() || !HAS_VALUE.matcher(lines.get(line)).find());
    }

    /** What she cannot see in a line, or may not know of: strange spaces, a # in the midst. */
    private String unseen(int line) {
        String text = lines.get(line);
        boolean isStrange = text.codePoints().anyMatch(c -> c != ' ' && Character.isSpaceChar(c));
        return (isStrange ? ", with plain spaces instead of no-break ones" : "")
                + (TIGHT.matcher(text).find() ? ", with a space behind the colon" : "")
                + (HASH.matcher(text).find()
                        ? "; a # after a space begins a note of your own: a text with one stands in"
                                + " quotation marks"
                        : "");
    }

    private String otherIndent(int line, int neighbour) {
        boolean isStrange = Layout.beginsWithStrangeSpace(lines.get(line));
        return (isStrange ? "plain spaces instead of no-break ones, " : "")
                + indent(lines.get(neighbour))
                + " spaces before its key";
    }

    /** Passes over a line, and over what hangs on it if something may. */
    private void drop(int line, boolean mayCarry) {
        int indent = indent(lines.get(line));
        bereft.addAll(new Layout(lines).above(line));
        lines.set(line, "");
        for (int next = line + 1;
                mayCarry && next < lines.size() && hangsOn(indent, next);
                next++) {
            lines.set(next, "");
        }
    }

    /**
     * A line without a colon is noticed only at the colon of the next line, which is sound; the
     * scanner took both for one long text. So it is with a line that is indented less than its
     * neighbours.
     */
    private int culprit(SyntaxSlip slip, int seen) {
        Layout layout = new Layout(lines);
        int before = layout.before(seen);
        if (!slip.isColonTooMany() || before < 0) {
            return seen;
        }
        boolean isLongText =
                indent(lines.get(before)) == indent(lines.get(seen))
                        && !HAS_KEY.matcher(lines.get(before)).find();
        boolean hasValue = HAS_VALUE.matcher(lines.get(before)).find();
        return isLongText || (hasValue && layout.standsOut(before, seen)) ? before : seen;
    }

    private int column(SyntaxSlip slip) {
        String line = lines.get(Math.min(slip.line(), lines.size() - 1));
        return 1 + Math.min(slip.column(), line.codePointCount(0, line.length()));
    }

    private boolean hangsOn(int indent, int next) {
        return lines.get(next).isBlank() || indent(lines.get(next)) > indent;
    }

    private static int indent(String line) {
        return Layout.indent(line);
    }

    /** One slip of syntax; line and column from 0. */
    record SyntaxSlip(int line, int column, String found, String right) {
        private static final String COLON_TOO_MANY =
                "a line without a colon after its key, a colon too many, or a line that is indented"
                        + " too far";

        private static final String DOES_NOT_FIT = "a line that does not fit the ones above it";

        boolean isColonTooMany() {
            return found.equals(COLON_TOO_MANY);
        }

        boolean isAboutIndent() {
            return isColonTooMany() || found.equals(DOES_NOT_FIT);
        }

        static SyntaxSlip of(MarkedYAMLException e) {
            String problem = String.valueOf(e.getProblem());
            String context = String.valueOf(e.getContext());
            // The scanner notices an open quote or bracket, or a key without a colon, only further
            // down; its beginning is where the maker must look.
            boolean begins =
                    context.contains("simple key")
                            || context.contains("quoted scalar")
                            || context.contains("flow mapping")
                            || context.contains("flow sequence");
            Mark mark =
                    begins && e.getContextMark() != null
                            ? e.getContextMark()
                            : e.getProblemMark() != null ? e.getProblemMark() : e.getContextMark();
            int line = mark == null ? 0 : mark.getLine();
            int column = mark == null ? 0 : mark.getColumn();
            return new SyntaxSlip(line, column, found(problem, context), right(problem, context));
        }

        private static String found(String problem, String context) {
            if (problem.contains("'\\t") || problem.contains("TAB")) {
                return "a tab";
            }
            if (context.contains("simple key")) {
                return "a line without a colon after its key";
            }
            if (context.contains("quoted scalar")) {
                return "a quotation mark that is not closed, or text after one that is";
            }
            if (context.contains("flow mapping") || context.contains("flow sequence")) {
                return "a bracket that is not closed, or a stray mark inside it";
            }
            if (problem.contains("mapping values are not allowed")) {
                return COLON_TOO_MANY;
            }
            if (problem.contains("expected the node content")) {
                return "a comma or a bracket where a value belongs";
            }
            if (problem.contains("cannot start any token")) {
                return "a letter that YAML keeps for itself";
            }
            if (context.contains("block")) {
                return DOES_NOT_FIT;
            }
            return "a slip of YAML (" + problem + ")";
        }

        private static String right(String problem, String context) {
            if (problem.contains("'\\t") || problem.contains("TAB")) {
                return "spaces";
            }
            if (context.contains("simple key")) {
                return "`key: value`";
            }
            if (context.contains("quoted scalar")) {
                return "text with a quotation mark at both ends or at none, as 5/8 in for 5/8\"";
            }
            if (context.contains("flow mapping") || context.contains("flow sequence")) {
                return "[one, two] or {key: value, key: value}, closed on the same line";
            }
            if (problem.contains("expected the node content")) {
                return "one value between two commas, as in [1, 2]";
            }
            if (problem.contains("cannot start any token")) {
                return "the value in quotation marks";
            }
            return "`key: value`, indented like its neighbours";
        }
    }
}
