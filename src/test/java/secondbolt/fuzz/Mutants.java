package secondbolt.fuzz;

import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Takes as many mutants as are asked for, and prints each that ends in what must never be:
 *
 * <pre>
 * mvn -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=secondbolt.fuzz.Mutants -Dexec.args="yaml 100000 1"
 * </pre>
 */
public final class Mutants {
    /** So many of those that are taken are made into a notebook, and of all into a site. */
    private static final int EACH_MADE = 20;

    private static final int EACH_SITE = 200;

    private static final int SMALLEST_OF = 4;

    private final List<Map<String, String>> sound;
    private final String changed;
    private final SplittableRandom random;
    private final Trial trial;
    private int taken;

    /** A sound project from which mutants are made, with a drawing. */
    static final String WITH_DRAWING =
            """
            title: Pocket
            units: cm
            cloth:
              sheet: {size: [160, 250], weight: 140 g/m2}
            pattern:
              rights: mine
              seam allowance: {of: 1, included: false}
              pieces:
                pocket: {cut: pair, svg: piece.svg}
            """;

    static final String DRAWING =
            """
            <svg xmlns="http://www.w3.org/2000/svg" width="200mm" height="300mm" viewBox="0 0 200 300">
              <g transform="translate(10, 5) rotate(1 2 3)">
                <path id="top" d="M 10 10 h 60 l 20,0 L 100 10"/>
                <path id="side" d="M100 10 C 100 40, 110 60 100 90 S 95 140 100 150"/>
                <path id="hem" transform="scale(1)" d="M100 150 A 60 20 0 0 1 55 160 Q 30 170 10 150"/>
                <polyline id="front_edge" points="10,150 12 80 10,10"/>
              </g>
              <rect id="note" x="0" y="0" width="0" height="1" style="display:none"/>
            </svg>
            """;

    /**
     * Mutants of sound projects.
     *
     * @param sound the files of each, by their names
     * @param changed the name of the one that is changed
     * @param seed of the chance
     * @param folder in which they are tried
     */
    Mutants(List<Map<String, String>> sound, String changed, long seed, Path folder) {
        this.sound = sound;
        this.changed = changed;
        this.random = new SplittableRandom(seed);
        this.trial = new Trial(folder);
    }

    /** The demos' files and those of the strangers' projects that the tests have. */
    static List<Map<String, String>> projects() {
        List<Map<String, String>> all = new ArrayList<>();
        for (String root :
                List.of(
                        "projects",
                        "src/test/resources/examples/strangers",
                        "src/test/resources/examples/advice")) {
            try (Stream<Path> walk = Files.walk(Path.of(root))) {
                walk.filter(path -> path.toString().endsWith(".yaml"))
                        .filter(path -> !path.toString().endsWith("plan.yaml"))
                        .sorted()
                        .forEach(path -> all.add(Map.of("project.yaml", firstDocument(path))));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return all;
    }

    /** Behind it the tests keep what must come of it. */
    static String firstDocument(Path path) {
        try {
            return Files.readString(path).split("(?m)^---$", 2)[0];
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Tries so many; those that end in what must never be, with it. */
    List<String> run(int count) {
        List<String> faults = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Map<String, String> files = new TreeMap<>(oneOfTheSmaller());
            files.put(changed, new TextMutation(random.split()).of(files.get(changed)));
            tried(files, i).ifPresent(fault -> faults.add(fault + "\n" + files.get(changed)));
        }
        return faults;
    }

    /** A small file has all there is to break in fewer lines, and costs less. */
    private Map<String, String> oneOfTheSmaller() {
        return random.ints(SMALLEST_OF, 0, sound.size())
                .mapToObj(sound::get)
                .min(Comparator.comparingInt(files -> files.get(changed).length()))
                .orElseThrow();
    }

    private Optional<String> tried(Map<String, String> files, int number) {
        Verdict verdict =
                number % EACH_SITE == EACH_SITE - 1
                        ? trial.make(files)
                        : trial.workOut(files, taken % EACH_MADE == 0);
        taken += verdict.isTaken() ? 1 : 0;
        return verdict.fault();
    }

    /** How many were found sound. */
    int taken() {
        return taken;
    }

    /**
     * Tries mutants in turns of 1000, each with a seed of its own.
     *
     * @param args {@code yaml} or {@code svg}, how many, and the first seed
     */
    public static void main(String... args) throws IOException {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        boolean isYaml = args[0].equals("yaml");
        int count = Integer.parseInt(args[1]);
        long first = Long.parseLong(args[2]);
        Path folder = Files.createTempDirectory("mutants");
        int faults = 0;
        int taken = 0;
        for (long turn = 0; turn * 1000 < count; turn++) {
            Mutants mutants = isYaml ? yaml(first + turn, folder) : svg(first + turn, folder);
            List<String> found = mutants.run((int) Math.min(1000, count - turn * 1000));
            found.forEach(fault -> out.println("FAULT " + fault + "\n=========="));
            faults += found.size();
            taken += mutants.taken();
        }
        out.println(
                count
                        + " mutants from seed "
                        + first
                        + ": "
                        + taken
                        + " taken, "
                        + faults
                        + " faults");
    }

    static Mutants yaml(long seed, Path folder) {
        return new Mutants(projects(), "project.yaml", seed, folder);
    }

    static Mutants svg(long seed, Path folder) {
        return new Mutants(
                List.of(Map.of("project.yaml", WITH_DRAWING, "piece.svg", DRAWING)),
                "piece.svg",
                seed,
                folder);
    }
}
