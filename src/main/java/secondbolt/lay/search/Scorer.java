package secondbolt.lay.search;

import java.util.Arrays;
import java.util.List;
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
    private final Orientation[] shapes;
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
        shapes = problem.orientations.toArray(new Orientation[0]);
        weight = new double[n * n];
        loss = new double[n * n];
        roomWeight = new double[n];
        roomLoss = new double[n];
        scale = new double[n];
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < n; i++) {
            Orientation shape = shapes[problem.choices.get(i)[0]];
            scale[i] = Math.sqrt(Math.sqrt(shape.areaMm2()));
            least = Math.min(least, Math.sqrt(shape.areaMm2()));
        }
        dustMm = least * 1e-9;
        reachMm = problem.reachMm;
        resetWeights();
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

    /** The greatest place of an orientation's low left corner on a ground. */
    double highestX(int ground, int orientation) {
        return problem.grounds.get(ground).right() - shapes[orientation].widthMm();
    }

    double highestY(int ground, int orientation) {
        return Math.min(limit[ground], problem.grounds.get(ground).high())
                - shapes[orientation].heightMm();
    }

    double leastX(int ground) {
        return problem.grounds.get(ground).left();
    }

    double leastY(int ground) {
        return problem.grounds.get(ground).low();
    }

    /** The nearest place across that is within the bounds. */
    double withinX(int ground, int orientation, double x) {
        return Math.max(leastX(ground), Math.min(highestX(ground, orientation), x));
    }

    /** The nearest place along that is within the bounds. */
    double withinY(int ground, int orientation, double y) {
        return Math.max(leastY(ground), Math.min(highestY(ground, orientation), y));
    }

    boolean hasRoom(int ground, int orientation) {
        return highestX(ground, orientation) >= leastX(ground)
                && highestY(ground, orientation) >= leastY(ground);
    }

    /** What an item would cost at a place; anything from the bound on if it reaches it. */
    double cost(int item, int ground, int orientation, double x, double y, double bound) {
        steps++;
        Orientation shape = shapes[orientation];
        double cost = roomWeight[item] * roomDepth(item, ground, orientation, x, y);
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
            Orientation other = shapes[layout.orientation[j]];
            if (ox + other.widthMm() <= left || oy + other.heightMm() <= low) {
                continue;
            }
            double depth = depth(item, orientation, x, y, j, ox, oy);
            if (depth > 0) {
                cost += weight[row + j] * depth;
            }
        }
        return cost;
    }

    private double depth(
            int item, int orientation, double x, double y, int j, double ox, double oy) {
        int other = layout.orientation[j];
        double depth =
                orientation <= other
                        ? problem.between(orientation, other).depthMm(ox - x, oy - y)
                        : problem.between(other, orientation).depthMm(x - ox, y - oy);
        return depth <= dustMm ? 0 : depth * scale[item] * scale[j];
    }

    private double roomDepth(int item, int ground, int orientation, double x, double y) {
        double beyondX =
                Math.max(
                        leastX(ground) - x,
                        x - Math.max(leastX(ground), highestX(ground, orientation)));
        double beyondY = Math.max(leastY(ground) - y, y - highestY(ground, orientation));
        double tooWide = leastX(ground) - highestX(ground, orientation);
        double depth = Math.max(0, beyondX) + Math.max(0, beyondY) + Math.max(0, tooWide);
        Optional<Field> room = problem.room(ground, orientation, problem.quality[item]);
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

    void move(int item, int ground, int orientation, double x, double y) {
        layout.ground[item] = ground;
        layout.orientation[item] = orientation;
        layout.x[item] = x;
        layout.y[item] = y;
        refresh(item);
    }

    private void refresh(int item) {
        int orientation = layout.orientation[item];
        double x = layout.x[item];
        double y = layout.y[item];
        Orientation shape = shapes[orientation];
        roomLoss[item] = roomDepth(item, layout.ground[item], orientation, x, y);
        for (int j = 0; j < n; j++) {
            double ox = layout.x[j];
            double oy = layout.y[j];
            Orientation other = shapes[layout.orientation[j]];
            boolean near =
                    j != item
                            && ox < x + shape.widthMm() + reachMm
                            && oy < y + shape.heightMm() + reachMm
                            && ox + other.widthMm() > x - reachMm
                            && oy + other.heightMm() > y - reachMm;
            double depth = near ? depth(item, orientation, x, y, j, ox, oy) : 0;
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

    List<Orientation> orientations() {
        return problem.orientations;
    }
}
