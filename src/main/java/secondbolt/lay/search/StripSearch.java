package secondbolt.lay.search;

/**
 * Makes a lay shorter and shorter: long strides first, then short ones. On failure two large items
 * change places in a near miss, and it tries again.
 */
final class StripSearch {
    private final Problem problem;
    private final int grounds;
    private final Separation separation;
    private final Dice dice;
    private final double[] limit;
    private final int shrinking;
    private Layout best;
    private double bestLimit;

    /**
     * A search.
     *
     * @param grounds how many of the problem's grounds are used; the last of them is shortened
     */
    StripSearch(Problem problem, int grounds, int workers, long seed, Crew crew) {
        this.problem = problem;
        this.grounds = grounds;
        this.shrinking = grounds - 1;
        limit = new double[problem.grounds.size()];
        for (int i = 0; i < limit.length; i++) {
            limit[i] = problem.grounds.get(i).high();
        }
        separation = new Separation(problem, grounds, limit, workers, seed, crew);
        dice = new Dice(seed);
        bestLimit = limit[shrinking];
    }

    long steps() {
        return separation.steps();
    }

    double bestLimit() {
        return bestLimit;
    }

    Layout best() {
        return best;
    }

    /** Whether everything found a place. */
    boolean start(Stop stop) {
        Layout any = new Layout(problem.items());
        for (int i = 0; i < problem.items(); i++) {
            scatter(any, i);
        }
        return startFrom(any, stop);
    }

    /** The same from a layout that may overlap, or use more grounds. */
    boolean startFrom(Layout layout, Stop stop) {
        Layout from = layout.copy();
        for (int i = 0; i < problem.items(); i++) {
            if (from.ground[i] >= grounds) {
                scatter(from, i);
            }
        }
        boolean found = separation.run(from, limit, 200, 3, stop);
        if (found) {
            accept();
        }
        return found;
    }

    /** The same from a layout of all items but the last. */
    boolean startWithOneMore(Layout layout, Stop stop) {
        Layout all = new Layout(problem.items());
        for (int i = 0; i < layout.ground.length; i++) {
            all.copy(layout, i, i);
        }
        scatter(all, problem.items() - 1);
        return startFrom(all, stop);
    }

    /** How much of the last ground's length the best takes; 0 while there is none. */
    double lengthMm() {
        return best == null ? 0 : bestLimit - problem.grounds.get(shrinking).low();
    }

    private void scatter(Layout layout, int item) {
        int[] choices = problem.choices.get(item);
        layout.ground[item] = 0;
        layout.stance[item] = choices[0];
        placeAtStart(layout, item);
        Scorer scorer = separation.first();
        for (int tries = 0; tries < 100; tries++) {
            int ground = dice.below(grounds);
            int stance = choices[dice.below(choices.length)];
            if (scorer.hasRoom(ground, stance)) {
                Bounds bounds = scorer.bounds(ground, stance);
                layout.ground[item] = ground;
                layout.stance[item] = stance;
                layout.x[item] = bounds.atShareX(dice.share());
                layout.y[item] = bounds.atShareY(dice.share(), scorer.limit[ground]);
                return;
            }
        }
    }

    private void accept() {
        best = separation.best().copy();
        bestLimit = Math.min(bestLimit, extent(best));
    }

    /** How far the items reach on the ground that is shortened. */
    private double extent(Layout layout) {
        double reach = problem.grounds.get(shrinking).low();
        for (int i = 0; i < problem.items(); i++) {
            if (layout.ground[i] == shrinking && !isFixed(layout.stance[i])) {
                reach =
                        Math.max(
                                reach,
                                layout.y[i] + problem.stances.get(layout.stance[i]).heightMm());
            }
        }
        return reach;
    }

    /**
     * Everything within the shorter ground; what is too long for it is turned, or goes elsewhere.
     */
    private void into(Layout layout, double newLimit) {
        Scorer scorer = separation.first();
        for (int i = 0; i < problem.items(); i++) {
            if (layout.ground[i] != shrinking) {
                continue;
            }
            if (!scorer.bounds(shrinking, layout.stance[i]).hasPlace(newLimit)) {
                layout.stance[i] = lowest(i);
            }
            Bounds bounds = scorer.bounds(shrinking, layout.stance[i]);
            if (bounds.hasPlace(newLimit)) {
                layout.x[i] = bounds.withinX(layout.x[i]);
                layout.y[i] = bounds.withinY(layout.y[i], newLimit);
            } else {
                layout.ground[i] = 0;
                placeAtStart(layout, i);
            }
        }
    }

