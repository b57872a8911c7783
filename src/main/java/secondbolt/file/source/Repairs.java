package secondbolt.file.source;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The repairs worth a try near a mistake, the likeliest first. */
public final class Repairs {
    private static final int MOST_MISTAKES = 4;
    private static final int STEP = 2;

    /** The rank of repairs of lines that nothing is strange about by themselves. */
    private static final int LOOKS_SOUND = 10;

    /** What begins a key, an item or a bracket; other text may go on from the line before. */
    private static final Pattern BEGINS = Pattern.compile("^[-\\[{]|:(\\s|$)");

    /** A slip of the hand within a line, what it should be, and what is told of it. */
    private record Within(Pattern slip, String inserted, String found, String right) {}

    private static final List<Within> WITHIN =
            List.of(
                    new Within(
                            Pattern.compile("::(?=\\s|$)"), ":", "a colon too many", "one colon"),
                    new Within(
                            Pattern.compile("(?<=[|>])[-+]?[1-9][-+]?(?=\\s*$)"),
                            "",
                            "a figure after the mark of a text over several lines",
                            "`|` or `>` alone"),
                    new Within(
                            Pattern.compile("(?<=\\s)#(?=\\S)"),
                            "",
                            "a #, which makes what follows a note of your own",
                            "no #; a # after a space begins a note: a text with one stands in quotation"
                                    + " marks"),
                    new Within(
                            Pattern.compile("(?<=\\S)(?= {2,}(?:- |[\\p{L}][\\p{L} ]*:(\\s|$)))"),
                            "\n",
                            "two lines in one",
                            "each on a line of its own"),
                    new Within(
                            Pattern.compile("(?<=^ {0,60})- (?=\\S)"),
                            "",
                            "a dash, which begins one of a list",
                            "no dash"));

    private final List<String> lines;
    private final Layout layout;
    private final List<Ranked> repairs = new ArrayList<>();

    private Repairs(List<String> lines) {
        this.lines = lines;
        this.layout = new Layout(lines);
    }

    /**
     * The repairs of the lines at and round mistakes.
     *
     * @param mistakes told of the file, in its order; the first few are looked at
     * @param isOddOnly whether only lines are looked at that look odd by themselves
     */
    public static List<Repair> near(SourceFile file, List<Mistake> mistakes, boolean isOddOnly) {
        Repairs near = new Repairs(file.lines());
        Set<Integer> suspects = new LinkedHashSet<>();
        mistakes.stream()
                .map(Mistake::place)
                .filter(place -> place.file().equals(file.name()))
                .map(place -> place.line() - 1)
                .distinct()
                .limit(MOST_MISTAKES)
                .forEach(line -> near.suspect(line, suspects));
        suspects.forEach(near::repair);
        mistakes.stream()
                .limit(MOST_MISTAKES)
                .map(mistake -> mistake.place().line() - 2)
                .distinct()
                .flatMap(line -> JoinedNote.parted(near.lines, line))
                .forEach(repair -> near.add(LOOKS_SOUND - 1, repair));
        near.oneOfTwo();
        return near.repairs.stream()
                .filter(one -> !isOddOnly || one.rank() < LOOKS_SOUND)
                .sorted(Comparator.comparingInt(Ranked::rank))
                .map(Ranked::repair)
                .toList();
    }

    private record Ranked(int rank, Repair repair) {}

    /** The line itself, its neighbours, and those it hangs on. */
    private void suspect(int line, Set<Integer> suspects) {
        int before = layout.before(line);
        int after = layout.after(line);
        List<Integer> near = new ArrayList<>(List.of(line, before, after));
        near.add(before < 0 ? -1 : layout.before(before));
        near.addAll(layout.ancestors(line));
        near.addAll(before < 0 ? List.of() : layout.ancestors(before));
        near.stream()
                .filter(i -> i >= 0 && i < lines.size() && !layout.isEmpty(i))
                .forEach(suspects::add);
    }

