package secondbolt.lay.search;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import secondbolt.lay.nofit.NoFitCache;
import secondbolt.lay.nofit.PlaneContainer;
import secondbolt.lay.placement.Container;
import secondbolt.lay.placement.Lay;
import secondbolt.lay.placement.PackingItem;
import secondbolt.lay.placement.Placement;
import secondbolt.lay.placement.PlacementRule;
import secondbolt.parallel.Workers;
import secondbolt.shape.Box;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;

/**
 * Lays the public garment instances of the EURO Special Interest Group on Cutting and Packing on a
 * strip, and prints the density beside the published ones; every lay is checked by {@link
 * LayChecker}. Run by hand: {@code LayBenchmark FOLDER SECONDS [INSTANCE …]}.
 *
 * <p>Published: mean of 2012 by Leung, Lin and Zhang (Computers and Operations Research 39), mean
 * of 20 minutes with three threads and best known by Gardeyn, Vanden Berghe and Wauters (arXiv
 * 2509.13329, tables 2 and 3).
 */
public final class LayBenchmark {
    private static final Map<String, double[]> PUBLISHED =
            Map.of(
                    "albano", new double[] {87.38, 89.47, 89.82},
                    "dagli", new double[] {86.27, 89.26, 90.17},
                    "mao", new double[] {82.57, 86.14, 86.87},
                    "marques", new double[] {88.32, 90.93, 92.02},
                    "shirts", new double[] {87.20, 89.66, 90.92},
                    "swim", new double[] {74.10, 78.26, 79.83},
                    "trousers", new double[] {88.29, 91.73, 92.62});
    private static final List<String> GARMENTS =
            List.of("albano", "dagli", "mao", "marques", "shirts", "swim", "trousers");
    private static final int WORKERS = 2;

    private LayBenchmark() {}

    /**
     * Runs it.
     *
     * @param args the folder of the instances, the seconds for each, and which of them
     */
    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        double seconds = Double.parseDouble(args[1]);
        List<String> names = args.length > 2 ? List.of(args).subList(2, args.length) : GARMENTS;
        double sum = 0;
        System.out.println(
                "instance    length  density  seconds  million places/s  mean 2012  mean 2025 "
                        + " best");
        for (String name : names) {
            sum += run(Instance.read(folder.resolve(name + ".json")), name, seconds);
        }
        System.out.printf(Locale.ROOT, "mean density %.2f%n", sum / names.size());
        growth(seconds);
    }

    /**
     * An instance.
     *
     * @param width of the strip
     * @param items each copy once
     */
    private record Instance(double width, List<PackingItem> items) {
        double area() {
            return items.stream().mapToDouble(f -> f.outline().areaMm2()).sum();
        }

        static Instance read(Path file) throws IOException {
            Map<?, ?> all =
                    new Yaml(new SafeConstructor(new LoaderOptions())).load(Files.readString(file));
            List<PackingItem> items = new ArrayList<>();
            for (Object each : (List<?>) all.get("pieces")) {
                Map<?, ?> piece = (Map<?, ?>) each;
                List<Point> corners = new ArrayList<>();
                for (Object corner : (List<?>) piece.get("outline")) {
                    List<?> at = (List<?>) corner;
                    // The roll runs along; our lays are shortened along too.
                    corners.add(new Point(number(at.get(1)), number(at.get(0))));
                }
                Outline outline = new Outline(corners);
                List<Integer> turns =
                        ((List<?>) piece.get("rotations"))
                                .stream().map(r -> (int) number(r)).toList();
                PackingItem item =
                        new PackingItem(outline, PlacementRule.turned(turns), 0, outline.areaMm2());
                IntStream.range(0, (int) number(piece.get("demand"))).forEach(i -> items.add(item));
            }
            return new Instance(number(all.get("strip_width")), items);
        }

        private static double number(Object value) {
            return ((Number) value).doubleValue();
        }
    }

    private static double run(Instance instance, String name, double seconds) {
        long began = System.nanoTime();
        Found found = search(instance, seconds);
        double took = (System.nanoTime() - began) / 1e9;
        double density = 100 * instance.area() / instance.width() / found.length();
        double[] published = PUBLISHED.getOrDefault(name, new double[3]);
        System.out.printf(
                Locale.ROOT,
                "%-9s %9.2f %8.2f %8.1f %17.2f %10.2f %10.2f %5.2f%n",
                name,
                found.length(),
                density,
                took,
                found.steps() / took / 1e6,
                published[0],
                published[1],
                published[2]);
        return density;
    }

    private record Found(double length, long steps) {}

    private static Found search(Instance instance, double seconds) {
        long began = System.nanoTime();
        double longest = instance.area() / instance.width() / 0.6;
        PlaneContainer strip = PlaneContainer.rectangle(instance.width(), longest);
        Problem problem = Problem.of(instance.items(), List.of(strip), new NoFitCache(0, 0));
        try (Workers pool = new Workers(Math.max(1, WORKERS - 1))) {
            StripSearch search = new StripSearch(problem, 1, WORKERS, 1, pool);
            long end = began + (long) (seconds * 1e9);
            long turn = began + (long) (seconds * 0.8e9);
            if (!search.start(steps -> System.nanoTime() > end)) {
                throw new IllegalStateException("no lay at all in " + seconds + " s");
            }
            search.explore(steps -> System.nanoTime() > turn);
            search.compress(
                    steps -> System.nanoTime() > end,
                    steps -> (System.nanoTime() - turn) / (double) (end - turn));
            check(instance, problem, search.best());
            return new Found(search.lengthMm(), search.steps());
        }
    }

    private static void check(Instance instance, Problem problem, Arrangement arrangement) {
        List<Placement> placements = new ArrayList<>();
        for (int i = 0; i < instance.items().size(); i++) {
            PlacementOption option = problem.options.get(arrangement.option[i]);
            placements.add(
                    new Placement(
                            i,
                            0,
                            option.rule().orientation(),
                            arrangement.x[i] - option.shape().leftMm(),
                            arrangement.y[i] - option.shape().lowMm()));
        }
        List<String> faults =
                LayChecker.faults(
                        instance.items(),
                        List.of(Container.whole(instance.width(), 1e6)),
                        0,
                        new Lay(placements, List.of(), true));
        faults.forEach(fault -> System.out.println("FAULT " + fault));
    }

    /** How it grows with copies: a tenth of the time for each. */
    private static void growth(double seconds) {
        for (int copies : List.of(10, 30, 100, 300)) {
            List<PackingItem> items = new ArrayList<>();
            for (int i = 0; i < copies; i++) {
                double along = 200 + 40 * (i % 10);
                Outline outline =
                        i % 3 == 0
                                ? Outline.of(new Box(0, 0, 150 + 10 * (i % 7), along))
                                : new Outline(
                                        List.of(
                                                new Point(40, 0),
                                                new Point(160, 0),
                                                new Point(200, along),
                                                new Point(0, along)));
                items.add(new PackingItem(outline, PlacementRule.turned(List.of(0, 180)), 0, 1));
            }
            run(new Instance(1500, items), copies + " pcs", seconds / 2);
        }
        Runtime runtime = Runtime.getRuntime();
        System.out.printf(
                Locale.ROOT,
                "memory in use at the end %d MB%n",
                (runtime.totalMemory() - runtime.freeMemory()) / 1_000_000);
    }
}
