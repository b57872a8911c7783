package secondbolt.lay.search;

import java.util.Arrays;
import java.util.Optional;

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
    private final Stance[] stances;
    private final Bounds[] bounds;
    private final double[] weight;
    private final double[] loss;
    private final double[] roomWeight;
    private final double[] roomLoss;
    private final double[] scale;
    private final double dustMm;
    private final double reachMm;
    private long steps;

    Scorer(Problem problem, double[] limit) {
        this.problem = problem;
        this.limit = limit.clone();
        n = problem.items();
        layout = new Layout(n);
        stances = problem.stances.toArray(new Stance[0]);
        bounds = bounds(problem);
        weight = new double[n * n];
        loss = new double[n * n];
        roomWeight = new double[n];
        roomLoss = new double[n];
        scale = new double[n];
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
    }

    /** Takes a layout as it is and finds what overlaps in it. */
    void take(Layout from) {
        layout.set(from);
        for (int i = 0; i < n; i++) {
            refresh(i);
        }
    }

    /** Where a stance may lie on a ground. */
    Bounds bounds(int ground, int stance) {
        return bounds[ground * stances.length + stance];
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

    /** What an item would cost at a place; anything from the bound on if it reaches it. */
    double cost(int item, int ground, int stance, double x, double y, double bound) {
        steps++;
        Stance shape = stances[stance];
        double cost = roomWeight[item] * roomDepth(item, ground, stance, x, y);
        double left = x - reachMm;
        double low = y - reachMm;
        double right = x + shape.widthMm() + reachMm;
        double high = y + shape.heightMm() + reachMm;
        int row = item * n;
        for (int j = 0; j < n && cost < bound; j++) {
            double ox = layout.x[j];
            double oy = layout.y[j];
            if (j == item || ox >= right || oy >= high) {
                continue;
            }
            Stance other = stances[layout.stance[j]];
            if (ox + other.widthMm() <= left || oy + other.heightMm() <= low) {
                continue;
            }
            double depth = depth(item, stance, x, y, j, ox, oy);
            if (depth > 0) {
                cost += weight[row + j] * depth;
            }
        }
        return cost;
    }

    private double depth(int item, int stance, double x, double y, int j, double ox, double oy) {
        int shape = stances[stance].shape();
        int other = stances[layout.stance[j]].shape();
        double depth =
                shape <= other
                        ? problem.between(shape, other).depthMm(ox - x, oy - y)
                        : problem.between(other, shape).depthMm(x - ox, y - oy);
        return depth <= dustMm ? 0 : depth * scale[item] * scale[j];
    }

    private double roomDepth(int item, int ground, int stance, double x, double y) {
        double depth = bounds(ground, stance).beyondMm(x, y, limit[ground]);
        Optional<Field> room = problem.room(ground, stances[stance].shape(), problem.grade[item]);
        if (room.isPresent()) {
            depth += room.get().depthMm(x, y);
        }
        return depth <= dustMm ? 0 : depth * scale[item] * scale[item];
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
        double x = layout.x[item];
        double y = layout.y[item];
        Stance shape = stances[stance];
        roomLoss[item] = roomDepth(item, layout.ground[item], stance, x, y);
        for (int j = 0; j < n; j++) {
            double ox = layout.x[j];
            double oy = layout.y[j];
            Stance other = stances[layout.stance[j]];
            boolean near =
                    j != item
                            && ox < x + shape.widthMm() + reachMm
                            && oy < y + shape.heightMm() + reachMm
                            && ox + other.widthMm() > x - reachMm
                            && oy + other.heightMm() > y - reachMm;
            double depth = near ? depth(item, stance, x, y, j, ox, oy) : 0;
            loss[item * n + j] = depth;
            loss[j * n + item] = depth;
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
