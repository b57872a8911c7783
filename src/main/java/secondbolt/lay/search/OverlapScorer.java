package secondbolt.lay.search;

import java.util.Arrays;
import secondbolt.lay.near.BoxGrid;
import secondbolt.lay.near.PairTable;
import secondbolt.lay.nofit.InnerFit;
import secondbolt.lay.nofit.PairNoFitRegion;
import secondbolt.lay.nofit.PlaneContainer;

/**
 * Scores how badly an arrangement overlaps: the penetration depths, each with a weight that grows
 * while it lasts (guided local search). It is used by one thread.
 */
final class OverlapScorer {
    private static final double LEAST_GROWTH = 1.2;
    private static final double MOST_GROWTH = 2.0;
    private static final double DECAY = 0.95;

    /** Less than this comes from rounding to the grid: what fits exactly does not overlap. */
    static final double DUST_MM = 5e-6;

    /** No item, but what is not sound. */
    static final int RIM = -2;

    /** No item, and nothing else. */
    static final int NOTHING = -1;

    /** Up to so many items a look at each costs less than finding those that are near. */
    private static final int FEW = 24;

    final Problem problem;
    final Arrangement arrangement;
    final double[] limit;
    private final int n;
    private final InnerFit[] innerFits;
    private final int options;
    private final PenetrationDepths depths;
    private final PairTable pairs;
    private final BoxGrid grid;
    private final int[] near;
    private final double[] outsideWeight;
    private final double[] outsideLoss;
    private final double[] scale;
    private final double[] rightOf;
    private final double[] highOf;
    private final double reachMm;
    private long steps;

    OverlapScorer(Problem problem, double[] limit) {
        this.problem = problem;
        this.limit = limit.clone();
        n = problem.items();
        arrangement = new Arrangement(n);
        options = problem.options.size();
        innerFits = innerFits(problem);
        depths = new PenetrationDepths(problem);
        pairs = new PairTable(n);
        grid = grid(problem);
        near = new int[n];
        outsideWeight = new double[n];
        outsideLoss = new double[n];
        scale = new double[n];
        rightOf = new double[n];
        highOf = new double[n];
        for (int i = 0; i < n; i++) {
            scale[i] = Math.sqrt(Math.sqrt(problem.areaMm2(i)));
        }
        reachMm = problem.reachMm;
        resetWeights();
    }

    private static InnerFit[] innerFits(Problem problem) {
        int count = problem.options.size();
        InnerFit[] all = new InnerFit[count * problem.containers.size()];
        for (int i = 0; i < all.length; i++) {
            int container = i / count;
            PlacementOption option = problem.options.get(i % count);
            all[i] = problem.innerFit(container, option);
        }
        return all;
    }

    private static BoxGrid grid(Problem problem) {
        double left = Double.POSITIVE_INFINITY;
        double low = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (PlaneContainer container : problem.containers) {
            left = Math.min(left, container.left());
            low = Math.min(low, container.low());
            right = Math.max(right, container.right());
            high = Math.max(high, container.high());
        }
        double sizes = 0;
        for (int[] choices : problem.choices) {
            PlacementOption option = problem.options.get(choices[0]);
            sizes += (option.widthMm() + option.heightMm()) / 2;
        }
        int items = problem.items();
        double usual = Math.max(1, sizes / Math.max(1, items)) + problem.reachMm;
        return new BoxGrid(items, usual, left, low, right, high);
    }

    /** All items within a box, and few others; where they are few, that is no question. */
    private int near(double left, double low, double right, double high) {
        if (n > FEW) {
            return grid.near(left, low, right, high, near);
        }
        for (int i = 0; i < n; i++) {
            near[i] = i;
        }
        return n;
    }

    void resetWeights() {
        pairs.clear();
        Arrays.fill(outsideWeight, 1);
    }

    long steps() {
        return steps;
    }

