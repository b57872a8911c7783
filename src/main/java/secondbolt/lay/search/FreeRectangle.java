package secondbolt.lay.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import secondbolt.lay.nofit.ConvexPolygon;
import secondbolt.lay.nofit.PlaneContainer;

/**
 * How large a rectangle stays free on a container: exact beside boxes; beside other shapes a little
 * less than there is, since each of their convex parts is taken for the box round it.
 *
 * <p>Derived: the boxes' sides cut the container into cells; row by row, the free cells above each
 * column are a histogram, and the largest rectangle under it is found for each width.
 */
final class FreeRectangle {
    /** Two sides nearer than this are one. */
    private static final double APART_MM = 1e-3;

    private final Problem problem;
    private final int containers;

    FreeRectangle(Problem problem, int containers) {
        this.problem = problem;
        this.containers = containers;
    }

    /** The largest of every container that is used, added up, in square millimetres. */
    double areaMm2(Arrangement arrangement) {
        double area = 0;
        for (int container = 0; container < containers; container++) {
            area += areaMm2(arrangement, container);
        }
        return area;
    }

    private double areaMm2(Arrangement arrangement, int number) {
        PlaneContainer container = problem.containers.get(number);
        List<double[]> taken = new ArrayList<>();
        for (ConvexPolygon part : container.outside().get(0)) {
            taken.add(box(part, 0, 0));
        }
        for (int i = 0; i < problem.items(); i++) {
            if (arrangement.container[i] == number) {
                for (ConvexPolygon part :
                        problem.options.get(arrangement.option[i]).shape().bare()) {
                    taken.add(box(part, arrangement.x[i], arrangement.y[i]));
                }
            }
        }
        double[] xs = cuts(taken, 0, container.left(), container.right());
        double[] ys = cuts(taken, 1, container.low(), container.high());
        boolean[][] full = new boolean[ys.length - 1][xs.length - 1];
        for (double[] box : taken) {
            mark(full, box, xs, ys);
        }
        return largestMm2(full, xs, ys);
    }

    private static double[] box(ConvexPolygon part, double x, double y) {
        return new double[] {
            part.leftMm() + x, part.lowMm() + y, part.rightMm() + x, part.highMm() + y
        };
    }

    /** The sides of all boxes along one axis, upwards, those within a stretch and its ends. */
    private static double[] cuts(List<double[]> boxes, int axis, double from, double to) {
        double[] all =
                DoubleStream.concat(
                                DoubleStream.of(from, to),
                                boxes.stream().flatMapToDouble(b -> sides(b, axis)))
                        .filter(side -> side >= from && side <= to)
                        .sorted()
                        .toArray();
        double[] apart = new double[all.length];
        int count = 0;
        for (double side : all) {
            if (count == 0 || side - apart[count - 1] > APART_MM) {
                apart[count++] = side;
            }
        }
        return Arrays.copyOf(apart, count);
    }

    private static DoubleStream sides(double[] box, int axis) {
        return DoubleStream.of(box[axis], box[axis + 2]);
    }

    private static void mark(boolean[][] full, double[] box, double[] xs, double[] ys) {
        int fromX = first(xs, box[0]);
        int fromY = first(ys, box[1]);
        for (int row = fromY; row < full.length && ys[row] < box[3] - 2 * APART_MM; row++) {
            for (int i = fromX; i < full[row].length && xs[i] < box[2] - 2 * APART_MM; i++) {
                full[row][i] = true;
            }
        }
    }

    /** The cell that a box's side begins. */
    private static int first(double[] cuts, double side) {
        int at = Arrays.binarySearch(cuts, side - 2 * APART_MM);
        return at < 0 ? -at - 1 : at;
    }

    private static double largestMm2(boolean[][] full, double[] xs, double[] ys) {
        int columns = xs.length - 1;
        double[] free = new double[columns];
        int[] open = new int[columns + 1];
        double largest = 0;
        for (int row = 0; row < full.length; row++) {
            for (int i = 0; i < columns; i++) {
                free[i] = full[row][i] ? 0 : free[i] + ys[row + 1] - ys[row];
            }
            int depth = 0;
            for (int i = 0; i <= columns; i++) {
                double height = i < columns ? free[i] : 0;
                while (depth > 0 && free[open[depth - 1]] >= height) {
                    double above = free[open[--depth]];
                    int from = depth == 0 ? 0 : open[depth - 1] + 1;
                    largest = Math.max(largest, above * (xs[i] - xs[from]));
                }
                open[depth] = i;
                depth += i < columns ? 1 : 0;
            }
        }
        return largest;
    }
}
