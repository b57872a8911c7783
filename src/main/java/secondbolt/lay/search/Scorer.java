package secondbolt.lay.search;

import java.util.Arrays;

/**
 * How badly a layout overlaps, with a weight for every two items that grows while they stay on each
 * other (guided local search). Not for sharing.
 */
final class Scorer {
    private static final double LEAST_GROWTH = 1.2;
    private static final double MOST_GROWTH = 2.0;
    private static final double DECAY = 0.95;

    final Problem problem;
    final Layout layout;
    final double[] limit;
    private final int n;
    private final Bounds[] bounds;
    private final int stances;
    private final Neighbours neighbours;
    private final double[] weight;
    private final double[] loss;
    private final double[] roomWeight;
    private final double[] roomLoss;
    private final double[] scale;
    private final double[] rightOf;
    private final double[] highOf;
    private final double dustMm;
    private final double reachMm;
    private long steps;

    Scorer(Problem problem, double[] limit) {
        this.problem = problem;
        this.limit = limit.clone();
        n = problem.items();
        layout = new Layout(n);
        stances = problem.stances.size();
        bounds = bounds(problem);
        neighbours = new Neighbours(problem);
        weight = new double[n * n];
        loss = new double[n * n];
        roomWeight = new double[n];
        roomLoss = new double[n];
        scale = new double[n];
        rightOf = new double[n];
        highOf = new double[n];
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < n; i++) {
            double size = Math.sqrt(problem.areaMm2(i));
            scale[i] = Math.sqrt(size);
            least = Math.min(least, size);
        }
        dustMm = least * 1e-9;
        reachMm = problem.reachMm;
        resetWeights();
    }

    private static Bounds[] bounds(Problem problem) {
        int count = problem.stances.size();
        Bounds[] all = new Bounds[count * problem.grounds.size()];
        for (int i = 0; i < all.length; i++) {
            int ground = i / count;
            Stance stance = problem.stances.get(i % count);
            all[i] = Bounds.of(problem.grounds.get(ground), ground, stance);
        }
        return all;
    }

    void resetWeights() {
        Arrays.fill(weight, 1);
        Arrays.fill(roomWeight, 1);
    }

    long steps() {
        return steps;
    }

    /** Everything from another, its weights too. */
    void set(Scorer other) {
        layout.set(other.layout);
        System.arraycopy(other.weight, 0, weight, 0, weight.length);
        System.arraycopy(other.loss, 0, loss, 0, loss.length);
        System.arraycopy(other.roomWeight, 0, roomWeight, 0, n);
        System.arraycopy(other.roomLoss, 0, roomLoss, 0, n);
        System.arraycopy(other.limit, 0, limit, 0, limit.length);
        System.arraycopy(other.rightOf, 0, rightOf, 0, n);
        System.arraycopy(other.highOf, 0, highOf, 0, n);
    }

    /** Takes a layout as it is and finds what overlaps in it. */
    void take(Layout from) {
        layout.set(from);
        for (int i = 0; i < n; i++) {
            rightOf[i] = layout.x[i] + neighbours.widthMm(layout.stance[i]);
            highOf[i] = layout.y[i] + neighbours.heightMm(layout.stance[i]);
        }
        for (int i = 0; i < n; i++) {
            refresh(i);
        }
    }

    /** Where a stance may lie on a ground. */
    Bounds bounds(int ground, int stance) {
        return bounds[ground * stances + stance];
    }

    /** The nearest place across that is within the bounds. */
    double withinX(int ground, int stance, double x) {
        return bounds(ground, stance).withinX(x);
    }

    /** The nearest place along that is within the bounds. */
    double withinY(int ground, int stance, double y) {
        return bounds(ground, stance).withinY(y, limit[ground]);
    }

    boolean hasRoom(int ground, int stance) {
        return bounds(ground, stance).hasPlace(limit[ground]);
    }

    /**
     * What an item would cost at a place; anything from the bound on if it reaches it.
     *
     * @param ground one that has room for the stance
     * @param x within the bounds
     * @param y within the bounds
     */
    double cost(int item, int ground, int stance, double x, double y, double bound) {
        steps++;
        double off = neighbours.offMm(ground, problem.grade[item], stance, x, y);
        double cost = roomWeight[item] * loss(off, item, item);
        double left = x - reachMm;
        double low = y - reachMm;
        double right = x + neighbours.widthMm(stance) + reachMm;
        double high = y + neighbours.heightMm(stance) + reachMm;
        int row = item * n;
        for (int j = 0; j < n && cost < bound; j++) {
            double ox = layout.x[j];
            double oy = layout.y[j];
            if (ox < right && oy < high && rightOf[j] > left && highOf[j] > low && j != item) {
                double depth = neighbours.depthMm(stance, layout.stance[j], ox - x, oy - y);
                if (depth > dustMm) {
                    cost += weight[row + j] * depth * scale[item] * scale[j];
                }
            }
        }
        return cost;
    }

    private double loss(double depthMm, int item, int other) {
        return depthMm <= dustMm ? 0 : depthMm * scale[item] * scale[other];
    }

    double cost(int item) {
        double cost = roomWeight[item] * roomLoss[item];
        for (int j = 0; j < n; j++) {
            cost += weight[item * n + j] * loss[item * n + j];
        }
        return cost;
    }

    boolean overlaps(int item) {
        if (roomLoss[item] > 0) {
            return true;
        }
        for (int j = 0; j < n; j++) {
            if (loss[item * n + j] > 0) {
                return true;
            }
        }
        return false;
    }

    void move(int item, int ground, int stance, double x, double y) {
        layout.ground[item] = ground;
        layout.stance[item] = stance;
        layout.x[item] = x;
        layout.y[item] = y;
        refresh(item);
    }

    private void refresh(int item) {
        int stance = layout.stance[item];
        int ground = layout.ground[item];
        double x = layout.x[item];
        double y = layout.y[item];
        rightOf[item] = x + neighbours.widthMm(stance);
        highOf[item] = y + neighbours.heightMm(stance);
        double off =
                bounds(ground, stance).beyondMm(x, y, limit[ground])
                        + neighbours.offMm(ground, problem.grade[item], stance, x, y);
        roomLoss[item] = loss(off, item, item);
        for (int j = 0; j < n; j++) {
            double ox = layout.x[j];
            double oy = layout.y[j];
            boolean near =
                    j != item
                            && ox < rightOf[item] + reachMm
                            && oy < highOf[item] + reachMm
                            && rightOf[j] > x - reachMm
                            && highOf[j] > y - reachMm;
            double depth = near ? neighbours.depthMm(stance, layout.stance[j], ox - x, oy - y) : 0;
            loss[item * n + j] = loss(depth, item, j);
            loss[j * n + item] = loss[item * n + j];
        }
    }

    /** What all overlaps come to, without weights. */
    double total() {
        double total = 0;
        for (int i = 0; i < n; i++) {
            total += roomLoss[i];
            for (int j = i + 1; j < n; j++) {
                total += loss[i * n + j];
            }
        }
        return total;
    }

    double weighted() {
        double total = 0;
        for (int i = 0; i < n; i++) {
            total += roomWeight[i] * roomLoss[i];
            for (int j = i + 1; j < n; j++) {
                total += weight[i * n + j] * loss[i * n + j];
            }
        }
        return total;
    }

    /** What overlaps weighs more, the worst most; what does not forgets. */
    void reweigh() {
        double most = 0;
        for (int i = 0; i < n; i++) {
            most = Math.max(most, roomLoss[i]);
            for (int j = i + 1; j < n; j++) {
                most = Math.max(most, loss[i * n + j]);
            }
        }
        if (most == 0) {
            return;
        }
        for (int i = 0; i < n; i++) {
            roomWeight[i] = reweighed(roomWeight[i], roomLoss[i] / most);
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
