package secondbolt.project;

import static secondbolt.project.PlainYaml.list;
import static secondbolt.project.PlainYaml.load;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import secondbolt.file.Key;
import secondbolt.lay.plan.PlanFile;

/** The words that may stand alone between backticks. */
final class AdviceWords {
    private static final Pattern QUOTED = Pattern.compile("`([^`]+)`");

    private AdviceWords() {}

    /** Whether it is a key, a word that some key takes, or a name or an alteration of hers. */
    static boolean isKnown(String file, Advice advice) {
        String words = advice.line();
        boolean isDrawn = advice.said().contains("draw one named `" + words + "`");
        if (isDrawn || words.equals("secondbolt pin") || words.equals(PlanFile.NAME)) {
            return true;
        }
        Set<String> known = new LinkedHashSet<>(Set.of("[]"));
        known(AdvisedFile.ROOT.keys(), known);
        gather(load(file), known);
        String bare = words.replaceFirst(":$", "");
        String hers =
                AdvisedFile.ALTERATIONS.stream()
                        .filter(v -> bare.startsWith(v + " "))
                        .findFirst()
                        .orElse("");
        return known.contains(bare)
                || Stream.of(bare.substring(hers.length()).strip().split(" and |, "))
                        .allMatch(known::contains)
                || known.contains(bare.substring(hers.length()).strip());
    }

    private static void known(List<Key<?>> keys, Set<String> known) {
        for (Key<?> key : keys) {
            known.add(key.name());
            Matcher words = QUOTED.matcher(key.form().words());
            while (words.find()) {
                known.add(words.group(1));
            }
            known(key.form().keys(), known);
        }
    }

    private static void gather(Object value, Set<String> known) {
        if (value instanceof Map<?, ?> map) {
            map.forEach(
                    (key, inside) -> {
                        known.add(String.valueOf(key));
                        gather(inside, known);
                    });
        } else if (value instanceof List<?> list) {
            list.forEach(item -> gather(item, known));
        } else {
            known.add(String.valueOf(value));
        }
    }
}