    /** In the corner of the first ground, or as near as it may lie. */
    private void placeAtStart(Layout layout, int item) {
        Ground first = problem.grounds.get(0);
        Bounds bounds = separation.first().bounds(0, layout.stance[item]);
        boolean has = bounds.hasPlace(limit[0]);
        layout.x[item] = has ? bounds.withinX(first.left()) : first.left();
        layout.y[item] = has ? bounds.withinY(first.low(), limit[0]) : first.low();
    }

    private double height(int stance) {
        return problem.stances.get(stance).heightMm();
    }

    /** The stance of an item that takes least length. */
    private int lowest(int item) {
        int lowest = problem.choices.get(item)[0];
        for (int stance : problem.choices.get(item)) {
            lowest = height(stance) < height(lowest) ? stance : lowest;
        }
        return lowest;
    }

    private boolean isFixed(int stance) {
        return separation.first().bounds(shrinking, stance).isFixed();
    }

    /** Shorter than this the last ground cannot become, or an item has no place at all. */
    private double shortest() {
        double shortest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < problem.items(); i++) {
            shortest = Math.max(shortest, leastHigh(i));
        }
        return Math.max(shortest, problem.grounds.get(shrinking).low()) + 0.01;
    }

    private double leastHigh(int item) {
        double least = Double.POSITIVE_INFINITY;
        Scorer scorer = separation.first();
        for (int stance : problem.choices.get(item)) {
            for (int ground = 0; ground < shrinking; ground++) {
                if (scorer.hasRoom(ground, stance)) {
                    return Double.NEGATIVE_INFINITY;
                }
            }
            least = Math.min(least, scorer.bounds(shrinking, stance).leastHighMm());
        }
        return least;
    }

    private double shortened(double share) {
        double low = problem.grounds.get(shrinking).low();
        return low + (bestLimit - low) * (1 - share);
    }

    /** Shortens in strides that halve on failure; then near misses are shaken up. */
    void explore(Stop stop) {
        double stride = 0.03;
        Layout from = best.copy();
        Layout miss = null;
        double missTotal = 0;
        while (!stop.now(steps())) {
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
            if (miss == null || separation.bestTotal() < missTotal || dice.share() < 0.1) {
                miss = separation.best().copy();
                missTotal = separation.bestTotal();
            }
            from = miss.copy();
            swap(from);
        }
    }

    /** Two large items change places. */
    private void swap(Layout layout) {
        int n = problem.items();
        int a = large();
        int b = large();
        for (int tries = 0; tries < 20 && (a == b || sameShape(a, b)); tries++) {
            b = large();
        }
        if (n < 2 || a == b) {
            return;
        }
        place(layout, a, b);
    }

    private boolean sameShape(int a, int b) {
        return problem.choices.get(a)[0] == problem.choices.get(b)[0];
    }

    private void place(Layout layout, int a, int b) {
        double ax = middleX(layout, a);
        double ay = middleY(layout, a);
        int ag = layout.ground[a];
        double bx = middleX(layout, b);
        double by = middleY(layout, b);
        int bg = layout.ground[b];
        put(layout, a, bg, bx, by);
        put(layout, b, ag, ax, ay);
    }

    private double middleX(Layout layout, int i) {
        return layout.x[i] + problem.stances.get(layout.stance[i]).widthMm() / 2;
    }

    private double middleY(Layout layout, int i) {
        return layout.y[i] + problem.stances.get(layout.stance[i]).heightMm() / 2;
    }

    private void put(Layout layout, int i, int ground, double x, double y) {
        Scorer scorer = separation.first();
        int o = layout.stance[i];
        if (!scorer.hasRoom(ground, o)) {
            return;
        }
        Stance shape = problem.stances.get(o);
        layout.ground[i] = ground;
        layout.x[i] = scorer.withinX(ground, o, x - shape.widthMm() / 2);
        layout.y[i] = scorer.withinY(ground, o, y - shape.heightMm() / 2);
    }

    /** One of the larger half, by area. */
    private int large() {
        int n = problem.items();
        int best = dice.below(n);
        for (int i = 0; i < 2; i++) {
            int other = dice.below(n);
            if (problem.areaMm2(other) > problem.areaMm2(best)) {
                best = other;
            }
        }
        return best;
    }

    /** From the best, by less and less. */
    void compress(Stop stop, Stop.Progress progress) {
        while (!stop.now(steps())) {
            double share = progress.share(steps());
            double stride = 0.0005 + (0.00001 - 0.0005) * Math.min(1, share);
            double next = shortened(stride);
            if (next < shortest()) {
                return;
            }
            Layout from = best.copy();
            into(from, next);
            limit[shrinking] = next;
            if (separation.run(from, limit, 100, 5, stop)) {
                accept();
            }
        }
    }
}
