package secondbolt.lay.search;

import java.util.List;
import java.util.function.LongToDoubleFunction;
import secondbolt.lay.nofit.InnerFit;
import secondbolt.lay.nofit.PlaneContainer;
import secondbolt.parallel.Workers;

/**
 * Makes a lay shorter and shorter: in long strides first, then in short ones. Where a stride fails,
 * two large items change places in the arrangement that failed by least, and it tries again.
 */
final class StripSearch {
    private final Problem problem;
    private final int containers;
    private final Separation separation;
    private final SeededRandom random;
    private final double[] limit;
    private final int shrinking;
    private Arrangement best;
    private double bestLimit;

    /**
     * A search.
     *
     * @param containers how many of the problem's containers are used, one or more; the last of
     *     them is shortened
     * @param workers how many searches run side by side, one or more
     */
    StripSearch(Problem problem, int containers, int workers, long seed, Workers pool) {
        this.problem = problem;
        this.containers = containers;
        this.shrinking = containers - 1;
        limit = new double[problem.containers.size()];
        for (int i = 0; i < limit.length; i++) {
            limit[i] = problem.containers.get(i).high();
        }
        separation = new Separation(problem, containers, limit, workers, seed, pool);
        random = new SeededRandom(seed);
        bestLimit = limit[shrinking];
    }

    long steps() {
        return separation.steps();
    }

    double bestLimit() {
        return bestLimit;
    }

    Arrangement best() {
        return best;
    }

    /** Whether every item found a position, begun from positions at random. */
    boolean start(Separation.StopRule stop) {
        Arrangement any = new Arrangement(problem.items());
        for (int i = 0; i < problem.items(); i++) {
            scatter(any, i);
        }
        return startFrom(any, stop);
    }

    /** The same, begun from an arrangement that may overlap, or use more containers. */
    boolean startFrom(Arrangement arrangement, Separation.StopRule stop) {
        Arrangement from = arrangement.copy();
        for (int i = 0; i < problem.items(); i++) {
            if (from.container[i] >= containers) {
                scatter(from, i);
            }
        }
        boolean found = separation.run(from, limit, 200, 3, stop);
        if (found) {
            accept();
        }
        return found;
    }

    /** The same, begun from an arrangement that has no place yet for some of them. */
    boolean startFrom(Arrangement arrangement, List<Integer> left, Separation.StopRule stop) {
        Arrangement all = arrangement.copy();
        left.forEach(item -> scatter(all, item));
        return startFrom(all, stop);
    }

    /** The same, begun from an arrangement of all items but the last. */
    boolean startWithOneMore(Arrangement arrangement, Separation.StopRule stop) {
        Arrangement all = new Arrangement(problem.items());
        for (int i = 0; i < arrangement.container.length; i++) {
            all.copy(arrangement, i, i);
        }
        scatter(all, problem.items() - 1);
        return startFrom(all, stop);
    }

    /** How much of the last container's length the best takes, in mm; 0 while there is none. */
    double lengthMm() {
        return best == null ? 0 : bestLimit - problem.containers.get(shrinking).low();
    }

    private void scatter(Arrangement arrangement, int item) {
        int[] choices = problem.choices.get(item);
        arrangement.container[item] = 0;
        arrangement.option[item] = choices[0];
        placeAtStart(arrangement, item);
        OverlapScorer scorer = separation.first();
        for (int tries = 0; tries < 100; tries++) {
            int container = random.below(containers);
            int option = choices[random.below(choices.length)];
            if (scorer.hasRoom(container, option)) {
                InnerFit innerFit = scorer.innerFit(container, option);
                arrangement.container[item] = container;
                arrangement.option[item] = option;
                arrangement.x[item] = innerFit.atShareX(random.share());
                arrangement.y[item] = innerFit.atShareY(random.share(), scorer.limit[container]);
                return;
            }
        }
    }

    private void accept() {
        best = separation.best().copy();
        bestLimit = Math.min(bestLimit, extent(best));
    }

    /** How far the items reach on the container that is shortened. */
    private double extent(Arrangement arrangement) {
        double reach = problem.containers.get(shrinking).low();
        for (int i = 0; i < problem.items(); i++) {
            if (arrangement.container[i] == shrinking && !isFixed(arrangement.option[i])) {
                reach =
                        Math.max(
                                reach,
                                arrangement.y[i]
                                        + problem.options.get(arrangement.option[i]).heightMm());
            }
        }
        return reach;
    }

    /**
     * Moves every item into the container used to a shorter length; what is too long for that is
     * turned, or goes to the first container.
     */
    private void into(Arrangement arrangement, double newLimit) {
        OverlapScorer scorer = separation.first();
        for (int i = 0; i < problem.items(); i++) {
            if (arrangement.container[i] != shrinking) {
                continue;
            }
            if (!scorer.innerFit(shrinking, arrangement.option[i]).hasPosition(newLimit)) {
                arrangement.option[i] = lowest(i);
            }
            InnerFit innerFit = scorer.innerFit(shrinking, arrangement.option[i]);
            if (innerFit.hasPosition(newLimit)) {
                arrangement.x[i] = innerFit.nearestX(arrangement.x[i]);
                arrangement.y[i] = innerFit.nearestY(arrangement.y[i], newLimit);
            } else {
                arrangement.container[i] = 0;
                placeAtStart(arrangement, i);
            }
        }
    }

