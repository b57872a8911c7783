package secondbolt.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.lay.kept.LayDesk;
import secondbolt.lay.plan.PlanFile;

/**
 * Each line that a page tells a maker to write is written into her file: it must be accepted, and
 * must mend what it was advised for.
 */
class AdviceTest {
    private static final Path OWN = Path.of("src/test/resources/examples/advice");

    /** The plan of cutting that belongs to {@code pinned.yaml}. */
    private static final String PINNED = "pinned.plan.yaml";

    /** Only a try, or a part of another line that is advised with it. */
    private static final Set<String> NO_CURE =
            Set.of("effort: thorough lay-no-room", "free: none cord-place-not-told");

    /** Hyphenated words of the topics that are no finding's code. */
    private static final Set<String> NO_CODES =
            Set.of(
                    "all-pieces",
                    "ease-stitch",
                    "one-way",
                    "pre-shrink",
                    "pre-shrunk",
                    "sewn-in",
                    "stay-stitch",
                    "stay-stitching",
                    "yardage-summary");

    /**
     * Codes that no project file by itself leads to: a search that is stopped by hand, an inward
     * corner, which comes of a traced drawing, and rules of topics that contradict each other.
     */
    private static final Set<String> NOT_BY_A_FILE =
            Set.of(
                    "lay-search-stopped",
                    "lay-search-stopped-early",
                    "hem-inward-corner",
                    "work-circle");

    private static final Pattern CODE = Pattern.compile("\"([a-z]+(?:-[a-z]+)+)\"");

    static List<Path> projects() throws IOException {
        try (Stream<Path> demos = Files.list(Path.of("projects"));
                Stream<Path> own = Files.list(OWN)) {
            return Stream.concat(demos.map(demo -> demo.resolve("project.yaml")), own)
                    .filter(file -> Files.isRegularFile(file) && !file.endsWith(PINNED))
                    .sorted()
                    .toList();
        }
    }

    /** All codes that the topics can tell stand in one of the projects here. */
    @Test
    void areAdvisedByTheProjectsHere() throws IOException {
        Set<String> told = new TreeSet<>(NOT_BY_A_FILE);
        for (Path file : projects()) {
            told.addAll(Advice.codes(Tried.of(file).before()));
        }
        Set<String> all = new TreeSet<>();
        try (Stream<Path> sources = Files.walk(Path.of("src/main/java/secondbolt"))) {
            for (Path source : sources.filter(AdviceTest::isOfATopic).toList()) {
                CODE.matcher(Files.readString(source)).results().forEach(m -> all.add(m.group(1)));
            }
        }
        all.removeAll(NO_CODES);
        assertTrue(all.size() > 100, all.toString());
        assertEquals(all, told);
    }

    private static boolean isOfATopic(Path source) {
        String room = Path.of("src/main/java/secondbolt").relativize(source).getName(0).toString();
        return Set.of(
                                "cloth", "fit", "closure", "hem", "safety", "cutting", "lay",
                                "prepare", "bleach", "dye", "sewing", "trim", "supply", "work")
                        .contains(room)
                && source.toString().endsWith(".java");
    }

    /**
     * A project, worked out once for all that is asked of it.
     *
     * @param text as written
     * @param plan of cutting that lies beside it
     * @param workshop where it is worked out, as often as something is written into it
     * @param before as written
     */
    private record Tried(
            String text, Optional<SourceFile> plan, Workshop workshop, Workings before) {
        private static final Map<Path, Tried> KNOWN = new ConcurrentHashMap<>();

        static Tried of(Path file) {
            return KNOWN.computeIfAbsent(file, Tried::read);
        }

        private static Tried read(Path file) {
            try {
                String text = Files.readString(file);
                Workshop workshop = new Workshop(Topics.all(LayDesk.inMemory()));
                Mistakes mistakes = new Mistakes();
                Optional<SourceFile> plan = planOf(file);
                Workings before =
                        work(workshop, text, plan, mistakes)
                                .orElseThrow(
                                        () -> new AssertionError(file + " " + mistakes.inOrder()));
                return new Tried(text, plan, workshop, before);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    private static Optional<SourceFile> planOf(Path file) throws IOException {
        String name = file.getFileName().toString().replace(".yaml", ".plan.yaml");
        Path plan =
                file.endsWith("project.yaml")
                        ? file.resolveSibling(PlanFile.NAME)
                        : file.resolveSibling(name);
        return Files.exists(plan)
                ? Optional.of(SourceFile.of(PlanFile.NAME, Files.readString(plan)))
                : Optional.empty();
    }

    @ParameterizedTest
    @MethodSource("projects")
    void isAcceptedAndMends(Path file) {
        Tried tried = Tried.of(file);
        List<String> wrong = new ArrayList<>();
        Map<String, Optional<Workings>> after = new HashMap<>();
        for (Advice advice : Advice.of(tried.before())) {
            fault(tried, advice, after).ifPresent(fault -> wrong.add(fault + ": " + advice));
        }
        assertEquals(List.of(), wrong, String.join("\n", wrong));
    }

    private static Optional<Workings> work(
            Workshop workshop, String text, Optional<SourceFile> plan, Mistakes mistakes) {
        return workshop.work(SourceFile.of("project.yaml", text), plan, "tried", mistakes);
    }

    /** What is wrong with a line that is advised. */
    private static Optional<String> fault(
            Tried tried, Advice advice, Map<String, Optional<Workings>> known) {
        if (!AdvisedFile.isWritten(advice.line())) {
            return AdviceWords.isKnown(tried.text(), advice)
                    ? Optional.empty()
                    : Optional.of("neither a key, nor a word, nor a name of hers");
        }
        String advised = AdvisedFile.with(tried.text(), advice);
        Mistakes mistakes = new Mistakes();
        Optional<Workings> after =
                known.computeIfAbsent(
                        advised, text -> work(tried.workshop(), text, tried.plan(), mistakes));
        if (after.isEmpty()) {
            return Optional.of("refused, " + mistakes.inOrder() + " in\n" + advised);
        }
        boolean isCure =
                !advice.line().contains("…")
                        && !NO_CURE.contains(advice.line() + " " + advice.code());
        return isCure && advice.isStillSaid(after.get())
                ? Optional.of("still said")
                : Optional.empty();
    }
}
