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

    private final List<String> sound;
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
        this.sound =
                Mutants.projects().stream()
                        .map(files -> files.get("project.yaml"))
                        .filter(text -> !text.contains("\n---")) // One document each.
                        .toList();
        this.random = new SplittableRandom(seed);
        this.trial = new Trial(folder);
    }

    /** Tries so many; those that end in what must never be, with it. */
    List<String> run(int count) {
        List<String> faults = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            next().ifPresent(faults::add);
        }
        return faults;
    }

    /** One change, or two at once, of a project. */
    private Optional<String> next() {
        String text = sound.get(random.nextInt(sound.size()));
        Map<String, Object> file = Tree.mapping(PlainYaml.load(text));
        List<Change> some = new ArrayList<>(List.of(change(text)));
        if (random.nextInt(3) == 0) {
            some.add(change(text));
        }
        try {
            some.forEach(change -> change.of().accept(file));
        } catch (ClassCastException | IndexOutOfBoundsException | NullPointerException e) {
            return Optional.empty(); // What the second one would change the first one took away.
        }
        String changed = PlainYaml.dump(Tree.copy(file));
        Verdict verdict = trial.workOut(Map.of("project.yaml", changed), taken % EACH_MADE == 0);
        taken += verdict.isTaken() ? 1 : 0;
        String what = some.stream().map(Change::what).collect(Collectors.joining(" and "));
        return verdict.fault().map(fault -> fault + "\n" + what + "\n" + changed);
    }

    private Change change(String text) {
        List<List<Change>> kinds = changes.computeIfAbsent(text, Variants::changes);
        List<Change> kind = kinds.get(random.nextInt(kinds.size()));
        return kind.get(random.nextInt(kind.size()));
    }

    private static List<List<Change>> changes(String text) {
        return KINDS.stream()
                .map(kind -> kind.apply(Tree.mapping(PlainYaml.load(text))))
                .filter(all -> !all.isEmpty())
                .toList();
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
