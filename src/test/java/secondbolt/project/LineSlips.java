package secondbolt.project;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The slips of a hand that typing one line can bring, each on its own. */
final class LineSlips {
    /** The kinds, in the order of the table; each makes another line of one, or the same. */
    private static final Map<String, BiFunction<String, SplittableRandom, String>> KINDS = kinds();

    private LineSlips() {}

    /**
     * A file with one slip.
     *
     * @param kind of slip
     * @param lines of the file with it
     * @param guilty the lines, from 1, of which any may be blamed
     */
    record Slipped(String kind, List<String> lines, List<Integer> guilty) {
        String text() {
            return String.join("\n", lines);
        }
    }

    /** All slips of a line of a sound file, each once. */
    static List<Slipped> of(List<String> sound, int line) {
        List<Slipped> all = new ArrayList<>();
        String text = sound.get(line);
        KINDS.forEach(
                (kind, slip) -> {
                    String by = slip.apply(text, new SplittableRandom(line * 31L + kind.length()));
                    if (!by.equals(text)) {
                        List<String> lines = new ArrayList<>(sound);
                        lines.set(line, by);
                        all.add(new Slipped(kind, lines, List.of(line + 1)));
                    }
                });
        if (!text.isBlank()) {
            List<String> twice = new ArrayList<>(sound);
            twice.add(line, text);
            all.add(new Slipped("line twice", twice, List.of(line + 1, line + 2)));
        }
        if (line + 1 < sound.size() && !sound.get(line + 1).isBlank() && !text.isBlank()) {
            List<String> joined = new ArrayList<>(sound);
            joined.set(line, text + joined.remove(line + 1));
            all.add(new Slipped("joined with the next", joined, List.of(line + 1)));
        }
        return all;
    }

    private static Map<String, BiFunction<String, SplittableRandom, String>> kinds() {
        Map<String, BiFunction<String, SplittableRandom, String>> kinds = new LinkedHashMap<>();
        kinds.put("one space more", (line, r) -> line.isBlank() ? line : " " + line);
        kinds.put("two spaces more", (line, r) -> line.isBlank() ? line : "  " + line);
        kinds.put("one space less", (line, r) -> line.replaceFirst("^ ", ""));
        kinds.put("two spaces less", (line, r) -> line.replaceFirst("^  ", ""));
        kinds.put("tab for its indent", (line, r) -> line.replaceFirst("^ +", "\t"));
        kinds.put("colon deleted", (line, r) -> replaced(line, r, ":(?= |$)", ""));
        kinds.put("colon doubled", (line, r) -> replaced(line, r, ":(?= |$)", "::"));
        kinds.put("no space after the colon", (line, r) -> replaced(line, r, ": ", ":"));
        kinds.put("quotation mark added", (line, r) -> replaced(line, r, "(?=[\\w.])", "\""));
        kinds.put("quotation mark deleted", (line, r) -> replaced(line, r, "\"", ""));
        kinds.put("bracket deleted", (line, r) -> replaced(line, r, "[\\[\\]{}]", ""));
        kinds.put("bracket added", (line, r) -> replaced(line, r, "(?<=[\\w\\]}])(?=,|$)", "]"));
        kinds.put("bracket opened", (line, r) -> replaced(line, r, "(?<= )(?=[\\w\\[{])", "["));
        kinds.put("comma deleted", (line, r) -> replaced(line, r, ",", ""));
        kinds.put("comma doubled", (line, r) -> replaced(line, r, ",", ",,"));
        kinds.put("key's letter doubled", (line, r) -> key(line, r, "(\\w)", "$1$1"));
        kinds.put("key's letter deleted", (line, r) -> key(line, r, "\\w", ""));
        kinds.put("key's letters swapped", (line, r) -> key(line, r, "(\\w)(\\w)", "$2$1"));
        kinds.put("no-break space", (line, r) -> replaced(line, r, " ", "\u00a0"));
        kinds.put("narrow no-break space", (line, r) -> replaced(line, r, " ", "\u202f"));
        kinds.put("wide space before it", (line, r) -> line.replaceFirst("^  ", "\u3000"));
        kinds.put("line separator", (line, r) -> replaced(line, r, "(?<=\\S)(?=\\S)", "\u2028"));
        kinds.put("dash deleted", (line, r) -> line.replaceFirst("^( *)- ", "$1"));
        kinds.put("dash added", (line, r) -> line.replaceFirst("^( *)(?=[\\w{\\[\"])", "$1- "));
        kinds.put("O for a digit", (line, r) -> replaced(line, r, "\\d", "O"));
        kinds.put("# before a value", (line, r) -> replaced(line, r, "(?<=: )(?=\\S)", "#"));
        return kinds;
    }

    private static String key(String line, SplittableRandom random, String pattern, String by) {
        Matcher key = Pattern.compile("^( *(?:- )?)([\\w ]+)(:.*)$").matcher(line);
        return key.matches()
                ? key.group(1) + replaced(key.group(2), random, pattern, by) + key.group(3)
                : line;
    }

    /** One of the places where a pattern fits, replaced. */
    private static String replaced(String line, SplittableRandom r, String pattern, String by) {
        if (line.strip().startsWith("#")) {
            return line;
        }
        Matcher at = Pattern.compile(pattern).matcher(line);
        List<Integer> places = new ArrayList<>();
        while (at.find()) {
            places.add(at.start());
        }
        if (places.isEmpty()) {
            return line;
        }
        at.reset();
        at.find(places.get(r.nextInt(places.size())));
        StringBuilder made = new StringBuilder();
        at.appendReplacement(made, by);
        return made.append(line.substring(at.end())).toString();
    }
}
