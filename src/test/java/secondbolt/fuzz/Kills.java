package secondbolt.fuzz;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Kills runs of the program at random moments, or lets two write one site at once, and prints
 * everything that is then not whole:
 *
 * <pre>
 * mvn -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=secondbolt.fuzz.Kills -Dexec.args="notebook 100 1"
 * </pre>
 */
public final class Kills {
    private static final String SHEET = "band.pdf";
    private static final String PLAN = "projects/apron/plan.yaml";

    private final SmallFolder folder;
    private final SplittableRandom random;
    private final List<String> faults = new ArrayList<>();
    private final Map<String, Integer> counts = new TreeMap<>();

    /**
     * Kills in a folder of their own.
     *
     * @param root an empty folder
     * @param seed of the chance; the moments are also those of the machine
     */
    Kills(Path root, long seed) {
        this.folder = SmallFolder.in(root);
        this.random = new SplittableRandom(seed);
    }

    /** What was not as it must be, in words. */
    List<String> faults() {
        return List.copyOf(faults);
    }

    /** How many runs ended how. */
    Map<String, Integer> counts() {
        return new TreeMap<>(counts);
    }

    private void check(boolean isRight, String otherwise) {
        if (!isRight) {
            faults.add(otherwise);
        }
    }

    private void count(String what) {
        counts.merge(what, 1, Integer::sum);
    }

    /** Lets a command run to its end; how long it took, in nanoseconds. */
    private long whole(String... args) {
        long began = System.nanoTime();
        Started run = folder.start("whole", args);
        int code = run.ended();
        check(code == 0, "exit code " + code + ": " + run.text());
        return System.nanoTime() - began;
    }

    /** Kills runs of the notebook, one or two after each change. */
    void notebook(int times) {
        whole("notebook");
        long usual = whole("notebook");
        int turn = 0;
        for (int i = 0; i < times; ) {
            Map<String, String> old = folder.site();
            SmallFolder.NAMES.stream()
                    .filter(name -> random.nextInt(3) > 0)
                    .forEach(name -> folder.edit(name, random));
            Map<String, String> made = folder.fresh();
            Map<String, String> others = folder.others();
            for (int k = random.nextInt(2); k < 2 && i < times; k++) {
                i += isKilled(turn++, usual) ? 1 : 0;
                checkWhole(folder.site(), old, made);
            }
            usual = (usual + whole("notebook")) / 2;
            check(folder.site().equals(made), "another site than that of one run: " + differing());
            check(folder.leftovers().isEmpty(), "left over " + folder.leftovers());
            check(folder.others().equals(others), "something else was touched");
        }
    }

    private String differing() {
        Map<String, String> made = folder.fresh();
        Map<String, String> site = folder.site();
        TreeSet<String> paths = new TreeSet<>(made.keySet());
        paths.addAll(site.keySet());
        paths.removeIf(path -> made.getOrDefault(path, "").equals(site.get(path)));
        return paths.toString();
    }

    /**
     * A third of them at any moment, one after the site was locked, one while files are put there.
     */
    private boolean isKilled(int turn, long longest) {
        Started run = folder.start("killed", "notebook");
        return switch (turn % 3) {
            case 0 -> isKilled(run, longest);
            case 1 -> {
                run.awaitFile(folder.at().resolve("site/.secondbolt.lock"));
                yield isKilled(run, longest / 6);
            }
            default -> {
                run.awaitFile(folder.at().resolve("site/.unfinished.json"));
                yield isKilled(run, longest / 40);
            }
        };
    }

    private boolean isKilled(Started run, long span) {
        boolean isKilled = run.isKilledAfter(random.nextLong(span));
        count(isKilled ? moment(folder.leftovers()) : "ended before");
        return isKilled;
    }

