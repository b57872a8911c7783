package secondbolt.fuzz;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Makes another text of a sound one: by letters, by words, by lines, by what is nested. */
final class TextMutation {
    /** Texts that are likely to be taken for something else, or to break what holds them. */
    private static final List<String> ODD =
            List.of(
                    "",
                    " ",
                    "\t",
                    "\n",
                    "\r",
                    "\u0000",
                    "\u001B[2J",
                    "\u00A0",
                    "\u2028",
                    "\uFEFF",
                    "\uD800",
                    "\u202E",
                    "\u0301",
                    "\uD83D\uDC57",
                    "0",
                    "-0",
                    "-1",
                    "1e308",
                    "1e-308",
                    "NaN",
                    "Infinity",
                    "999999999999",
                    "0.0000001",
                    "1/0",
                    "1/3",
                    "3,5",
                    "5 m",
                    "500 m",
                    "1/16 in",
                    "12 ligne",
                    "100 %",
                    "~",
                    "null",
                    "true",
                    "no",
                    "none",
                    "unknown",
                    "yes",
                    "[]",
                    "{}",
                    "[[]]",
                    "{a: {}}",
                    "*a",
                    "&a b",
                    "!!int x",
                    "<<",
                    "? a",
                    "- a",
                    "---",
                    "...",
                    "%YAML",
                    "# x",
                    "|",
                    ">",
                    "|9",
                    "'",
                    "\"",
                    "`",
                    "\"\\UFFFFFFFF\"",
                    "\"\\uD800\"",
                    "\"\\0\"",
                    ":",
                    ": ",
                    ",",
                    "[",
                    "]",
                    "{",
                    "}",
                    "../../x",
                    "/dev/zero",
                    "x.svg",
                    "front",
                    "left",
                    "fold",
                    "like: front");

    private final SplittableRandom random;

    TextMutation(SplittableRandom random) {
        this.random = random;
    }

    /** One to four changes of a text. */
    String of(String text) {
        String now = text;
        int changes = 1 + random.nextInt(1 + random.nextInt(4));
        for (int i = 0; i < changes; i++) {
            now = changed(now);
        }
        return now;
    }

    private String changed(String text) {
        if (text.isEmpty()) {
            return odd();
        }
        return switch (random.nextInt(16)) {
            case 0 -> letterGone(text);
            case 1 -> letterTwice(text);
            case 2 -> put(text, random.nextInt(text.length() + 1), odd());
            case 3 ->
                    put(text, random.nextInt(text.length() + 1), "" + (char) random.nextInt(0x250));
            case 4 -> text.substring(0, random.nextInt(text.length()));
            case 5 -> valueChanged(text);
            case 6, 12, 13, 14 -> numberChanged(text);
            case 7 -> wordOfElsewhere(text);
            default -> linesChanged(text);
        };
    }

    private String odd() {
        return ODD.get(random.nextInt(ODD.size()));
    }

    private static String put(String text, int at, String more) {
        return text.substring(0, at) + more + text.substring(at);
    }

    private String letterGone(String text) {
        int at = random.nextInt(text.length());
        return text.substring(0, at) + text.substring(at + 1);
    }

    private String letterTwice(String text) {
        int at = random.nextInt(text.length());
        return put(text, at, text.substring(at, at + 1));
    }

    /** What stands behind a colon, or between two marks, becomes something odd. */
    private String valueChanged(String text) {
        int from = next(text, ":,[={\"(", random.nextInt(text.length()));
        int to = next(text, "\n,]}\")", from);
        return from >= to ? text : text.substring(0, from) + " " + odd() + text.substring(to);
    }

    private static int next(String text, String marks, int from) {
        for (int i = from; i < text.length(); i++) {
            if (marks.indexOf(text.charAt(i)) >= 0) {
                return marks.indexOf(text.charAt(i)) < 0 ? i : i + (marks.startsWith(":") ? 1 : 0);
            }
        }
        return text.length();
    }

    private String numberChanged(String text) {
        int from = next(text, "0123456789", random.nextInt(text.length()));
        int to = from;
        while (to < text.length() && Character.isDigit(text.charAt(to))) {
            to++;
        }
        String other =
                switch (random.nextInt(5)) {
                    case 0 -> "0";
                    case 1 -> "-" + text.substring(from, to);
                    case 2 -> text.substring(from, to) + "0";
                    case 3 -> Integer.toString(random.nextInt(2000));
                    default -> random.nextInt(100) + "." + random.nextInt(1000);
                };
        return text.substring(0, from) + other + text.substring(to);
    }

    /** A word is put in the place of another one. */
    private String wordOfElsewhere(String text) {
        int[] word = word(text);
        int[] other = word(text);
        return text.substring(0, other[0])
                + text.substring(word[0], word[1])
                + text.substring(other[1]);
    }

    private int[] word(String text) {
        int at = random.nextInt(text.length());
        int from = at;
        while (from > 0 && Character.isLetterOrDigit(text.charAt(from - 1))) {
            from--;
        }
        int to = at;
        while (to < text.length() && Character.isLetterOrDigit(text.charAt(to))) {
            to++;
        }
        return new int[] {from, to};
    }

    private String linesChanged(String text) {
        List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
        int at = random.nextInt(lines.size());
        String line = lines.get(at);
        switch (random.nextInt(7)) {
            case 0 -> lines.remove(at);
            case 1 -> lines.add(at, line);
            case 2 -> lines.set(at, " ".repeat(1 + random.nextInt(4)) + line);
            case 3 -> lines.set(at, line.stripLeading());
            case 4 -> lines.add(random.nextInt(lines.size()), line);
            case 5 -> {
                String other = lines.get(random.nextInt(lines.size()));
                lines.set(at, line + other.strip());
            }
            default -> {
                int to = Math.min(lines.size(), at + 1 + random.nextInt(6));
                List<String> block = List.copyOf(lines.subList(at, to));
                lines.addAll(random.nextInt(lines.size() + 1), block);
            }
        }
        return String.join("\n", lines);
    }
}
