package secondbolt.lay.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;
import secondbolt.lay.nofit.NoFitCache;
import secondbolt.lay.nofit.PlaneContainer;
import secondbolt.lay.placement.Container;
import secondbolt.lay.placement.Effort;
import secondbolt.lay.placement.Goal;
import secondbolt.lay.placement.Lay;
import secondbolt.lay.placement.PackingItem;
import secondbolt.lay.placement.Placement;
import secondbolt.parallel.Workers;

/**
 * Lays items on containers: all of them if they can be laid, on as few containers as it takes, the
 * last one used to as short a length as can be found; else the set of them that is worth most.
 */
public final class LaySearch {
    /** Two searches run side by side, whether or not there are two cores for them. */
    private static final int WORKERS = 2;

    private static final long SEED = 1;
    private static final long STEPS_A_LOOK = 20_000;
    private static final long LEAST_EACH = 2_000;

    /** What fits exactly by its area may exceed it by the last bits of its coordinates. */
    private static final double SAME_SHARE = 1e-9;

    /** One decision in laying boxes takes about as long as so many positions looked at. */
    private static final long STEPS_A_DECISION = 160;

    /**
     * More items than this are laid one after the other before they are pushed about, and the
     * effort for each is that of so many: together it takes as long.
     */
    private static final int MANY = 200;

    private static final double SAME_MM = 0.01;
    private static final double SAME_MM2 = 10;

    /** This part of the effort goes to what is left over, once all items are placed. */
    private static final long REMNANT_PART = 16;

    private final List<PackingItem> items;
    private final List<Container> containers;
    private final NoFitCache noFits;
    private final long effort;
    private final Goal goal;
    private final SearchObserver observer;
    private final AtomicBoolean interrupted = new AtomicBoolean();
    private final AtomicLong spent = new AtomicLong();

    /** Steps of the searches before the present one. */
    private final AtomicLong used = new AtomicLong();

    private LaySearch(
            List<PackingItem> items,
            List<Container> containers,
            NoFitCache noFits,
            long effort,
            Goal goal,
            SearchObserver observer) {
        this.items = List.copyOf(items);
        this.containers = List.copyOf(containers);
        this.noFits = noFits;
        this.effort = Math.max(LEAST_EACH, effort * MANY / Math.max(MANY, items.size()));
        this.goal = goal;
        this.observer = observer;
    }

    /**
     * Lays items.
     *
     * @param items in any order; one or more
     * @param containers in the order they should be used; one or more, none without sound cloth
     * @param noFits what is made for the items already; it knows the gap between them
     * @param effort how much is tried
     * @param goal what it should be like once all are placed
     * @param cores how many threads may work; the lay does not depend on it
     * @param observer is told how far the search is, and may end it
     */
    public static Lay lay(
            List<PackingItem> items,
            List<Container> containers,
            NoFitCache noFits,
            Effort effort,
            Goal goal,
            int cores,
            SearchObserver observer) {
        return lay(items, containers, noFits, effort.steps(), goal, cores, observer);
    }

    static Lay lay(
            List<PackingItem> items,
            List<Container> containers,
            NoFitCache noFits,
            long effort,
            Goal goal,
            int cores,
            SearchObserver observer) {
        try (Workers pool = new Workers(Math.max(1, Math.min(cores, WORKERS) - 1))) {
            Lay found = new LaySearch(items, containers, noFits, effort, goal, observer).lay(pool);
            observer.goOn(1, 0);
            return found;
        }
    }

