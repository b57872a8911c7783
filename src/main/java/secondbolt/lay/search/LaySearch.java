package secondbolt.lay.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;
import secondbolt.shape.Box;
import secondbolt.shape.Outline;
import secondbolt.shape.Region;

/**
 * Lays figures on beds: all of them if they can be laid, on as few beds as it takes, the last one
 * used to as short a length as can be found; else the set of them that is worth most.
 */
public final class LaySearch {
    /** Two searches run beside each other, whether or not there are two cores for them. */
    private static final int WORKERS = 2;

    private static final long SEED = 1;
    private static final long STEPS_A_LOOK = 20_000;
    private static final long LEAST_EACH = 2_000;
    private static final double BESIDE_MM = 100;

    private final List<Figure> figures;
    private final List<Bed> beds;
    private final Shelf shelf;
    private final long effort;
    private final Watch watch;
    private final AtomicBoolean interrupted = new AtomicBoolean();
    private final AtomicLong spent = new AtomicLong();

    /** Steps of the searches before the present one. */
    private final AtomicLong used = new AtomicLong();

    private LaySearch(List<Figure> figures, List<Bed> beds, Shelf shelf, long effort, Watch watch) {
        this.figures = List.copyOf(figures);
        this.beds = List.copyOf(beds);
        this.shelf = shelf;
        this.effort = effort;
        this.watch = watch;
    }

    /**
     * Lays figures.
     *
     * @param figures in any order; one or more
     * @param beds in the order they should be used; one or more, none without sound cloth
     * @param shelf what is worked out for the figures already; it knows the gap between them
     * @param effort how much is tried
     * @param cores how many threads may work; the lay does not depend on it
     * @param watch looks on, and may end the search
     */
    public static Lay lay(
            List<Figure> figures,
            List<Bed> beds,
            Shelf shelf,
            Effort effort,
            int cores,
            Watch watch) {
        return lay(figures, beds, shelf, effort.steps(), cores, watch);
    }

    static Lay lay(
            List<Figure> figures,
            List<Bed> beds,
            Shelf shelf,
            long effort,
            int cores,
            Watch watch) {
        try (Crew crew = Crew.of(Math.min(cores, WORKERS) - 1)) {
            Lay found = new LaySearch(figures, beds, shelf, effort, watch).lay(crew);
            watch.goOn(1, 0);
            return found;
        }
    }

    private Lay lay(Crew crew) {
        Problem problem = Problem.of(figures, grounds(), shelf);
        List<Integer> wanted = new ArrayList<>();
        for (int i = 0; i < figures.size(); i++) {
            if (problem.hasRoom(i, beds.size())) {
                wanted.add(i);
            }
        }
        dropToTheArea(wanted);
        Laid laid =
                wanted.isEmpty() ? new Laid(wanted, new Layout(0)) : laid(problem, wanted, crew);
        List<Integer> leftOver =
                IntStream.range(0, figures.size())
                        .filter(i -> !laid.items().contains(i))
                        .boxed()
                        .toList();
        return new Lay(placed(problem, laid), leftOver, !interrupted.get());
    }

    /** Items and where they lie, in the same order. */
    private record Laid(List<Integer> items, Layout layout) {}

    /** More than the whole area can never lie on it. */
    private void dropToTheArea(List<Integer> wanted) {
        double sound = beds.stream().mapToDouble(b -> b.any().areaMm2()).sum();
        double area = wanted.stream().mapToDouble(i -> figures.get(i).outline().areaMm2()).sum();
        List<Integer> cheapest = new ArrayList<>(wanted);
        cheapest.sort(Comparator.comparingDouble(i -> figures.get(i).worth()));
        for (int item : cheapest) {
            if (area <= sound) {
                return;
            }
            wanted.remove(Integer.valueOf(item));
            area -= figures.get(item).outline().areaMm2();
        }
    }

    private Laid laid(Problem problem, List<Integer> wanted, Crew crew) {
        for (int count = 1; count < beds.size(); count++) {
            if (mayDo(problem, wanted, count)) {
                StripSearch search = search(problem, wanted, count, crew);
                if (search.start(stop(used.get() + effort / 16, search))) {
                    return shortened(problem, wanted, search, count, crew);
                }
                used.addAndGet(search.steps());
            }
        }
        StripSearch search = search(problem, wanted, beds.size(), crew);
        if (search.start(stop(used.get() + effort / 2, search))) {
            return shortened(problem, wanted, search, beds.size(), crew);
        }
        used.set(0);
        return best(problem, wanted, crew);
    }

    /** Whether so few beds may hold them all. */
    private boolean mayDo(Problem problem, List<Integer> wanted, int count) {
        double area = wanted.stream().mapToDouble(i -> figures.get(i).outline().areaMm2()).sum();
        double sound =
                beds.subList(0, count).stream().mapToDouble(bed -> bed.any().areaMm2()).sum();
        return area <= sound * 0.95 && haveRoom(problem, wanted, count);
    }

