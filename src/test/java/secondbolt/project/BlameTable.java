package secondbolt.project;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import secondbolt.file.source.Mistake;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;

/**
 * Prints, for every slip of every line of the demos and the strangers' projects, which lines are
 * blamed; {@code main} takes folders or files, and with {@code -v} first tells each that blames
 * others. {@code -Devery=7} takes every seventh line only.
 */
public final class BlameTable {
    private static final int EVERY = Integer.getInteger("every", 1);

    private enum Verdict {
        ACCEPTED,
        GUILTY_ALONE,
        WITH_OTHERS,
        ONLY_OTHERS,
        FAULT
    }

    private BlameTable() {}

    /** Prints the table. */
    public static void main(String[] args) throws IOException {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        boolean isTold = args.length > 0 && args[0].equals("-v");
        List<String> roots = List.of(args).subList(isTold ? 1 : 0, args.length);
        Map<String, int[]> table = new LinkedHashMap<>();
        for (String root : roots) {
            try (Stream<Path> found = Files.walk(Path.of(root))) {
                for (Path file : found.filter(p -> p.toString().endsWith(".yaml")).toList()) {
                    count(file, table, isTold, out);
                }
            }
        }
        out.printf(
                "%-28s %8s %8s %8s %8s %8s %8s%n",
                "slip", "accepted", "refused", "alone", "with", "others", "fault");
        int[] all = new int[Verdict.values().length];
        table.forEach(
                (kind, counts) -> {
                    print(out, kind, counts);
                    Arrays.setAll(all, i -> all[i] + counts[i]);
                });
        print(out, "all", all);
    }

    private static void print(PrintStream out, String kind, int[] n) {
        int refused = Arrays.stream(n).sum() - n[0];
        out.printf(
                Locale.ROOT,
                "%-28s %8d %8d %7.1f%% %7.1f%% %7.1f%% %8d%n",
                kind,
                n[0],
                refused,
                share(n[1], refused),
                share(n[2], refused),
                share(n[3], refused),
                n[4]);
    }

    private static int place(Verdict verdict) {
        return List.of(Verdict.values()).indexOf(verdict);
    }

    private static double share(int part, int whole) {
        return whole == 0 ? 0 : 100.0 * part / whole;
    }

    private static void count(Path file, Map<String, int[]> table, boolean isTold, PrintStream out)
            throws IOException {
        List<String> sound = Files.readAllLines(file);
        Mistakes none = new Mistakes();
        WrittenProject.read(SourceFile.of("f", String.join("\n", sound)), none);
        if (!none.isEmpty()) {
            return; // no project by itself
        }
        IntStream.range(0, sound.size())
                .filter(line -> line % EVERY == 0)
                .parallel()
                .boxed()
                .flatMap(line -> LineSlips.of(sound, line).stream())
                .map(slip -> Map.entry(slip, judge(slip, file, isTold, out)))
                .toList()
                .forEach(
                        judged ->
                                table.computeIfAbsent(
                                                judged.getKey().kind(),
                                                k -> new int[Verdict.values().length])[
                                        place(judged.getValue())]++);
    }

    private static Verdict judge(
            LineSlips.Slipped slip, Path file, boolean isTold, PrintStream out) {
        Mistakes mistakes = new Mistakes();
        Verdict verdict;
        try {
            WrittenProject.read(SourceFile.of("f", slip.text()), mistakes);
            verdict = verdict(mistakes.inOrder(), slip.guilty());
        } catch (RuntimeException | StackOverflowError e) {
            verdict = Verdict.FAULT;
            out.println("FAULT " + e);
        }
        if (isTold && verdict != Verdict.ACCEPTED && verdict != Verdict.GUILTY_ALONE) {
            StringBuilder told = new StringBuilder();
            told.append(verdict).append(" | ").append(slip.kind()).append(" | ").append(file);
            int line = slip.guilty().get(0);
            told.append(':').append(line).append(" | ").append(slip.lines().get(line - 1));
            mistakes.inOrder().stream()
                    .limit(6)
                    .forEach(
                            m ->
                                    told.append("\n    ")
                                            .append(m.toString().lines().findFirst().orElse("")));
            out.println(told);
        }
        return verdict;
    }

    private static Verdict verdict(List<Mistake> mistakes, List<Integer> guilty) {
        if (mistakes.isEmpty()) {
            return Verdict.ACCEPTED;
        }
        List<Integer> blamed = mistakes.stream().map(m -> m.place().line()).distinct().toList();
        boolean isGuilty = blamed.stream().anyMatch(guilty::contains);
        boolean others = !guilty.containsAll(blamed);
        return isGuilty && !others
                ? Verdict.GUILTY_ALONE
                : isGuilty ? Verdict.WITH_OTHERS : Verdict.ONLY_OTHERS;
    }
}