    private static String moment(List<String> left) {
        if (left.contains("site/.unfinished.json")) {
            boolean isMoving =
                    left.stream().noneMatch(path -> path.endsWith("contents.json.part~"));
            return isMoving ? "killed in writing, early or late" : "killed in writing, all staged";
        }
        return left.contains("site/.secondbolt.lock")
                ? "killed with the site's lock"
                : "killed before or after";
    }

    private void checkWhole(
            Map<String, String> site, Map<String, String> old, Map<String, String> made) {
        TreeSet<String> paths = new TreeSet<>(old.keySet());
        paths.addAll(made.keySet());
        for (String path : paths) {
            String text = site.get(path);
            boolean isOld = text == null ? !old.containsKey(path) : text.equals(old.get(path));
            boolean isNew = text == null ? !made.containsKey(path) : text.equals(made.get(path));
            check(isOld || isNew, path + " is neither the old nor the new one");
        }
    }

    /** Lets two runs write one site at once, and edits a project while they do. */
    void pairs(int times) {
        whole("notebook");
        long longest = whole("notebook");
        for (int i = 0; i < times; i++) {
            folder.edit("apron", random);
            folder.edit("bag", random);
            boolean isLate = i % 2 == 1;
            Started one = folder.start("one", args(i % 3 == 0, "apron"));
            if (isLate) {
                one.await(random.nextLong(longest));
                folder.edit("bag", random);
            }
            Started two = folder.start("two", args(i % 3 < 2, "bag"));
            for (Started run : List.of(one, two)) {
                int code = run.ended();
                check(code == 0, "exit code " + code + ": " + run.text());
                count(run.text().contains("; waiting") ? "waited" : "did not wait");
            }
            boolean isAll = folder.site().equals(folder.fresh());
            check(isAll, "pair " + i + ", another site than that of one run: " + differing());
            check(folder.leftovers().isEmpty(), "left over " + folder.leftovers());
        }
    }

    private static String[] args(boolean isWhole, String name) {
        return isWhole ? new String[] {"notebook"} : new String[] {"notebook", "projects/" + name};
    }

    /** Kills runs that make one sheet. */
    void sheet(int times) {
        oneFile(times, SHEET, "sheet", "projects/apron", "piece-panel", "--out", SHEET);
    }

    /** Kills runs that pin the plan. */
    void pin(int times) {
        oneFile(times, PLAN, "pin", "projects/apron", "--anew");
    }

    private void oneFile(int times, String path, String... args) {
        long longest = whole(args);
        for (int i = 0; i < times; i++) {
            String old = SmallFolder.files(folder.at()).get(path);
            folder.edit("apron", random);
            Started run = folder.start("killed", args);
            boolean isKilled = run.isKilledAfter(random.nextLong(longest));
            String found = SmallFolder.files(folder.at()).get(path);
            whole(args);
            String made = SmallFolder.files(folder.at()).get(path);
            check(found.equals(old) || found.equals(made), path + " is half of one");
            check(folder.leftovers().isEmpty(), "left over " + folder.leftovers());
            count(
                    !isKilled
                            ? "ended before"
                            : found.equals(old) ? "killed before" : "killed after");
        }
    }

    /** Does what is asked for. */
    void run(String what, int times) {
        switch (what) {
            case "notebook" -> notebook(times);
            case "pairs" -> pairs(times);
            case "sheet" -> sheet(times);
            case "pin" -> pin(times);
            default -> throw new IllegalArgumentException("notebook, pairs, sheet or pin");
        }
    }

    /**
     * Kills, and tells how often when.
     *
     * @param args {@code notebook}, {@code pairs}, {@code sheet} or {@code pin}, how many times,
     *     and a seed
     */
    public static void main(String... args) throws IOException {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        Path root = Files.createTempDirectory("kills");
        Kills kills = new Kills(root, Long.parseLong(args[2]));
        kills.run(args[0], Integer.parseInt(args[1]));
        kills.faults().forEach(fault -> out.println("FAULT " + fault));
        out.println(String.join(" ", args) + ": " + kills.counts());
        out.println(kills.faults().size() + " faults, in " + root);
    }
}
