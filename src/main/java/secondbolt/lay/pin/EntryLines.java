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

    /** The text with other lines instead of those of some, and more lines after the last one's. */
    String with(Map<Integer, List<String>> instead, List<String> more) {
        List<String> lines = new ArrayList<>(source.lines().subList(0, starts.get(0)));
        for (int i = 0; i < starts.size(); i++) {
            int next = i + 1 < starts.size() ? starts.get(i + 1) : end;
            List<String> own = source.lines().subList(starts.get(i), next);
            lines.addAll(instead.getOrDefault(i, own));
        }
        lines.addAll(more);
        lines.addAll(source.lines().subList(end, source.lines().size()));
        return joined(lines);
    }

    /** The text without any piece. */
    String withNone() {
        if (starts.isEmpty()) {
            return source.text();
        }
        List<String> lines = new ArrayList<>(source.lines().subList(0, starts.get(0)));
        int head = lines.size() - 1;
        while (!lines.get(head).strip().startsWith("pieces")) {
            head--;
        }
        lines.set(head, "pieces: []");
        lines.addAll(source.lines().subList(end, source.lines().size()));
        return joined(lines);
    }

    private String joined(List<String> lines) {
        return String.join(source.text().contains("\r\n") ? "\r\n" : "\n", lines);
    }
}
