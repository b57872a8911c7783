package secondbolt.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import secondbolt.file.source.Place;
import secondbolt.file.source.SourceFile;
import secondbolt.file.value.Trouble;
import secondbolt.file.value.UnknownName;

/**
 * Finds the name that was spelt amiss where it was given, by those that are spoken of and that
 * nothing bears. A name that stands once in the whole file and is one slip of the hand away from
 * one that stands there more often is the one to tell, once, in place of all that speak of the
 * other.
 *
 * @param source the file that gives the names
 */
record Misnamed(SourceFile source) {
    private static final int MOST_LINES_TOLD = 5;
    private static final int MOST_NAMES = 50;
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{M}\\p{N}]+");
    private static final Pattern STRAY = Pattern.compile("[^\\p{L}\\p{M}\\p{N}\\s.'’/&+-]");
    private static final Pattern NOTE = Pattern.compile("(?:^|\\s)#");

    /** What is spoken of, and the name that was given. */
    private record Two(String spoken, String given) {}

    /** The mistakes to tell for those found. */
    List<Trouble> settled(List<Trouble> found) {
        Map<Two, List<Trouble>> speaking = new LinkedHashMap<>();
        Map<UnknownName, Optional<Two>> known = new HashMap<>();
        List<Trouble> told = new ArrayList<>();
        for (Trouble trouble : found) {
            Optional<Two> two = trouble.unknown().flatMap(name -> likely(name, known));
            if (two.isPresent()) {
                speaking.computeIfAbsent(two.get(), t -> new ArrayList<>()).add(trouble);
            } else {
                told.add(trouble);
            }
        }
        speaking.forEach((two, troubles) -> told.addAll(of(two, troubles)));
        return told;
    }

    /** The same for each name once; after very many no more are looked for. */
    private Optional<Two> likely(UnknownName name, Map<UnknownName, Optional<Two>> known) {
        if (!known.containsKey(name) && known.size() < MOST_NAMES) {
            known.put(name, likely(name));
        }
        return known.getOrDefault(name, Optional.empty());
    }

    /** The one name that may have been meant, if it stands nowhere but where it was given. */
    private Optional<Two> likely(UnknownName unknown) {
        List<String> near =
                unknown.near().stream()
                        .filter(given -> count(given, 2) == 1)
                        .filter(given -> !isFamiliar(given))
                        .toList();
        return near.size() == 1 && !isStrayIn(unknown.name(), near.get(0))
                ? Optional.of(new Two(unknown.name(), near.get(0)))
                : Optional.empty();
    }

    private List<Trouble> of(Two two, List<Trouble> speaking) {
        Optional<Place> given = place(two.given());
        if (given.isEmpty()) {
            return speaking;
        }
        if (isFamiliar(two.spoken()) || isStrayIn(two.given(), two.spoken())) {
            return List.of(
                    new Trouble(
                            given.get(),
                            "`"
                                    + two.given()
                                    + "`, of which nothing speaks, while `"
                                    + two.spoken()
                                    + "` is spoken of in "
                                    + lines(speaking),
                            "one spelling in all places"));
        }
        return speaking.stream()
                .map(
                        one ->
                                new Trouble(
                                        one.place(),
                                        one.found()
                                                + ", while nothing speaks of `"
                                                + two.given()
                                                + "` in line "
                                                + given.get().line(),
                                        "one spelling in both places"))
                .toList();
    }

    private String lines(List<Trouble> speaking) {
        List<String> lines =
                speaking.stream()
                        .map(Trouble::place)
                        .sorted()
                        .map(
                                place ->
                                        place.line()
                                                + (place.file().equals(source.name())
                                                        ? ""
                                                        : " of " + place.file()))
                        .distinct()
                        .toList();
        return (lines.size() == 1 ? "line " : "lines ")
                + lines.stream().limit(MOST_LINES_TOLD).collect(Collectors.joining(", "))
                + (lines.size() > MOST_LINES_TOLD ? ", …" : "");
    }

    /** Whether each of its words stands elsewhere in the file as well. */
    private boolean isFamiliar(String name) {
        return WORD.matcher(name).results().allMatch(word -> count(word.group(), 2) > 1)
                && !STRAY.matcher(name).find();
    }

    private static boolean isStrayIn(String name, String other) {
        return STRAY.matcher(name).find() && !STRAY.matcher(other).find();
    }

    /** How often it stands in the file as a whole, up to so many. */
    private int count(String name, int most) {
        return (int) whole(name).matcher(source.text()).results().limit(most).count();
    }

    /** A colon at its end is another one than that behind a key. */
    private static Pattern whole(String name) {
        return Pattern.compile(
                "(?<![\\p{L}\\p{M}\\p{N}])"
                        + Pattern.quote(name)
                        + (name.endsWith(":") ? "(?=:)" : "(?![\\p{L}\\p{M}\\p{N}])"));
    }

    /**
     * Where a name is given that stands once in the file: as a key or a value, in no other text.
     */
    private Optional<Place> place(String name) {
        Pattern giving =
                Pattern.compile(
                        "(?:^|[\\[{,:-])\\s*[\"']?("
                                + Pattern.quote(name)
                                + ")[\"']?\\s*(?:[:,\\]}#]|$)");
        List<String> lines = source.lines();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            Matcher at = giving.matcher(line);
            if (line.contains(name) && at.find()) {
                String before = line.substring(0, at.start(1));
                return NOTE.matcher(before).find()
                        ? Optional.empty()
                        : Optional.of(
                                new Place(
                                        source.name(),
                                        i + 1,
                                        1 + before.codePointCount(0, before.length())));
            }
        }
        return Optional.empty();
    }
}