    /** Puts an item in the corner of the first container, or as near to it as it may lie. */
    private void placeAtStart(Arrangement arrangement, int item) {
        PlaneContainer first = problem.containers.get(0);
        InnerFit innerFit = separation.first().innerFit(0, arrangement.option[item]);
        boolean has = innerFit.hasPosition(limit[0]);
        arrangement.x[item] = has ? innerFit.nearestX(first.left()) : first.left();
        arrangement.y[item] = has ? innerFit.nearestY(first.low(), limit[0]) : first.low();
    }

    private double height(int option) {
        return problem.options.get(option).heightMm();
    }

    /** The option of an item that takes the least length. */
    private int lowest(int item) {
        int lowest = problem.choices.get(item)[0];
        for (int option : problem.choices.get(item)) {
            lowest = height(option) < height(lowest) ? option : lowest;
        }
        return lowest;
    }

    private boolean isFixed(int option) {
        return separation.first().innerFit(shrinking, option).isFixed();
    }

    /** Used to a shorter length than this, the last container has no position for some item. */
    private double shortest() {
        double shortest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < problem.items(); i++) {
            shortest = Math.max(shortest, leastHigh(i));
        }
        return Math.max(shortest, problem.containers.get(shrinking).low()) + 0.01;
    }

    private double leastHigh(int item) {
        double least = Double.POSITIVE_INFINITY;
        OverlapScorer scorer = separation.first();
        for (int option : problem.choices.get(item)) {
            for (int container = 0; container < shrinking; container++) {
                if (scorer.hasRoom(container, option)) {
                    return Double.NEGATIVE_INFINITY;
                }
            }
            least = Math.min(least, scorer.innerFit(shrinking, option).leastHighMm());
        }
        return least;
    }

    private double shortened(double share) {
        double low = problem.containers.get(shrinking).low();
        return low + (bestLimit - low) * (1 - share);
    }

    /**
     * Shortens in strides that halve on failure; then shakes the arrangement that failed by least.
     */
    void explore(Separation.StopRule stop) {
        double stride = 0.03;
        Arrangement from = best.copy();
        Arrangement miss = null;
        double missTotal = 0;
        while (!stop.endsAfter(steps())) {
            double next = shortened(stride);
            if (next < shortest()) {
                return;
            }
            into(from, next);
            limit[shrinking] = next;
            boolean small = stride < 0.0015;
            if (separation.run(from, limit, small ? 200 : 60, small ? 3 : 1, stop)) {
                accept();
                from = best.copy();
                miss = null;
                continue;
            }
            if (!small) {
                stride = Math.max(0.001, stride / 2);
                from = best.copy();
                continue;
            }
            if (miss == null || separation.bestTotal() < missTotal || random.share() < 0.1) {
                miss = separation.best().copy();
                missTotal = separation.bestTotal();
            }
            from = miss.copy();
            swap(from);
        }
    }

    /** Lets two large items change places. */
    private void swap(Arrangement arrangement) {
        int n = problem.items();
        int a = large();
        int b = large();
        for (int tries = 0; tries < 20 && (a == b || sameShape(a, b)); tries++) {
            b = large();
        }
        if (n < 2 || a == b) {
            return;
        }
        place(arrangement, a, b);
    }

    private boolean sameShape(int a, int b) {
        return problem.choices.get(a)[0] == problem.choices.get(b)[0];
    }

    private void place(Arrangement arrangement, int a, int b) {
        double ax = middleX(arrangement, a);
        double ay = middleY(arrangement, a);
        int ag = arrangement.container[a];
        double bx = middleX(arrangement, b);
        double by = middleY(arrangement, b);
        int bg = arrangement.container[b];
        put(arrangement, a, bg, bx, by);
        put(arrangement, b, ag, ax, ay);
    }

    private double middleX(Arrangement arrangement, int i) {
        return arrangement.x[i] + problem.options.get(arrangement.option[i]).widthMm() / 2;
    }

    private double middleY(Arrangement arrangement, int i) {
        return arrangement.y[i] + problem.options.get(arrangement.option[i]).heightMm() / 2;
    }

    private void put(Arrangement arrangement, int i, int container, double x, double y) {
        OverlapScorer scorer = separation.first();
        int o = arrangement.option[i];
        if (!scorer.hasRoom(container, o)) {
            return;
        }
        PlacementOption shape = problem.options.get(o);
        arrangement.container[i] = container;
        arrangement.x[i] = scorer.nearestX(container, o, x - shape.widthMm() / 2);
        arrangement.y[i] = scorer.nearestY(container, o, y - shape.heightMm() / 2);
    }

    /** The largest, by area, of three items taken at random. */
    private int large() {
        int n = problem.items();
        int best = random.below(n);
        for (int i = 0; i < 2; i++) {
            int other = random.below(n);
            if (problem.areaMm2(other) > problem.areaMm2(best)) {
                best = other;
            }
        }
        return best;
    }

    /**
     * Shortens the best by less and less.
     *
     * @param progress how much of the effort given is spent after so many steps, 0 to 1 or above
     */
    void compress(Separation.StopRule stop, LongToDoubleFunction progress) {
        while (!stop.endsAfter(steps())) {
            double share = progress.applyAsDouble(steps());
            double stride = 0.0005 + (0.00001 - 0.0005) * Math.min(1, share);
            double next = shortened(stride);
            if (next < shortest()) {
                return;
            }
            Arrangement from = best.copy();
            into(from, next);
            limit[shrinking] = next;
            if (separation.run(from, limit, 100, 5, stop)) {
                accept();
            }
        }
    }
}
