package secondbolt.notebook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.json.JsonReader;
import secondbolt.file.source.Visible;

/**
 * The {@code workings.json} of an earlier run, which may have come from anyone: one that says what
 * no run can have written is as if it were not there. So what is shown of it on a page or told of
 * it is of bounded length, and counts can be added up.
 *
 * @param all what it holds, by name
 */
record KeptWorkings(Map<String, Object> all) {
    private static final int LONGEST_TEXT = 20_000;
    private static final int LONGEST_LINE = 1_000;
    private static final int MOST_SHEETS = 5_000;
    private static final int MOST_PAGES = 10_000;

    /** In any unit that figures have: a kilometre of cloth, or a thousand square metres. */
    private static final double LARGEST = 1e9;

    private static final String SHEETS = "sheets";
    private static final String PAGES = "pages";

    /** The workings that a text holds; nothing if it is not what a run writes. */
    static Optional<KeptWorkings> read(String text) {
        return JsonReader.readObject(text)
                .filter(KeptWorkings::isPlain)
                .map(KeptWorkings::new)
                .filter(kept -> kept.isLine("title") && kept.areSheets());
    }

    private static boolean isPlain(Object value) {
        if (value instanceof Map<?, ?> map) {
            return arePlain(map.keySet()) && arePlain(map.values());
        }
        if (value instanceof Collection<?> list) {
            return arePlain(list);
        }
        if (value instanceof Number number) {
            return Math.abs(number.doubleValue()) <= LARGEST;
        }
        return !(value instanceof String text)
                || (text.length() <= LONGEST_TEXT
                        && text.codePoints().noneMatch(KeptWorkings::isUnseen));
    }

    private static boolean arePlain(Collection<?> values) {
        return values.stream().allMatch(KeptWorkings::isPlain);
    }

    /** A text may have several lines. */
    private static boolean isUnseen(int letter) {
        return Visible.isUnseen(letter) && letter != '\n' && letter != '\t';
    }

    private boolean isLine(String key) {
        return isLineOrNothing(all.get(key));
    }

    private static boolean isLineOrNothing(Object value) {
        return value == null
                || (value instanceof String text
                        && text.length() <= LONGEST_LINE
                        && text.indexOf('\n') < 0);
    }

    private boolean areSheets() {
        Object sheets = all.get(SHEETS);
        return sheets == null
                || (sheets instanceof List<?> list
                        && list.size() <= MOST_SHEETS
                        && list.stream().allMatch(KeptWorkings::isSheet));
    }

    private static boolean isSheet(Object value) {
        return value instanceof Map<?, ?> sheet
                && isLineOrNothing(sheet.get("name"))
                && isLineOrNothing(sheet.get("code"))
                && (!sheet.containsKey(PAGES) || isCount(sheet.get(PAGES)));
    }

    private static boolean isCount(Object value) {
        return value instanceof Number number
                && number.doubleValue() == number.intValue()
                && number.intValue() >= 0
                && number.intValue() <= MOST_PAGES;
    }

    /** A text it holds under a name, if it does. */
    Optional<String> text(String key) {
        return all.get(key) instanceof String text ? Optional.of(text) : Optional.empty();
    }

    /** Whether it shows what is known of a body. */
    boolean isPersonal() {
        return all.containsKey(WorkingsFile.PERSONAL);
    }

    /** Its sheets, each by what it tells of it. */
    List<Map<?, ?>> sheets() {
        return maps(SHEETS);
    }

    /** How many pages its sheets print on. */
    int pages() {
        return sheets().stream()
                .mapToInt(sheet -> sheet.get(PAGES) instanceof Number n ? n.intValue() : 0)
                .sum();
    }

    /** How many of its findings forbid cutting. */
    int stops() {
        return (int)
                maps("findings").stream()
                        .filter(finding -> "stop".equals(finding.get("level")))
                        .count();
    }

    private List<Map<?, ?>> maps(String key) {
        List<Map<?, ?>> maps = new ArrayList<>();
        if (all.get(key) instanceof List<?> list) {
            for (Object item : list) {
                if (item instanceof Map<?, ?> map) {
                    maps.add(map);
                }
            }
        }
        return maps;
    }
}
