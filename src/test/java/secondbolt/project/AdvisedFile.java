package secondbolt.project;

import static secondbolt.project.PlainYaml.list;
import static secondbolt.project.PlainYaml.load;
import static secondbolt.project.PlainYaml.mapping;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.garment.PieceEdge;
import secondbolt.lay.kept.LayDesk;
import secondbolt.worksheet.Subject;

/** A project file into which advice is written where a maker would write it. */
final class AdvisedFile {
    static final Form<Project> ROOT = ProjectSection.form(Topics.all(LayDesk.inMemory()));

    /** What holds names of the maker's own, and what holds a list. */
    private static final Set<String> NAMED =
            Set.of("cloth", "pieces", "closures", "hems", "designs", "cords", "binding", "elastic");

    private static final Set<String> LISTS =
            Set.of(
                    "alterations",
                    "seams",
                    "openings",
                    "cut so far",
                    "flaws",
                    "features",
                    "meet",
                    "supplies",
                    "notions");

    static final List<String> ALTERATIONS = List.of("lengthen", "shorten", "widen", "narrow");

    private static final Pattern DRAWN = Pattern.compile("draw one named `([^`]+)`");

    private final Map<String, Object> root;
    private final Advice advice;

    private AdvisedFile(Map<String, Object> root, Advice advice) {
        this.root = root;
        this.advice = advice;
    }

    /** Whether a line says what to write, and not only under which key. */
    static boolean isWritten(String line) {
        return line.startsWith("{") || line.startsWith("- ") || line.matches("[^ ].*: .+");
    }

    /** The file with the advice in it. */
    static String with(String file, Advice advice) {
        @SuppressWarnings("unchecked") // a project file is a mapping
        Map<String, Object> root = (Map<String, Object>) load(file);
        AdvisedFile advised = new AdvisedFile(root, advice);
        advised.write(new AdviceBlanks(root, advice).filled(load(advice.line()), ROOT.keys(), ""));
        return PlainYaml.dump(root);
    }

    private void write(Object written) {
        if (written instanceof List<?> list) {
            list.forEach(this::write);
            return;
        }
        Map<String, Object> lines = mapping(written);
        if (lines.containsKey("join")) {
            join(lines);
        } else if (ALTERATIONS.stream().anyMatch(lines::containsKey)) {
            drawFirst();
            list(root, "alterations").add(lines);
        } else {
            lines.forEach(this::write);
        }
    }

    /** The line that is to be drawn before the alteration is pasted. */
    private void drawFirst() {
        Matcher drawn = DRAWN.matcher(advice.said());
        if (drawn.find()) {
            Map<String, Object> pieces = mapping(mapping(root.get("pattern")).get("pieces"));
            Map<String, Object> first = mapping(pieces.values().iterator().next());
            mapping(first.computeIfAbsent("lines", l -> new LinkedHashMap<>()))
                    .put(drawn.group(1), "10 cm");
        }
    }

    /** The same join with what is meant; its sides may have changed over. */
    private void join(Map<String, Object> join) {
        List<Object> seams = list(mapping(root.get("pattern")), "seams");
        Set<Object> sides = new LinkedHashSet<>((List<?>) join.get("join"));
        for (int i = 0; i < seams.size(); i++) {
            if (sides.equals(new LinkedHashSet<>(PlainYaml.sides(seams.get(i))))) {
                seams.set(i, join);
                return;
            }
        }
        throw new AssertionError("no such join for " + advice);
    }

    /** The join that a finding is about, as a mapping. */
    private Map<String, Object> thisJoin() {
        List<Object> seams = list(mapping(root.get("pattern")), "seams");
        Set<PieceEdge> about = edges();
        for (int i = 0; i < seams.size(); i++) {
            List<?> sides = PlainYaml.sides(seams.get(i));
            Set<PieceEdge> edges =
                    sides.stream()
                            .flatMap(side -> Stream.of(String.valueOf(side).split(" \\+ ")))
                            .map(edge -> edge.replaceFirst("^\\d+ ", ""))
                            .flatMap(edge -> PieceEdge.parse(edge).stream())
                            .collect(Collectors.toSet());
            if (edges.equals(about)) {
                if (seams.get(i) instanceof List<?>) {
                    Map<String, Object> join = new LinkedHashMap<>();
                    join.put("join", sides);
                    seams.set(i, join);
                }
                return mapping(seams.get(i));
            }
        }
        throw new AssertionError("no such join for " + advice);
    }

    /** The edges that a finding is about; none if it is about something else. */
    private Set<PieceEdge> edges() {
        return advice.about().orElseThrow() instanceof Subject.Edges edges
                ? edges.edges()
                : Set.of();
    }

    private void write(String key, Object value) {
        List<Map<String, Object>> places =
                advice.said().contains("` on this join") ? List.of(thisJoin()) : places(key);
        if (places.isEmpty()) {
            throw new AssertionError("no place for " + key + " of " + advice);
        }
        places.forEach(place -> put(place, key, value));
    }

    private static void put(Map<String, Object> place, String key, Object value) {
        if (value instanceof Map<?, ?> && place.get(key) instanceof Map<?, ?>) {
            Map<String, Object> there = mapping(place.get(key));
            mapping(value).forEach((inside, v) -> put(there, inside, v));
        } else {
            place.put(key, value);
        }
    }

