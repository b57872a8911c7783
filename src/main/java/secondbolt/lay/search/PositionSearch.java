package secondbolt.lay.search;

import secondbolt.lay.nofit.InnerFit;
import secondbolt.lay.nofit.PairNoFitRegion;

/**
 * Looks for a better position of one item: near by, then all over the containers, then step by step
 * from the best of those.
 */
final class PositionSearch {
    private static final int KEPT = 3;

    /** So many positions are looked at all over the containers, and so many near by. */
    private static final int WIDE = 32;

    private static final int NEAR = 16;

    /** So many touching another item. */
    private static final int BESIDE = 2;

    private final OverlapScorer scorer;
    private final SeededRandom random;
    private final int containers;
    private final double[] costs = new double[KEPT];
    private final int[] keptContainers = new int[KEPT];
    private final int[] keptOptions = new int[KEPT];
    private final double[] xs = new double[KEPT];
    private final double[] ys = new double[KEPT];
    private int kept;
    private double bestCost;
    private double bestX;
    private double bestY;

    PositionSearch(OverlapScorer scorer, SeededRandom random, int containers) {
        this.scorer = scorer;
        this.random = random;
        this.containers = containers;
    }

    /** Moves an item to a better position if one is found. */
    void improve(int item) {
        double was = scorer.cost(item);
        kept = 0;
        Arrangement arrangement = scorer.arrangement;
        int[] choices = scorer.problem.choices.get(item);
        keep(
                was,
                arrangement.container[item],
                arrangement.option[item],
                arrangement.x[item],
                arrangement.y[item]);
        for (int i = 0; i < NEAR; i++) {
            nearBy(item, choices);
        }
        for (int i = 0; i < WIDE; i++) {
            anywhere(item, choices);
        }
        for (int i = 0; i < BESIDE; i++) {
            beside(item, choices);
        }
        double least = was;
        int at = -1;
        double x = 0;
        double y = 0;
        for (int i = 0; i < kept; i++) {
            if (!scorer.hasRoom(keptContainers[i], keptOptions[i])) {
                continue;
            }
            descend(item, i);
            if (bestCost < least) {
                least = bestCost;
                at = i;
                x = bestX;
                y = bestY;
            }
        }
        if (at >= 0) {
            scorer.move(item, keptContainers[at], keptOptions[at], x, y);
        }
    }

    private void nearBy(int item, int[] choices) {
        Arrangement arrangement = scorer.arrangement;
        int container = arrangement.container[item];
        int option = choices[random.below(choices.length)];
        if (!scorer.hasRoom(container, option)) {
            return;
        }
        PlacementOption shape = scorer.problem.options.get(option);
        PlacementOption is = scorer.problem.options.get(arrangement.option[item]);
        double middleX = arrangement.x[item] + is.widthMm() / 2;
        double middleY = arrangement.y[item] + is.heightMm() / 2;
        double x = middleX - shape.widthMm() / 2 + (random.share() - 0.5) * shape.widthMm();
        double y = middleY - shape.heightMm() / 2 + (random.share() - 0.5) * shape.heightMm();
        score(item, container, option, x, y);
    }

    private void anywhere(int item, int[] choices) {
        int container = container();
        int option = choices[random.below(choices.length)];
        if (!scorer.hasRoom(container, option)) {
            return;
        }
        InnerFit innerFit = scorer.innerFit(container, option);
        double x = innerFit.atShareX(random.share());
        double y = innerFit.atShareY(random.share(), scorer.limit[container]);
        score(item, container, option, x, y);
    }