    private Lay lay(Workers pool) {
        if (!observer.goOn(0, 0)) {
            interrupted.set(true);
        }
        Problem problem =
                Problem.of(
                        items, PlaneContainer.sideBySide(containers, noFits.toleranceMm()), noFits);
        Map<PackingItem, Boolean> haveRoom = new HashMap<>();
        List<Integer> wanted = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            int item = i;
            if (haveRoom.computeIfAbsent(
                    items.get(i), any -> problem.hasRoom(item, containers.size()))) {
                wanted.add(i);
            }
        }
        dropToTheArea(wanted);
        Solution solution =
                wanted.isEmpty()
                        ? new Solution(wanted, new Arrangement(0))
                        : solve(problem, wanted, pool);
        Set<Integer> chosen = Set.copyOf(solution.chosen());
        List<Integer> leftOver =
                IntStream.range(0, items.size()).filter(i -> !chosen.contains(i)).boxed().toList();
        return new Lay(placements(problem, solution), leftOver, !interrupted.get());
    }

    /** Numbers of items, and where those lie, in the same order. */
    private record Solution(List<Integer> chosen, Arrangement arrangement) {}

    /** More than the sound area can never lie on it: the least worth are dropped first. */
    private void dropToTheArea(List<Integer> wanted) {
        double sound = containers.stream().mapToDouble(c -> c.any().areaMm2()).sum();
        double area = wanted.stream().mapToDouble(i -> items.get(i).outline().areaMm2()).sum();
        List<Integer> cheapest = new ArrayList<>(wanted);
        cheapest.sort(Comparator.comparingDouble(i -> items.get(i).worth()));
        Set<Integer> dropped = new HashSet<>();
        for (int item : cheapest) {
            if (area <= sound * (1 + SAME_SHARE)) {
                break;
            }
            dropped.add(item);
            area -= items.get(item).outline().areaMm2();
        }
        wanted.removeAll(dropped);
    }

    private Solution solve(Problem problem, List<Integer> wanted, Workers pool) {
        for (int count = 1; count < containers.size(); count++) {
            Optional<Solution> solution = all(problem, wanted, count, pool);
            if (solution.isPresent()) {
                return solution.get();
            }
        }
        return all(problem, wanted, containers.size(), pool)
                .orElseGet(
                        () -> {
                            used.set(0);
                            return best(problem, wanted, pool);
                        });
    }

    /** All of them on the first containers. */
    private Optional<Solution> all(Problem problem, List<Integer> wanted, int count, Workers pool) {
        boolean isLast = count == containers.size();
        List<Arrangement> boxes = boxes(problem, wanted, count);
        if (boxes.isEmpty() && !isLast && !mayDo(problem, wanted, count)) {
            return Optional.empty();
        }
        StripSearch search = search(problem, wanted, count, pool);
        Separation.StopRule stop = stop(used.get() + effort / (isLast ? 2 : 16), search);
        boolean found =
                boxes.isEmpty()
                        ? start(search, problem, wanted, count, stop)
                        : search.startFrom(boxes.get(0), stop);
        if (found) {
            return Optional.of(shortened(problem, wanted, search, boxes, count, pool));
        }
        used.addAndGet(search.steps());
        return Optional.empty();
    }

    private boolean start(
            StripSearch search,
            Problem problem,
            List<Integer> wanted,
            int count,
            Separation.StopRule stop) {
        if (wanted.size() <= MANY) {
            return search.start(stop);
        }
        FirstPlaces places = new FirstPlaces(problem.only(wanted), count);
        List<Integer> left = places.lay(worthiest(wanted));
        used.addAndGet(places.steps());
        return search.startFrom(places.laid(), left, stop);
    }

    /** Numbers in a list of items, those of the worthiest first. */
    private List<Integer> worthiest(List<Integer> wanted) {
        return IntStream.range(0, wanted.size())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> -items.get(wanted.get(i)).worth()))
                .toList();
    }

    /** Exact fits, if all items are boxes, and not too many. */
    private List<Arrangement> boxes(Problem problem, List<Integer> wanted, int count) {
        if (wanted.size() > MANY) {
            return List.of();
        }
        return BoxPacking.of(
                problem.only(wanted), count, Math.max(100, effort / 8 / STEPS_A_DECISION));
    }

    /** Whether so few containers may hold them all, with what is lost between them. */
    private boolean mayDo(Problem problem, List<Integer> wanted, int count) {
        double area = wanted.stream().mapToDouble(i -> items.get(i).outline().areaMm2()).sum();
        double sound =
                containers.subList(0, count).stream().mapToDouble(c -> c.any().areaMm2()).sum();
        return area <= sound * 0.95 && haveRoom(problem, wanted, count);
    }

    private static boolean haveRoom(Problem problem, List<Integer> chosen, int containerCount) {
        return chosen.stream().allMatch(item -> problem.hasRoom(item, containerCount));
    }

    private StripSearch search(
            Problem problem, List<Integer> chosen, int containerCount, Workers pool) {
        spent.set(0);
        return new StripSearch(problem.only(chosen), containerCount, WORKERS, SEED, pool);
    }

    /** On as little as can be found of the last container, or on fewer containers. */
    private Solution shortened(
            Problem problem,
            List<Integer> chosen,
            StripSearch search,
            List<Arrangement> boxes,
            int count,
            Workers pool) {
        long left = Math.max(0, effort - used.get() - search.steps());
        boolean fewer = count > 1 && mayDo(problem, chosen, count - 1);
        long turn = effort - (fewer ? left * 6 / 10 : left * 2 / 10);
        search.explore(stop(turn, search));
        if (fewer) {
            long before = used.get();
            used.addAndGet(search.steps());
            StripSearch less = search(problem, chosen, count - 1, pool);
            if (less.startFrom(search.best(), stop(effort - left * 2 / 10, less))) {
                return shortened(problem, chosen, less, List.of(), count - 1, pool);
            }
            used.set(before + less.steps());
        }
        long from = search.steps();
        long most = goal == Goal.REMNANT ? effort - effort / REMNANT_PART : effort;
        long end = most - used.get();
        search.compress(stop(most, search), now -> (double) (now - from) / Math.max(1, end - from));
        List<Arrangement> found = new ArrayList<>(List.of(search.best()));
        found.addAll(boxes);
        return new Solution(chosen, best(problem.only(chosen), count, found));
    }

    /** The one that is most as it should be; slid together, if that is what leaves most over. */
    private Arrangement best(Problem problem, int count, List<Arrangement> found) {
        FreeRectangle over = new FreeRectangle(problem, count);
        double[] limit = problem.containers.stream().mapToDouble(PlaneContainer::high).toArray();
        long budget = effort / REMNANT_PART / found.size();
        Arrangement best = null;
        for (Arrangement one : found) {
            Arrangement candidate = one;
            if (goal == Goal.REMNANT && problem.items() <= MANY) {
                Gathering gathering = new Gathering(problem, count, limit);
                candidate = gathering.best(one, now -> interrupted.get() || now >= budget);
            }
            if (best == null || isBetter(candidate, best, problem, count, over)) {
                best = candidate;
            }
        }
        return best;
    }

    private boolean isBetter(
            Arrangement one, Arrangement other, Problem problem, int count, FreeRectangle over) {
        double shorter = problem.reachMm(other, count - 1) - problem.reachMm(one, count - 1);
        double larger = over.areaMm2(one) - over.areaMm2(other);
        return goal == Goal.SHORT
                ? shorter > SAME_MM || (shorter > -SAME_MM && larger > SAME_MM2)
                : larger > SAME_MM2 || (larger > -SAME_MM2 && shorter > SAME_MM);
    }

    /** Ends a search when all searches together come to so many steps. */
    private Separation.StopRule stop(long end, StripSearch search) {
        return steps -> {
            if (steps - spent.get() > STEPS_A_LOOK) {
                spent.set(steps);
                double share = Math.min(0.99, (double) (used.get() + steps) / effort);
                if (!observer.goOn(share, search.lengthMm())) {
                    interrupted.set(true);
                }
            }
            return interrupted.get() || used.get() + steps >= end;
        };
    }

    /** One after the other, the worthiest first; what finds no room is left out. */
    private Solution best(Problem problem, List<Integer> wanted, Workers pool) {
        List<Integer> worthiest = worthiest(wanted).stream().map(wanted::get).toList();
        Solution best = new Solution(List.of(), new Arrangement(0));
        if (wanted.size() > MANY) {
            best = first(problem, wanted);
            Set<Integer> laid = Set.copyOf(best.chosen());
            worthiest = worthiest.stream().filter(item -> !laid.contains(item)).toList();
        }
        long each = Math.min(effort / 10, Math.max(LEAST_EACH, 2 * effort / wanted.size()));
        Set<PackingItem> failed = new HashSet<>();
        for (int item : worthiest) {
            // What has no room has none when it comes again.
            if (interrupted.get() || failed.contains(items.get(item))) {
                continue;
            }
            List<Integer> more = new ArrayList<>(best.chosen());
            more.add(item);
            StripSearch search = search(problem, more, containers.size(), pool);
            if (search.startWithOneMore(best.arrangement(), stop(each, search))) {
                best = new Solution(more, search.best());
            } else {
                failed.add(items.get(item));
            }
        }
        return best;
    }

    /** What finds a place at once. */
    private Solution first(Problem problem, List<Integer> wanted) {
        FirstPlaces places = new FirstPlaces(problem.only(wanted), containers.size());
        Set<Integer> left = Set.copyOf(places.lay(worthiest(wanted)));
        int[] laid = IntStream.range(0, wanted.size()).filter(i -> !left.contains(i)).toArray();
        Arrangement arrangement = new Arrangement(laid.length);
        for (int i = 0; i < laid.length; i++) {
            arrangement.copy(places.laid(), laid[i], i);
        }
        return new Solution(IntStream.of(laid).mapToObj(wanted::get).toList(), arrangement);
    }

    private List<Placement> placements(Problem problem, Solution solution) {
        List<Placement> placements = new ArrayList<>();
        for (int i = 0; i < solution.chosen().size(); i++) {
            PlacementOption option = problem.options.get(solution.arrangement().option[i]);
            int number = solution.arrangement().container[i];
            PlaneContainer container = problem.containers.get(number);
            placements.add(
                    new Placement(
                            solution.chosen().get(i),
                            number,
                            option.rule().orientation(),
                            solution.arrangement().x[i]
                                    - container.originX()
                                    - option.shape().leftMm(),
                            solution.arrangement().y[i]
                                    - container.originY()
                                    - option.shape().lowMm()));
        }
        return placements;
    }
}