    private void repair(int line) {
        String text = lines.get(line);
        int lead = lead(text);
        if (isOdd(text, lead) || BEGINS.matcher(text.substring(lead)).find()) {
            indents(line).stream()
                    .filter(indent -> !" ".repeat(indent).equals(text.substring(0, lead)))
                    .forEach(
                            indent ->
                                    add(
                                            rank(text, lead, indent)
                                                    + (isStep(line, indent) ? 0 : 1),
                                            reindented(line, lead, indent)));
        }
        plainSpaces(line);
        for (Within within : WITHIN) {
            Matcher slip = within.slip().matcher(text);
            if (slip.find()) {
                int column = 1 + text.codePointCount(0, slip.start());
                add(
                        within.inserted().equals("\n") || within.slip().pattern().startsWith("::")
                                ? 3
                                : 12,
                        new Repair(
                                line + 1,
                                slip.start(),
                                slip.end() - slip.start(),
                                within.inserted(),
                                column,
                                within.found(),
                                within.right()));
            }
        }
        if (!text.startsWith("- ", lead)) {
            add(
                    14,
                    new Repair(
                            line + 1,
                            lead,
                            0,
                            "- ",
                            lead + 1,
                            "a line without a dash before it",
                            "`- ` before it, as before each of a list"));
        }
    }

    /** A line that stands twice may be far from where that is noticed. */
    private void oneOfTwo() {
        IntStream.range(1, lines.size())
                .filter(i -> !layout.isEmpty(i) && lines.get(i).equals(lines.get(i - 1)))
                .limit(MOST_MISTAKES)
                .forEach(
                        i ->
                                add(
                                        LOOKS_SOUND - 1,
                                        new Repair(
                                                i + 1,
                                                0,
                                                lines.get(i).length(),
                                                "",
                                                1
                                                        + Math.min(
                                                                lead(lines.get(i)),
                                                                lines.get(i).length()),
                                                "a line that stands twice",
                                                "it once")));
    }

    private void add(int rank, Repair repair) {
        repairs.add(new Ranked(rank, repair));
    }

    /** A line that is indented like none round it is suspect before all others. */
    private static int rank(String text, int lead, int indent) {
        return (isOdd(text, lead) ? 0 : LOOKS_SOUND) + Math.abs(indent - lead);
    }

    /** Whether a line indented so would be one step further in than what it hangs on. */
    private boolean isStep(int line, int indent) {
        int above = layout.before(line);
        while (above >= 0 && indent > 0 && lead(lines.get(above)) >= indent) {
            above = layout.before(above);
        }
        return indent == 0 || (above >= 0 && lead(lines.get(above)) + STEP == indent);
    }

    private static boolean isOdd(String text, int lead) {
        return lead % STEP != 0 || !text.startsWith(" ".repeat(lead));
    }

    private Repair reindented(int line, int lead, int indent) {
        String before = lines.get(line).substring(0, lead);
        String found =
                before.indexOf('\t') >= 0
                        ? "a tab before a line"
                        : before.chars().allMatch(c -> c == ' ')
                                ? "a line indented by " + count(lead)
                                : "a line indented by " + StrangeMarks.strangeSpace(before);
        return new Repair(
                line + 1,
                0,
                lead,
                " ".repeat(indent),
                before.indexOf('\t') >= 0 ? 1 : lead + 1,
                found,
                count(indent) + ", like its neighbours");
    }

    private static String count(int spaces) {
        return spaces == 0 ? "no space" : spaces == 1 ? "1 space" : spaces + " spaces";
    }

    private void plainSpaces(int line) {
        String text = lines.get(line);
        String plain =
                text.codePoints()
                        .mapToObj(c -> Character.isSpaceChar(c) ? " " : Character.toString(c))
                        .collect(Collectors.joining());
        if (!plain.equals(text)) {
            int at = 0;
            while (text.charAt(at) == plain.charAt(at)) {
                at++;
            }
            add(
                    0,
                    new Repair(
                            line + 1,
                            0,
                            text.length(),
                            plain,
                            1 + text.codePointCount(0, at),
                            StrangeMarks.strangeSpace(text),
                            "plain spaces instead of no-break ones"));
        }
    }

    /** How far a line may be indented, by those round it. */
    private Set<Integer> indents(int line) {
        Set<Integer> indents = new LinkedHashSet<>();
        int before = layout.before(line);
        int after = layout.after(line);
        if (before >= 0) {
            int lead = lead(lines.get(before));
            indents.add(lead);
            indents.add(lead + STEP);
            layout.ancestors(before).forEach(i -> indents.add(lead(lines.get(i))));
        } else {
            indents.add(0);
        }
        if (after < lines.size()) {
            indents.add(lead(lines.get(after)));
        }
        return indents;
    }

    /** How many letters before a line are spaces of any kind. */
    private static int lead(String line) {
        int i = 0;
        while (i < line.length()
                && (line.charAt(i) == '\t' || Character.isSpaceChar(line.charAt(i)))) {
            i++;
        }
        return i;
    }
}
