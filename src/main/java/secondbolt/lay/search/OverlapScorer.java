package secondbolt.lay.search;

import java.util.Arrays;
import secondbolt.lay.nofit.InnerFit;
import secondbolt.lay.nofit.PairNoFitRegion;

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

    final Problem problem;
    final Arrangement arrangement;
    final double[] limit;
    private final int n;
    private final InnerFit[] innerFits;
    private final int options;
    private final PenetrationDepths depths;
    private final double[] weight;
    private final double[] loss;
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
        weight = new double[n * n];
        loss = new double[n * n];
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

    void resetWeights() {
        Arrays.fill(weight, 1);
        Arrays.fill(outsideWeight, 1);
    }

    long steps() {
        return steps;
    }

    /** Takes everything over from another scorer, its weights too. */
    void set(OverlapScorer other) {
        arrangement.set(other.arrangement);
        System.arraycopy(other.weight, 0, weight, 0, weight.length);
        System.arraycopy(other.loss, 0, loss, 0, loss.length);
        System.arraycopy(other.outsideWeight, 0, outsideWeight, 0, n);
        System.arraycopy(other.outsideLoss, 0, outsideLoss, 0, n);
        System.arraycopy(other.limit, 0, limit, 0, limit.length);
        System.arraycopy(other.rightOf, 0, rightOf, 0, n);
        System.arraycopy(other.highOf, 0, highOf, 0, n);
    }

    /** Takes an arrangement as it is and finds what overlaps in it. */
    void take(Arrangement from) {
        arrangement.set(from);
        for (int i = 0; i < n; i++) {
            rightOf[i] = arrangement.x[i] + depths.widthMm(arrangement.option[i]);
            highOf[i] = arrangement.y[i] + depths.heightMm(arrangement.option[i]);
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
        int row = item * n;
        for (int j = 0; j < n && cost < bound; j++) {
            double ox = arrangement.x[j];
            double oy = arrangement.y[j];
            if (ox < right && oy < high && rightOf[j] > left && highOf[j] > low && j != item) {
                double depth = depths.depthMm(option, arrangement.option[j], ox - x, oy - y);
                if (depth > DUST_MM) {
                    cost += weight[row + j] * depth * scale[item] * scale[j];
                }
            }
        }
        return cost;
    }

    /** Where another option must not be, this one at the origin. */
    PairNoFitRegion pair(int option, int other) {
        return depths.pair(option, other);
    }

    private double loss(double depthMm, int item, int other) {
        return depthMm <= DUST_MM ? 0 : depthMm * scale[item] * scale[other];
    }

    double cost(int item) {
        double cost = outsideWeight[item] * outsideLoss[item];
        for (int j = 0; j < n; j++) {
            cost += weight[item * n + j] * loss[item * n + j];
        }
        return cost;
    }

    boolean overlaps(int item) {
        if (outsideLoss[item] > 0) {
            return true;
        }
        for (int j = 0; j < n; j++) {
            if (loss[item * n + j] > 0) {
                return true;
            }
        }
        return false;
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
        double off =
                innerFit(container, option).beyondMm(x, y, limit[container])
                        + depths.outsideDepthMm(container, problem.grade[item], option, x, y);
        outsideLoss[item] = loss(off, item, item);
        for (int j = 0; j < n; j++) {
            double ox = arrangement.x[j];
            double oy = arrangement.y[j];
            boolean near =
                    j != item
                            && ox < rightOf[item] + reachMm
                            && oy < highOf[item] + reachMm
                            && rightOf[j] > x - reachMm
                            && highOf[j] > y - reachMm;
            double depth = near ? depths.depthMm(option, arrangement.option[j], ox - x, oy - y) : 0;
            loss[item * n + j] = loss(depth, item, j);
            loss[j * n + item] = loss[item * n + j];
        }
    }

    /** The sum of all overlaps, without weights; zero if nothing overlaps. */
    double total() {
        double total = 0;
        for (int i = 0; i < n; i++) {
            total += outsideLoss[i];
            for (int j = i + 1; j < n; j++) {
                total += loss[i * n + j];
            }
        }
        return total;
    }

    double weighted() {
        double total = 0;
        for (int i = 0; i < n; i++) {
            total += outsideWeight[i] * outsideLoss[i];
            for (int j = i + 1; j < n; j++) {
                total += weight[i * n + j] * loss[i * n + j];
            }
        }
        return total;
    }

    /** Makes what overlaps weigh more, the worst most; what does not slowly weighs less again. */
    void reweigh() {
        double most = 0;
        for (int i = 0; i < n; i++) {
            most = Math.max(most, outsideLoss[i]);
            for (int j = i + 1; j < n; j++) {
                most = Math.max(most, loss[i * n + j]);
            }
        }
        if (most == 0) {
            return;
        }
        for (int i = 0; i < n; i++) {
            outsideWeight[i] = reweighed(outsideWeight[i], outsideLoss[i] / most);
            for (int j = i + 1; j < n; j++) {
                double now = reweighed(weight[i * n + j], loss[i * n + j] / most);
                weight[i * n + j] = now;
                weight[j * n + i] = now;
            }
        }
    }

    private static double reweighed(double weight, double share) {
        return share > 0
                ? weight * (LEAST_GROWTH + (MOST_GROWTH - LEAST_GROWTH) * share)
                : Math.max(1, weight * DECAY);
    }
}