    /** Takes everything over from another scorer, its weights too. */
    void set(OverlapScorer other) {
        arrangement.set(other.arrangement);
        pairs.set(other.pairs);
        System.arraycopy(other.outsideWeight, 0, outsideWeight, 0, n);
        System.arraycopy(other.outsideLoss, 0, outsideLoss, 0, n);
        System.arraycopy(other.limit, 0, limit, 0, limit.length);
        System.arraycopy(other.rightOf, 0, rightOf, 0, n);
        System.arraycopy(other.highOf, 0, highOf, 0, n);
        for (int i = 0; i < n; i++) {
            grid.put(i, arrangement.x[i], arrangement.y[i], rightOf[i], highOf[i]);
        }
    }

    /** Takes an arrangement as it is and finds what overlaps in it. */
    void take(Arrangement from) {
        arrangement.set(from);
        for (int i = 0; i < n; i++) {
            rightOf[i] = arrangement.x[i] + depths.widthMm(arrangement.option[i]);
            highOf[i] = arrangement.y[i] + depths.heightMm(arrangement.option[i]);
            grid.put(i, arrangement.x[i], arrangement.y[i], rightOf[i], highOf[i]);
        }
        for (int i = 0; i < n; i++) {
            refresh(i);
        }
    }

    /** The inner fit of an option in a container. */
    InnerFit innerFit(int container, int option) {
        return innerFits[container * options + option];
    }

    /** The nearest position across that is allowed. */
    double nearestX(int container, int option, double x) {
        return innerFit(container, option).nearestX(x);
    }

    /** The nearest position along that is allowed. */
    double nearestY(int container, int option, double y) {
        return innerFit(container, option).nearestY(y, limit[container]);
    }

    boolean hasRoom(int container, int option) {
        return innerFit(container, option).hasPosition(limit[container]);
    }

    /**
     * What an item would cost at a position; if that reaches the bound, anything from the bound on.
     *
     * @param container one that has room for the option
     * @param x an allowed position across, in millimetres
     * @param y an allowed position along, in millimetres
     */
    double cost(int item, int container, int option, double x, double y, double bound) {
        steps++;
        double off = depths.outsideDepthMm(container, problem.grade[item], option, x, y);
        double cost = outsideWeight[item] * loss(off, item, item);
        double left = x - reachMm;
        double low = y - reachMm;
        double right = x + depths.widthMm(option) + reachMm;
        double high = y + depths.heightMm(option) + reachMm;
        int count = near(left, low, right, high);
        for (int k = 0; k < count && cost < bound; k++) {
            int j = near[k];
            double ox = arrangement.x[j];
            double oy = arrangement.y[j];
            if (ox < right && oy < high && rightOf[j] > left && highOf[j] > low && j != item) {
                double depth = depths.depthMm(option, arrangement.option[j], ox - x, oy - y);
                if (depth > DUST_MM) {
                    cost += pairs.weight(item, j) * depth * scale[item] * scale[j];
                }
            }
        }
        return cost;
    }

    /** Nothing is laid as yet. */
    void clear() {
        grid.clear();
    }

    /** Lays one more item where an arrangement has it, clear of all others. */
    void add(int item, Arrangement from) {
        arrangement.copy(from, item, item);
        rightOf[item] = arrangement.x[item] + depths.widthMm(arrangement.option[item]);
        highOf[item] = arrangement.y[item] + depths.heightMm(arrangement.option[item]);
        grid.put(item, arrangement.x[item], arrangement.y[item], rightOf[item], highOf[item]);
    }

