package secondbolt.lay.pin;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.source.SourceFile;
import secondbolt.file.value.Placed;
import secondbolt.lay.plan.PlanFile;

/**
 * Which lines of a plan belong to which of its pieces.
 *
 * @param source the plan
 * @param starts the number of the first line of each, from 0, growing
 * @param end the number of the line after the last one's
 */
record EntryLines(SourceFile source, List<Integer> starts, int end) {
    /** Copies the list. */
    EntryLines {
        starts = List.copyOf(starts);
    }

    /** Nothing if a piece does not begin a line of its own, with nothing before it but its dash. */
    static Optional<EntryLines> of(SourceFile source, List<Placed<PlanFile.Entry>> entries) {
        List<Integer> starts = new ArrayList<>();
        for (Placed<PlanFile.Entry> entry : entries) {
            int line = entry.place().line() - 1;
            String before = source.lines().get(line).substring(0, entry.place().column() - 1);
            boolean isNew = starts.isEmpty() || line > starts.get(starts.size() - 1);
            if (!isNew || !before.strip().equals("-")) {
                return Optional.empty();
            }
            starts.add(line);
        }
        return Optional.of(new EntryLines(source, starts, end(source, starts)));
    }

    /** The last piece ends before the first line that stands no deeper than the list. */
    private static int end(SourceFile source, List<Integer> starts) {
        if (starts.isEmpty()) {
            return source.lines().size();
        }
        int last = starts.get(starts.size() - 1);
        int dash = source.lines().get(last).indexOf('-');
        int end = last + 1;
        for (int i = end; i < source.lines().size(); i++) {
            String line = source.lines().get(i);
            int indent = line.length() - line.stripLeading().length();
            if (!line.isBlank() && indent <= dash) {
                break;
            }
            end = line.isBlank() ? end : i + 1;
        }
        return end;
    }

    /** The lines of one piece, without blank ones and remarks that stand behind it. */
    List<String> own(int number) {
        List<String> all = source.lines().subList(starts.get(number), next(number));
        int last = all.size();
        while (last > 1 && isBetween(all.get(last - 1))) {
            last--;
        }
        return all.subList(0, last);
    }

    private static boolean isBetween(String line) {
        return line.isBlank() || line.startsWith("#");
    }

    private int next(int number) {
        return number + 1 < starts.size() ? starts.get(number + 1) : end;
    }

    /** All lines, with other ones instead of those of some, and more after the last one's. */
    List<String> with(Map<Integer, List<String>> instead, List<String> more) {
        List<String> lines = new ArrayList<>(source.lines().subList(0, starts.get(0)));
        for (int i = 0; i < starts.size(); i++) {
            List<String> own = own(i);
            lines.addAll(instead.getOrDefault(i, own));
            lines.addAll(source.lines().subList(starts.get(i) + own.size(), next(i)));
        }
        lines.addAll(more);
        lines.addAll(source.lines().subList(end, source.lines().size()));
        return lines;
    }

    /** All lines without any piece. */
    List<String> withNone() {
        if (starts.isEmpty()) {
            return source.lines();
        }
        List<String> lines = new ArrayList<>(source.lines().subList(0, starts.get(0)));
        lines.set(lineOf("pieces", lines), "pieces: []");
        lines.addAll(source.lines().subList(end, source.lines().size()));
        return lines;
    }

    /** With another value of a key of the whole file, which is put in before the pieces. */
    static List<String> telling(String key, String value, List<String> lines) {
        List<String> all = new ArrayList<>(lines);
        int old = lineOf(key, all);
        if (old >= 0) {
            all.remove(old);
            while (old < all.size() && isGoingOn(all.get(old))) {
                all.remove(old);
            }
        }
        all.add(lineOf("pieces", all), key + ": " + value);
        return all;
    }

    private static boolean isGoingOn(String line) {
        return line.startsWith(" ") || line.startsWith("-") || line.startsWith("]");
    }

    private static int lineOf(String key, List<String> lines) {
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).startsWith(key)) {
                return i;
            }
        }
        return -1;
    }

    /** Lines as a text with the line ends the plan has. */
    String text(List<String> lines) {
        return String.join(source.text().contains("\r\n") ? "\r\n" : "\n", lines);
    }
}