    /** Where a key stands: as it is said, else by what the finding is about, else the highest. */
    private List<Map<String, Object>> places(String key) {
        List<List<String>> paths = new ArrayList<>();
        paths(ROOT.keys(), List.of(), key, paths);
        return paths.stream()
                .min((a, b) -> Integer.compare(strangeness(a), strangeness(b)))
                .map(this::reached)
                .orElse(List.of());
    }

    private static void paths(
            List<Key<?>> keys, List<String> above, String wanted, List<List<String>> paths) {
        for (Key<?> key : keys) {
            List<String> inside = new ArrayList<>(above);
            inside.add(key.name());
            if (key.name().equals(wanted)) {
                paths.add(above);
            }
            paths(key.form().keys(), inside, wanted, paths);
        }
    }

    /** How little a place is what was meant. */
    private int strangeness(List<String> path) {
        String section = path.isEmpty() ? "" : path.get(0);
        boolean isSaid =
                !path.isEmpty() && advice.said().contains("nder `" + path.get(path.size() - 1));
        boolean isAbout = section.equals(home()) && path.size() <= 2;
        return path.size() + (isSaid ? 0 : 20) + (isAbout ? 0 : 10);
    }

    /** The section of what a finding is about. */
    private String home() {
        Optional<Subject> about = advice.about();
        if (about.isEmpty()) {
            return "";
        }
        if (advice.code().startsWith("cut-") && !advice.code().equals("cut-one-hand")) {
            return "cut so far";
        }
        Subject subject = about.get();
        if (subject instanceof Subject.Cloth || subject instanceof Subject.Stock) {
            return "cloth";
        }
        if (subject instanceof Subject.Closure) {
            return "closures";
        }
        if (subject instanceof Subject.Hem) {
            return "hems";
        }
        if (subject instanceof Subject.Supply) {
            return "supplies";
        }
        return subject.words().equals("wearer") ? "wearer" : "pattern";
    }

    /** The mappings at the end of a path, in the file; what is not there yet is begun. */
    private List<Map<String, Object>> reached(List<String> path) {
        List<Map<String, Object>> here = List.of(root);
        for (String step : path) {
            List<Map<String, Object>> next = new ArrayList<>();
            for (Map<String, Object> from : here) {
                next.addAll(inside(from, step));
            }
            here = next;
        }
        return here;
    }

    private List<Map<String, Object>> inside(Map<String, Object> from, String step) {
        if (LISTS.contains(step)) {
            return items(list(from, step));
        }
        Map<String, Object> there = mapping(from.computeIfAbsent(step, s -> new LinkedHashMap<>()));
        if (!NAMED.contains(step)) {
            return List.of(there);
        }
        Optional<String> told = there.keySet().stream().filter(advice::isTold).findFirst();
        if (told.isPresent()) {
            return List.of(mapping(there.get(told.get())));
        }
        List<String> called = there.keySet().stream().filter(this::isCalled).toList();
        String longest =
                called.stream().max((a, b) -> Integer.compare(a.length(), b.length())).orElse("");
        if (step.equals("pieces") && (longest.isEmpty() || advice.code().equals(Advice.BLOCK))) {
            return List.of(mapping(there.values().iterator().next()));
        }
        if (longest.isEmpty()) {
            // A cloth of a role that there is none of is a new one.
            return List.of(mapping(there.computeIfAbsent("other", s -> begun(step))));
        }
        return Stream.of(longest).map(name -> mapping(there.get(name))).toList();
    }

    private boolean isCalled(String name) {
        return advice.about().map(about -> about.words().contains(name)).orElse(false)
                || (advice.about().isEmpty() && advice.said().contains(name));
    }

    private static Map<String, Object> begun(String step) {
        Map<String, Object> begun = new LinkedHashMap<>();
        if (step.equals("cloth")) {
            begun.put("size", new ArrayList<>(List.of("150 cm", "300 cm")));
        }
        return begun;
    }

    /** The things, or the cut pieces that the advice speaks of: the blamed one, or all so named. */
    private List<Map<String, Object>> items(List<Object> list) {
        List<Map<String, Object>> things =
                list.stream()
                        .filter(item -> item instanceof Map<?, ?>)
                        .map(PlainYaml::mapping)
                        .filter(item -> advice.said().startsWith("`" + item.get("item") + "` "))
                        .toList();
        if (!things.isEmpty()) {
            return things;
        }
        List<Map<String, Object>> called =
                list.stream()
                        .filter(item -> item instanceof Map<?, ?>)
                        .map(PlainYaml::mapping)
                        .filter(item -> isBlamed(String.valueOf(item.get("piece"))))
                        .filter(item -> !item.containsKey("spoilt"))
                        .toList();
        List<Map<String, Object>> there = called.stream().filter(this::isAtThePlace).toList();
        boolean isOfAll =
                advice.said().contains("each that is cut of it") || advice.code().endsWith("told");
        return there.isEmpty() ? called.subList(0, isOfAll ? called.size() : 1) : there;
    }

    private boolean isBlamed(String piece) {
        return advice.said().startsWith(piece + " ")
                || edges().stream().anyMatch(edge -> edge.piece().equals(piece));
    }

    /**
     * Whether it is said where it was cut, and this was; or that one of two serves as the other.
     */
    private boolean isAtThePlace(Map<String, Object> item) {
        List<?> at = (List<?>) item.get("at");
        return advice.said()
                .contains(
                        "(" + at.get(0) + " cm from the left, " + at.get(1) + " cm from the top)");
    }
}
