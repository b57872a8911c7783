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
import secondbolt.measure.Tape;

/**
 * What a remake changes in a project, from its {@code workings.json} before and after: which
 * printed sheets are stale, and which figures moved.
 */
public final class Changes {
    /** More would not be read; the sheets' codes stand above them in any case. */
    private static final int MOST_VALUES = 30;

    private static final int LONGEST_LINE = 2_000;

    private static final String ARROW = " -> ";
    private static final String SHEETS = "sheets";

    private Changes() {}

    /**
     * One line for each change, sheets first; none if nothing changed or nothing was made before.
     *
     * @param before the text that the last run wrote, if there was one; anyone may have changed it
     * @param now the text that this run writes
     */
    public static List<String> between(Optional<String> before, String now) {
        if (before.isEmpty() || before.get().equals(now)) {
            return List.of();
        }
        Optional<KeptWorkings> old = KeptWorkings.read(before.get());
        if (old.isEmpty()) {
            return List.of(
                    "the last " + Notebook.WORKINGS + " cannot be read, so nothing was compared");
        }
        Optional<KeptWorkings> after = KeptWorkings.read(now);
        if (after.isEmpty()) {
            return List.of(
                    "the new " + Notebook.WORKINGS + " is too large, so nothing was compared");
        }
        List<String> lines = new ArrayList<>(sheets(codes(old.get()), codes(after.get())));
        Figures is = figures(after.get().all());
        lines.addAll(values(figures(old.get().all()), is, tape(after.get().all())));
        return lines.stream().map(Changes::line).toList();
    }

    /** A text of several lines is told in one, of bounded length. */
    private static String line(String text) {
        String line = text.replaceAll("[\\n\\t]+", " ");
        int letters = line.codePointCount(0, line.length());
        return letters <= LONGEST_LINE
                ? line
                : line.substring(0, line.offsetByCodePoints(0, LONGEST_LINE)) + "…";
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

    private static Map<String, String> codes(KeptWorkings workings) {
        Map<String, String> codes = new LinkedHashMap<>();
        for (Map<?, ?> sheet : workings.sheets()) {
            codes.put(String.valueOf(sheet.get("name")), String.valueOf(sheet.get("code")));
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