    /** Touching another, in line with it or not: so what fits exactly is found. */
    private void beside(int item, int[] choices) {
        Arrangement arrangement = scorer.arrangement;
        int other = random.below(scorer.problem.items());
        int container = arrangement.container[other];
        int option = choices[random.below(choices.length)];
        int way = random.below(4);
        double share = random.share();
        if (other == item || !scorer.hasRoom(container, option)) {
            return;
        }
        double ox = arrangement.x[other];
        double oy = arrangement.y[other];
        boolean inLine = (way & 2) != 0;
        double x = scorer.nearestX(container, option, inLine ? ox : arrangement.x[item]);
        double y = scorer.nearestY(container, option, inLine ? oy : arrangement.y[item]);
        PairNoFitRegion pair = scorer.pair(option, arrangement.option[other]);
        if ((way & 1) == 0) {
            x = ox - pair.touchX(oy - y, share);
        } else {
            y = oy - pair.touchY(ox - x, share);
        }
        if (!Double.isNaN(x + y)) {
            score(item, container, option, x, y);
        }
    }

    private int container() {
        int count = containers;
        if (count == 1) {
            return 0;
        }
        double all = 0;
        for (int i = 0; i < count; i++) {
            all += scorer.problem.containers.get(i).areaMm2();
        }
        double at = random.share() * all;
        for (int i = 0; i < count; i++) {
            at -= scorer.problem.containers.get(i).areaMm2();
            if (at < 0) {
                return i;
            }
        }
        return count - 1;
    }

    private void score(int item, int container, int option, double x, double y) {
        double cx = scorer.nearestX(container, option, x);
        double cy = scorer.nearestY(container, option, y);
        double bound = kept < KEPT ? Double.POSITIVE_INFINITY : costs[KEPT - 1];
        double cost = scorer.cost(item, container, option, cx, cy, bound);
        if (cost < bound) {
            keep(cost, container, option, cx, cy);
        }
    }

    private void keep(double cost, int container, int option, double x, double y) {
        int at = kept < KEPT ? kept++ : KEPT - 1;
        while (at > 0 && costs[at - 1] > cost) {
            copy(at - 1, at);
            at--;
        }
        costs[at] = cost;
        keptContainers[at] = container;
        keptOptions[at] = option;
        xs[at] = x;
        ys[at] = y;
    }

    private void copy(int from, int to) {
        costs[to] = costs[from];
        keptContainers[to] = keptContainers[from];
        keptOptions[to] = keptOptions[from];
        xs[to] = xs[from];
        ys[to] = ys[from];
    }

    /** Steps along one axis or slantwise: longer while it helps, shorter when it does not. */
    private void descend(int item, int which) {
        int container = keptContainers[which];
        int option = keptOptions[which];
        PlacementOption shape = scorer.problem.options.get(option);
        double size = Math.min(shape.widthMm(), shape.heightMm());
        InnerFit innerFit = scorer.innerFit(container, option);
        double stepX = Math.max(size * 0.12, innerFit.across().everyMm());
        double stepY = Math.max(size * 0.12, innerFit.along().everyMm());
        double least = size * 0.0005;
        double x = xs[which];
        double y = ys[which];
        double cost = costs[which];
        while (cost > 0 && (stepX > least || stepY > least)) {
            int direction = random.below(4);
            double byX = direction == 1 ? 0 : stepX;
            double byY = direction == 0 ? 0 : direction == 3 ? -stepY : stepY;
            double ax = scorer.nearestX(container, option, x + byX);
            double ay = scorer.nearestY(container, option, y + byY);
            double bx = scorer.nearestX(container, option, x - byX);
            double by = scorer.nearestY(container, option, y - byY);
            double a = scorer.cost(item, container, option, ax, ay, cost);
            double b = scorer.cost(item, container, option, bx, by, Math.min(a, cost));
            double next = Math.min(a, b);
            boolean better = next < cost;
            if (better) {
                cost = next;
                x = b < a ? bx : ax;
                y = b < a ? by : ay;
            }
            double factor = better ? 1.1 : direction > 1 ? 0.7071 : 0.5;
            stepX = direction == 1 ? stepX : stepX * factor;
            stepY = direction == 0 ? stepY : stepY * factor;
        }
        bestCost = cost;
        bestX = x;
        bestY = y;
    }
}
