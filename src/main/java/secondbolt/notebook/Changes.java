package secondbolt.notebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.figure.Difference;
import secondbolt.figure.Differences;
import secondbolt.figure.FigureWords;
import secondbolt.figure.Figures;
import secondbolt.figure.ReadFigures;
import secondbolt.file.json.JsonReader;
import secondbolt.measure.Tape;

/**
 * What a remake changes in a project, from its {@code workings.json} before and after: which
 * printed sheets are stale, and which figures moved.
 */
public final class Changes {
    /** More would not be read; the sheets' codes stand above them in any case. */
    private static final int MOST_VALUES = 30;

    private static final String ARROW = " -> ";
    private static final String SHEETS = "sheets";

    private Changes() {}

    /**
     * One line for each change, sheets first; none if nothing changed or nothing was made before.
     *
     * @param before the text that the last run wrote, if there was one
     * @param now the text that this run writes
     * @throws IllegalArgumentException if there was one and the new text is not a {@code
     *     workings.json}
     */
    public static List<String> between(Optional<String> before, String now) {
        if (before.isEmpty() || before.get().equals(now)) {
            return List.of();
        }
        Map<String, Object> after =
                JsonReader.readObject(now)
                        .orElseThrow(() -> new IllegalArgumentException("not JSON: " + now));
        Optional<Map<String, Object>> old = JsonReader.readObject(before.get());
        if (old.isEmpty()) {
            return List.of(
                    "the last " + Notebook.WORKINGS + " cannot be read, so nothing was compared");
        }
        List<String> lines = new ArrayList<>(sheets(codes(old.get()), codes(after)));
        lines.addAll(values(figures(old.get()), figures(after), tape(after)));
        return List.copyOf(lines);
    }

    private static List<String> sheets(Map<String, String> before, Map<String, String> now) {
        List<String> lines = new ArrayList<>();
        now.forEach(
                (name, code) -> {
                    String old = before.get(name);
                    if (old == null) {
                        lines.add("new sheet " + name + ": code " + code);
                    } else if (!old.equals(code)) {
                        lines.add(
                                "sheet "
                                        + name
                                        + ": code "
                                        + old
                                        + ARROW
                                        + code
                                        + "; printed sheets with code "
                                        + old
                                        + " are stale");
                    }
                });
        before.forEach(
                (name, code) -> {
                    if (!now.containsKey(name)) {
                        lines.add(
                                "sheet "
                                        + name
                                        + " is no longer made; printed sheets with code "
                                        + code
                                        + " are stale");
                    }
                });
        return lines;
    }

    private static Map<String, String> codes(Map<String, Object> workings) {
        Map<String, String> codes = new LinkedHashMap<>();
        if (workings.get(SHEETS) instanceof List<?> sheets) {
            for (Object item : sheets) {
                if (item instanceof Map<?, ?> sheet) {
                    codes.put(String.valueOf(sheet.get("name")), String.valueOf(sheet.get("code")));
                }
            }
        }
        return codes;
    }

    private static Figures figures(Map<String, Object> workings) {
        Map<String, Object> rest = new LinkedHashMap<>(workings);
        rest.remove(SHEETS);
        return ReadFigures.of(rest);
    }

    private static Tape tape(Map<String, Object> workings) {
        return Tape.INCH.symbol().equals(workings.get("units")) ? Tape.INCH : Tape.CENTIMETRE;
    }

    private static List<String> values(Figures before, Figures now, Tape tape) {
        List<Difference> differences = Differences.between(before, now);
        FigureWords words = new FigureWords(tape);
        List<String> lines = new ArrayList<>();
        differences.stream().limit(MOST_VALUES).map(words::of).forEach(lines::add);
        if (differences.size() > MOST_VALUES) {
            lines.add("and " + (differences.size() - MOST_VALUES) + " more");
        }
        return lines;
    }
}