    /**
     * What an item that is not laid would meet at a position, of those that are: the number of one,
     * {@link #RIM} or {@link #NOTHING}.
     */
    int met(int item, int container, int option, double x, double y) {
        steps++;
        if (depths.outsideDepthMm(container, problem.grade[item], option, x, y) > DUST_MM) {
            return RIM;
        }
        double left = x - reachMm;
        double low = y - reachMm;
        double right = x + depths.widthMm(option) + reachMm;
        double high = y + depths.heightMm(option) + reachMm;
        int count = grid.near(left, low, right, high, near);
        for (int k = 0; k < count; k++) {
            int j = near[k];
            double ox = arrangement.x[j];
            double oy = arrangement.y[j];
            if (ox < right
                    && oy < high
                    && rightOf[j] > left
                    && highOf[j] > low
                    && depths.depthMm(option, arrangement.option[j], ox - x, oy - y) > DUST_MM) {
                return j;
            }
        }
        return NOTHING;
    }

    /** Where another option must not be, this one at the origin. */
    PairNoFitRegion pair(int option, int other) {
        return depths.pair(option, other);
    }

    private double loss(double depthMm, int item, int other) {
        return depthMm <= DUST_MM ? 0 : depthMm * scale[item] * scale[other];
    }

    double cost(int item) {
        return pairs.plusWeighted(outsideWeight[item] * outsideLoss[item], item);
    }

    boolean overlaps(int item) {
        return outsideLoss[item] > 0 || pairs.loses(item);
    }

    void move(int item, int container, int option, double x, double y) {
        arrangement.container[item] = container;
        arrangement.option[item] = option;
        arrangement.x[item] = x;
        arrangement.y[item] = y;
        refresh(item);
    }

    private void refresh(int item) {
        int option = arrangement.option[item];
        int container = arrangement.container[item];
        double x = arrangement.x[item];
        double y = arrangement.y[item];
        rightOf[item] = x + depths.widthMm(option);
        highOf[item] = y + depths.heightMm(option);
        grid.put(item, x, y, rightOf[item], highOf[item]);
        double off =
                innerFit(container, option).beyondMm(x, y, limit[container])
                        + depths.outsideDepthMm(container, problem.grade[item], option, x, y);
        outsideLoss[item] = loss(off, item, item);
        pairs.clearLosses(item);
        double left = x - reachMm;
        double low = y - reachMm;
        double right = rightOf[item] + reachMm;
        double high = highOf[item] + reachMm;
        int count = near(left, low, right, high);
        for (int k = 0; k < count; k++) {
            int j = near[k];
            double ox = arrangement.x[j];
            double oy = arrangement.y[j];
            if (j != item && ox < right && oy < high && rightOf[j] > left && highOf[j] > low) {
                double depth = depths.depthMm(option, arrangement.option[j], ox - x, oy - y);
                double loss = loss(depth, item, j);
                if (loss != 0) {
                    pairs.lose(item, j, loss);
                }
            }
        }
    }

    /** The sum of all overlaps, without weights; zero if nothing overlaps. */
    double total() {
        double total = 0;
        for (int i = 0; i < n; i++) {
            total = pairs.plusLossesAbove(total + outsideLoss[i], i);
        }
        return total;
    }

    double weighted() {
        double total = 0;
        for (int i = 0; i < n; i++) {
            total = pairs.plusWeightedAbove(total + outsideWeight[i] * outsideLoss[i], i);
        }
        return total;
    }

    /** Makes what overlaps weigh more, the worst most; what does not slowly weighs less again. */
    void reweigh() {
        double greatest = 0;
        for (int i = 0; i < n; i++) {
            greatest = Math.max(greatest, Math.max(outsideLoss[i], pairs.most(i)));
        }
        if (greatest == 0) {
            return;
        }
        double most = greatest;
        for (int i = 0; i < n; i++) {
            outsideWeight[i] = reweighed(outsideWeight[i], outsideLoss[i] / most);
        }
        pairs.reweigh((weight, loss) -> reweighed(weight, loss / most));
    }

    private static double reweighed(double weight, double share) {
        return share > 0
                ? weight * (LEAST_GROWTH + (MOST_GROWTH - LEAST_GROWTH) * share)
                : Math.max(1, weight * DECAY);
    }
}
