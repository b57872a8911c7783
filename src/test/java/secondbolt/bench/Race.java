package secondbolt.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Runs some programs in turn, round after round, so that a machine that is busy with other work is
 * so for all of them, and tells medians: of the times, and of each round's ratios.
 */
final class Race {
    private static final double NANOS_PER_MS = 1e6;

    /** A run of a program. */
    interface Run {
        /** Runs it once; what must be made ready first is made ready by the caller. */
        void run() throws Exception;
    }

    private final Run ready;
    private final Map<String, Run> programs = new LinkedHashMap<>();
    private final Map<String, List<Double>> times = new LinkedHashMap<>();

    /** A race in which this is done, untimed, before each run. */
    Race(Run ready) {
        this.ready = ready;
    }

    /** Adds a program; the first is compared with all others. */
    Race with(String name, Run program) {
        programs.put(name, program);
        times.put(name, new ArrayList<>());
        return this;
    }

    /** Runs all programs, first so many rounds that do not count, then those that do. */
    void run(int roundsBefore, int rounds) throws Exception {
        for (int round = -roundsBefore; round < rounds; round++) {
            for (var program : programs.entrySet()) {
                ready.run();
                long start = System.nanoTime();
                program.getValue().run();
                double ms = (System.nanoTime() - start) / NANOS_PER_MS;
                if (round >= 0) {
                    times.get(program.getKey()).add(ms);
                }
            }
        }
    }

    /** A line for each program. */
    List<String> told() {
        List<Double> first = times.values().iterator().next();
        List<String> lines = new ArrayList<>();
        times.forEach(
                (name, each) ->
                        lines.add(
                                String.format(
                                        Locale.ROOT,
                                        "  %-34s median %7.1f ms, least %7.1f ms, ratio %4.2f",
                                        name,
                                        median(each),
                                        each.stream().mapToDouble(t -> t).min().orElseThrow(),
                                        median(ratios(first, each)))));
        return lines;
    }

    private static List<Double> ratios(List<Double> above, List<Double> below) {
        List<Double> ratios = new ArrayList<>();
        for (int i = 0; i < above.size(); i++) {
            ratios.add(above.get(i) / below.get(i));
        }
        return ratios;
    }

    private static double median(List<Double> values) {
        List<Double> sorted = values.stream().sorted().toList();
        int half = sorted.size() / 2;
        return sorted.size() % 2 == 1
                ? sorted.get(half)
                : (sorted.get(half - 1) + sorted.get(half)) / 2;
    }
}
