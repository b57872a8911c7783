package secondbolt.fuzz;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.stream.Collectors;
import secondbolt.project.PlainYaml;

/**
 * Takes as many variants of sound projects as are asked for, most of them valid and none of them
 * sensible, and prints each that ends in what must never be:
 *
 * <pre>
 * mvn -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=secondbolt.fuzz.Variants -Dexec.args="10000 1"
 * </pre>
 */
public final class Variants {
    /** One of so many that are taken is printed in memory. */
    private static final int EACH_MADE = 10;

    /** The kinds of changes, each taken as often as any other. */
    private static final List<Function<Map<String, Object>, List<Change>>> KINDS =
            List.of(
                    OutlineChanges::of,
                    WrittenChanges::of,
                    ValueChanges::limits,
                    ValueChanges::references,
                    ValueChanges::items);

    private static final String PROJECT = "project.yaml";
    private static final String PLAN = "plan.yaml";

    private final List<Map<String, String>> sound = new ArrayList<>();
    private final SplittableRandom random;
    private final Trial trial;
    private final Map<String, List<List<Change>>> changes = new LinkedHashMap<>();
    private int taken;

    /**
     * Variants of the demos and of the strangers' projects.
     *
     * @param seed of the chance
     * @param folder in which they are tried
     */
    Variants(long seed, Path folder) {
        sound.addAll(Mutants.projects());
        sound.add(pinned("projects/check-apron/project.yaml", "projects/check-apron/plan.yaml"));
        String advice = "src/test/resources/examples/advice/pinned";
        sound.add(pinned(advice + ".yaml", advice + ".plan.yaml"));
        this.random = new SplittableRandom(seed);
        this.trial = new Trial(folder);
    }

    private static Map<String, String> pinned(String project, String plan) {
        return Map.of(
                PROJECT,
                Mutants.firstDocument(Path.of(project)),
                PLAN,
                Mutants.firstDocument(Path.of(plan)));
    }

    /** Tries so many; those that end in what must never be, with it. */
    List<String> run(int count) {
        List<String> faults = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            next().ifPresent(faults::add);
        }
        return faults;
    }

    /** One change, or two at once, of a project or of the plan beside it. */
    private Optional<String> next() {
        Map<String, String> files = new LinkedHashMap<>(sound.get(random.nextInt(sound.size())));
        String name = files.containsKey(PLAN) && random.nextBoolean() ? PLAN : PROJECT;
        Map<String, Object> tree = read(files.get(name));
        List<Change> some = new ArrayList<>(List.of(change(files, name)));
        if (random.nextInt(3) == 0) {
            some.add(change(files, name));
        }
        try {
            some.forEach(change -> change.of().accept(tree));
        } catch (ClassCastException | IndexOutOfBoundsException | NullPointerException e) {
            return Optional.empty(); // What the second one would change the first one took away.
        }
        files.put(name, PlainYaml.dump(Tree.copy(tree)));
        Verdict verdict = trial.workOut(files, taken % EACH_MADE == 0);
        taken += verdict.isTaken() ? 1 : 0;
        String what = some.stream().map(Change::what).collect(Collectors.joining(" and "));
        return verdict.fault().map(fault -> fault + "\n" + what + "\n" + files.get(name));
    }

    private Change change(Map<String, String> files, String name) {
        List<List<Change>> kinds =
                changes.computeIfAbsent(
                        files.get(name),
                        text -> name.equals(PLAN) ? ofPlan(files) : ofProject(read(text)));
        List<Change> kind = kinds.get(random.nextInt(kinds.size()));
        return kind.get(random.nextInt(kind.size()));
    }

    private static List<List<Change>> ofProject(Map<String, Object> project) {
        return KINDS.stream()
                .map(kind -> kind.apply(Tree.mapping(Tree.copy(project))))
                .filter(all -> !all.isEmpty())
                .toList();
    }

    private static List<List<Change>> ofPlan(Map<String, String> files) {
        Map<String, Object> plan = read(files.get(PLAN));
        return List.of(
                ValueChanges.references(plan, read(files.get(PROJECT))), ValueChanges.items(plan));
    }

    private static Map<String, Object> read(String text) {
        return Tree.mapping(PlainYaml.load(text));
    }

    /** How many were found sound. */
    int taken() {
        return taken;
    }

    /**
     * Tries variants.
     *
     * @param args how many, and the seed
     */
    public static void main(String... args) throws IOException {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        int count = Integer.parseInt(args[0]);
        Variants variants =
                new Variants(Long.parseLong(args[1]), Files.createTempDirectory("variants"));
        int faults = 0;
        for (int tried = 0; tried < count; tried++) {
            for (String fault : variants.run(1)) {
                out.println("FAULT " + fault + "\n==========");
                faults++;
            }
        }
        out.println(count + " variants: " + variants.taken() + " taken, " + faults + " faults");
    }
}