    private static boolean haveRoom(Problem problem, List<Integer> items, int bedCount) {
        return items.stream().allMatch(item -> problem.hasRoom(item, bedCount));
    }

    private StripSearch search(Problem problem, List<Integer> items, int bedCount, Crew crew) {
        spent.set(0);
        return new StripSearch(problem.only(items), bedCount, WORKERS, SEED, crew);
    }

    /** On as little as can be found of the last bed, or on fewer beds. */
    private Laid shortened(
            Problem problem, List<Integer> items, StripSearch search, int count, Crew crew) {
        long left = Math.max(0, effort - used.get() - search.steps());
        boolean fewer = count > 1 && mayDo(problem, items, count - 1);
        long turn = effort - (fewer ? left * 6 / 10 : left * 2 / 10);
        search.explore(stop(turn, search));
        if (fewer) {
            long before = used.get();
            used.addAndGet(search.steps());
            StripSearch less = search(problem, items, count - 1, crew);
            if (less.startFrom(search.best(), stop(effort - left * 2 / 10, less))) {
                return shortened(problem, items, less, count - 1, crew);
            }
            used.set(before + less.steps());
        }
        long from = search.steps();
        long end = effort - used.get();
        search.compress(
                stop(effort, search), now -> (double) (now - from) / Math.max(1, end - from));
        return new Laid(items, search.best());
    }

    /** Ends a search when all searches together come to so many steps. */
    private Stop stop(long end, StripSearch search) {
        return steps -> {
            if (steps - spent.get() > STEPS_A_LOOK) {
                spent.set(steps);
                double share = Math.min(0.99, (double) (used.get() + steps) / effort);
                if (!watch.goOn(share, search.lengthMm())) {
                    interrupted.set(true);
                }
            }
            return interrupted.get() || used.get() + steps >= end;
        };
    }

    /** One after the other, the worthiest first; what finds no room is left out. */
    private Laid best(Problem problem, List<Integer> wanted, Crew crew) {
        List<Integer> worthiest = new ArrayList<>(wanted);
        worthiest.sort(Comparator.comparingDouble((Integer i) -> -figures.get(i).worth()));
        Laid best = new Laid(List.of(), new Layout(0));
        long each = Math.min(effort / 10, Math.max(LEAST_EACH, 2 * effort / wanted.size()));
        Set<Figure> failed = new HashSet<>();
        for (int item : worthiest) {
            // What has no room has none when it comes again.
            if (interrupted.get() || failed.contains(figures.get(item))) {
                continue;
            }
            List<Integer> more = new ArrayList<>(best.items());
            more.add(item);
            StripSearch search = search(problem, more, beds.size(), crew);
            if (search.startWithOneMore(best.layout(), stop(each, search))) {
                best = new Laid(more, search.best());
            } else {
                failed.add(figures.get(item));
            }
        }
        return best;
    }

    private List<Placed> placed(Problem problem, Laid laid) {
        List<Placed> placed = new ArrayList<>();
        for (int i = 0; i < laid.items().size(); i++) {
            Stance stance = problem.stances.get(laid.layout().stance[i]);
            int bed = laid.layout().ground[i];
            Ground ground = problem.grounds.get(bed);
            placed.add(
                    new Placed(
                            laid.items().get(i),
                            bed,
                            stance.way().isMirrored(),
                            stance.way().turnDegrees(),
                            laid.layout().x[i] - ground.originX() - stance.lies().leftMm(),
                            laid.layout().y[i] - ground.originY() - stance.lies().lowMm()));
        }
        return placed;
    }

    /** The beds beside each other in one plane. */
    private List<Ground> grounds() {
        List<Ground> grounds = new ArrayList<>();
        double left = 0;
        for (Bed bed : beds) {
            Box box = bed.any().box();
            double at = left;
            grounds.add(
                    new Ground(
                            left,
                            0,
                            left + Parts.rounded(box.widthMm()),
                            Parts.rounded(box.heightMm()),
                            left - box.leftMm(),
                            -box.topMm(),
                            bed.grades().stream().map(g -> outside(g, box, at)).toList()));
            left += Parts.rounded(box.widthMm()) + BESIDE_MM;
        }
        return grounds;
    }

    private List<Convex> outside(Region sound, Box box, double left) {
        Region rest = Region.of(box).minus(sound);
        if (rest.isEmpty()) {
            return List.of();
        }
        // A border round the box, so that what is beyond it is as bad as a flaw at its edge.
        Region beyond = Region.of(box.grown(BESIDE_MM)).minus(Region.of(box)).with(rest);
        List<Convex> parts = new ArrayList<>();
        for (Outline part : beyond.loosened(shelf.toleranceMm()).convexParts()) {
            parts.add(
                    Convex.of(
                            Parts.rounded(part.map(p -> p.moved(-box.leftMm(), -box.topMm()))),
                            left,
                            0));
        }
        return parts;
    }
}
