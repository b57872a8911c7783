package secondbolt.lay.near;

import java.util.Arrays;
import java.util.function.DoubleBinaryOperator;

/**
 * A loss and a weight for every two of many items, the same both ways. Of nearly all pairs the loss
 * is 0 and the weight 1: those take no memory. It is used by one thread.
 */
public final class PairTable {
    private static final int[] NO_ITEMS = {};
    private static final double[] NO_VALUES = {};

    private final int[] counts;
    private final int[][] others;
    private final double[][] losses;
    private final double[][] weights;

    /** A table in which every loss is 0 and every weight 1. */
    public PairTable(int items) {
        counts = new int[items];
        others = new int[items][];
        losses = new double[items][];
        weights = new double[items][];
        Arrays.fill(others, NO_ITEMS);
        Arrays.fill(losses, NO_VALUES);
        Arrays.fill(weights, NO_VALUES);
    }

    /** Every loss is 0 again, and every weight 1. */
    public void clear() {
        Arrays.fill(counts, 0);
    }

    /** Takes everything over from a table of as many items. */
    public void set(PairTable other) {
        for (int i = 0; i < counts.length; i++) {
            int count = other.counts[i];
            counts[i] = count;
            if (others[i].length < count) {
                others[i] = new int[other.others[i].length];
                losses[i] = new double[other.others[i].length];
                weights[i] = new double[other.others[i].length];
            }
            System.arraycopy(other.others[i], 0, others[i], 0, count);
            System.arraycopy(other.losses[i], 0, losses[i], 0, count);
            System.arraycopy(other.weights[i], 0, weights[i], 0, count);
        }
    }

    /** How much a pair weighs. */
    public double weight(int item, int other) {
        int at = find(item, other);
        return at < 0 ? 1 : weights[item][at];
    }

    /** Every loss of an item is 0 from now on. */
    public void clearLosses(int item) {
        for (int k = 0; k < counts[item]; k++) {
            if (losses[item][k] != 0) {
                losses[item][k] = 0;
                int two = others[item][k];
                losses[two][find(two, item)] = 0;
            }
        }
    }

    /** Tells the loss of a pair. */
    public void lose(int one, int two, double loss) {
        int at = entry(one, two);
        int back = entry(two, one);
        losses[one][at] = loss;
        losses[two][back] = loss;
    }

    /** Whether an item has any loss. */
    public boolean loses(int item) {
        for (int k = 0; k < counts[item]; k++) {
            if (losses[item][k] > 0) {
                return true;
            }
        }
        return false;
    }

    /** To a sum, the losses of an item with others, each times its weight, upwards. */
    public double plusWeighted(double sum, int item) {
        double all = sum;
        for (int k = 0; k < counts[item]; k++) {
            all += weights[item][k] * losses[item][k];
        }
        return all;
    }

    /** To a sum, the losses of an item with those above it, each times its weight, upwards. */
    public double plusWeightedAbove(double sum, int item) {
        double all = sum;
        for (int k = 0; k < counts[item]; k++) {
            if (others[item][k] > item) {
                all += weights[item][k] * losses[item][k];
            }
        }
        return all;
    }

    /** To a sum, the losses of an item with those above it, upwards. */
    public double plusLossesAbove(double sum, int item) {
        double all = sum;
        for (int k = 0; k < counts[item]; k++) {
            if (others[item][k] > item) {
                all += losses[item][k];
            }
        }
        return all;
    }

    /** The greatest loss of an item. */
    public double most(int item) {
        double most = 0;
        for (int k = 0; k < counts[item]; k++) {
            most = Math.max(most, losses[item][k]);
        }
        return most;
    }

    /**
     * Gives every pair another weight.
     *
     * @param weigh from the weight so far and the loss; it must leave a weight of 1 with a loss of
     *     0 as it is
     */
    public void reweigh(DoubleBinaryOperator weigh) {
        for (int i = 0; i < counts.length; i++) {
            int kept = 0;
            for (int k = 0; k < counts[i]; k++) {
                double loss = losses[i][k];
                double weight = weigh.applyAsDouble(weights[i][k], loss);
                if (loss != 0 || weight != 1) {
                    others[i][kept] = others[i][k];
                    losses[i][kept] = loss;
                    weights[i][kept++] = weight;
                }
            }
            counts[i] = kept;
        }
    }

    /** How many pairs take memory. */
    public int size() {
        return Arrays.stream(counts).sum() / 2;
    }

    private int find(int row, int column) {
        return Arrays.binarySearch(others[row], 0, counts[row], column);
    }

    private int entry(int row, int column) {
        int at = find(row, column);
        if (at >= 0) {
            return at;
        }
        int to = -at - 1;
        int count = counts[row]++;
        if (count == others[row].length) {
            int room = 2 * count + 4;
            others[row] = Arrays.copyOf(others[row], room);
            losses[row] = Arrays.copyOf(losses[row], room);
            weights[row] = Arrays.copyOf(weights[row], room);
        }
        System.arraycopy(others[row], to, others[row], to + 1, count - to);
        System.arraycopy(losses[row], to, losses[row], to + 1, count - to);
        System.arraycopy(weights[row], to, weights[row], to + 1, count - to);
        others[row][to] = column;
        losses[row][to] = 0;
        weights[row][to] = 1;
        return to;
    }
}
