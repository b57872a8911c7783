package secondbolt.lay.pin;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import secondbolt.file.source.Mistake;
import secondbolt.file.source.Place;
import secondbolt.file.source.SourceFile;
import secondbolt.file.value.Placed;
import secondbolt.lay.plan.PlanFile;

/**
 * Which lines of a plan belong to which of its pieces.
 *
 * @param file the plan
 * @param starts the number of the first line of each, from 0, growing
 * @param keys the column of each that its keys stand in, from 0
 * @param end the number of the line after the last one's
 */
record EntryLines(PlanLines file, List<Integer> starts, List<Integer> keys, int end) {
    private static final Pattern KEY =
            Pattern.compile("\\s*+(?:-\\s++)?([a-z ]{1,60}):.*+", Pattern.DOTALL);
    private static final String TO_BEGIN_ANEW = "; or the file taken away, and all pinned anew";

    /** Copies the lists. */
    EntryLines {
        starts = List.copyOf(starts);
        keys = List.copyOf(keys);
    }

    /** Why a plan cannot be brought up to date line by line; nothing if it can. */
    static Optional<Mistake> mistake(SourceFile source, List<Placed<PlanFile.Entry>> entries) {
        if (PlanLines.of(source.text()).isEmpty()) {
            return Optional.of(
                    source.mistake(
                            Place.beginningOf(source.name()),
                            "a plan between braces",
                            "its keys on lines of their own, as the program writes them"
                                    + TO_BEGIN_ANEW));
        }
        Set<Integer> begun = new HashSet<>();
        return entries.stream()
                .filter(entry -> !(begun.add(entry.place().line()) && isBehindDash(source, entry)))
                .findFirst()
                .map(
                        entry ->
                                source.mistake(
                                        entry.place(),
                                        "a piece that does not begin its line behind a dash",
                                        "each piece on lines of its own, as the program writes"
                                                + " them"
                                                + TO_BEGIN_ANEW));
    }

    private static boolean isBehindDash(SourceFile source, Placed<PlanFile.Entry> entry) {
        String line = source.lines().get(entry.place().line() - 1);
        return line.substring(0, entry.place().column() - 1).strip().equals("-");
    }

    /** The pieces of a plan that has no {@link #mistake}. */
    static EntryLines of(SourceFile source, List<Placed<PlanFile.Entry>> entries) {
        PlanLines file = PlanLines.of(source.text()).orElseThrow();
        List<Integer> starts = entries.stream().map(entry -> entry.place().line() - 1).toList();
        List<Integer> keys = entries.stream().map(entry -> entry.place().column() - 1).toList();
        return new EntryLines(file, starts, keys, end(file.lines(), starts));
    }

    /** The last piece ends before the first line that stands no deeper than the list. */
    private static int end(List<String> lines, List<Integer> starts) {
        if (starts.isEmpty()) {
            return lines.size();
        }
        int last = starts.get(starts.size() - 1);
        int end = last + 1;
        for (int i = end; i < lines.size(); i++) {
            boolean isBetween = PlanLines.isBetween(lines.get(i));
            if (!isBetween && PlanLines.depth(lines.get(i)) <= PlanLines.depth(lines.get(last))) {
                break;
            }
            end = isBetween ? end : i + 1;
        }
        return end;
    }

    /** The lines of one piece, without blank ones and remarks that stand behind it. */
    List<String> own(int number) {
        List<String> all = file.lines().subList(starts.get(number), next(number));
        int last = all.size();
        while (last > 1 && PlanLines.isBetween(all.get(last - 1))) {
            last--;
        }
        return all.subList(0, last);
    }

    private int next(int number) {
        return number + 1 < starts.size() ? starts.get(number + 1) : end;
    }

    /** The lines of a piece as one would stand in place of a piece, or behind the last. */
    List<String> indented(PlanEntry entry, int number) {
        int dash =
                starts.isEmpty()
                        ? file.indent().length() + 2
                        : PlanLines.depth(file.lines().get(starts.get(number)));
        int key = starts.isEmpty() ? dash + 2 : keys.get(number);
        List<String> lines = new ArrayList<>();
        for (String line : entry.lines()) {
            String before = lines.isEmpty() ? " ".repeat(dash) + "-" : "";
            lines.add(before + " ".repeat(key - before.length()) + line);
        }
        return lines;
    }

    /** The lines of a piece as one would stand in place of another, with the remarks of that. */
    List<String> instead(PlanEntry entry, int number) {
        List<String> lines = new ArrayList<>(indented(entry, number));
        List<String> notes = new ArrayList<>();
        for (String line : own(number)) {
            PlanLines.remark(line)
                    .filter(remark -> !PlanEntry.isOfPlace(remark))
                    .ifPresent(
                            remark -> {
                                int same = sameKey(line, lines);
                                if (same < 0) {
                                    notes.add(" ".repeat(keys.get(number)) + remark);
                                } else {
                                    lines.set(same, lines.get(same) + "  " + remark);
                                }
                            });
        }
        lines.addAll(notes);
        return lines;
    }

    /** Which of some lines without a remark has the key of this one; below zero if none. */
    private static int sameKey(String line, List<String> lines) {
        Matcher key = KEY.matcher(line);
        for (int i = 0; key.matches() && i < lines.size(); i++) {
            Matcher other = KEY.matcher(lines.get(i));
            boolean isSame = other.matches() && other.group(1).strip().equals(key.group(1).strip());
            if (isSame && PlanLines.remark(lines.get(i)).isEmpty()) {
                return i;
            }
        }
        return -1;
    }

    /**
     * All lines, with other ones instead of those of some, and more after the last one's.
     *
     * @param instead without their ends
     * @param more without their ends
     */
    PlanLines with(Map<Integer, List<String>> instead, List<String> more) {
        boolean isNone =
                more.isEmpty()
                        && starts.size() == instead.size()
                        && instead.values().stream().allMatch(List::isEmpty);
        if (starts.isEmpty()) {
            return isNone ? file : file.with(PlanLines.PIECES, "", more);
        }
        List<String> all = file.lines();
        List<String> lines = new ArrayList<>(all.subList(0, starts.get(0)));
        for (int i = 0; i < starts.size(); i++) {
            List<String> own = own(i);
            lines.addAll(instead.containsKey(i) ? file.ended(instead.get(i)) : own);
            lines.addAll(all.subList(starts.get(i) + own.size(), next(i)));
        }
        lines.addAll(file.ended(more));
        lines.addAll(all.subList(end, all.size()));
        return isNone ? file.with(lines).with(PlanLines.PIECES, "[]", List.of()) : file.with(lines);
    }

    /**
     * The same number of lines, those of some left blank.
     *
     * @param isBlank of the number of a piece
     */
    PlanLines blank(Set<Integer> isBlank) {
        List<String> lines = new ArrayList<>(file.lines());
        for (int i : isBlank) {
            int from = starts.get(i);
            lines.subList(from, from + own(i).size()).replaceAll(line -> file.newLine());
        }
        return isBlank.size() == starts.size() && !starts.isEmpty()
                ? file.with(lines).with(PlanLines.PIECES, "[]", List.of())
                : file.with(lines);
    }
}
