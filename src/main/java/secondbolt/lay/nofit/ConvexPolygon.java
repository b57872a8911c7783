package secondbolt.lay.nofit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;

/**
 * A convex polygon in millimetres, its corners against the clock where y is upward. It never
 * changes.
 */
public final class ConvexPolygon {
    private static final double DUST = 1e-9;

    final double[] x;
    final double[] y;

    ConvexPolygon(double[] x, double[] y) {
        this.x = x;
        this.y = y;
    }

    /** A convex outline, moved, and its corners reversed if they run with the clock. */
    static ConvexPolygon of(Outline outline, double byX, double byY) {
        List<Point> corners = new ArrayList<>(outline.corners());
        double twice = 0;
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            twice += a.xMm() * b.yMm() - b.xMm() * a.yMm();
        }
        if (twice < 0) {
            Collections.reverse(corners);
        }
        return new ConvexPolygon(
                corners.stream().mapToDouble(c -> c.xMm() + byX).toArray(),
                corners.stream().mapToDouble(c -> c.yMm() + byY).toArray());
    }

    int size() {
        return x.length;
    }

    /** Reflected within a box from the origin; its corners still run against the clock. */
    ConvexPolygon reflected(Reflection reflection, double widthMm, double heightMm) {
        int n = size();
        double[] fx = new double[n];
        double[] fy = new double[n];
        boolean turnsRound = reflection.across() != reflection.along();
        for (int i = 0; i < n; i++) {
            int to = turnsRound ? n - 1 - i : i;
            fx[to] = reflection.x(x[i], widthMm);
            fy[to] = reflection.y(y[i], heightMm);
        }
        return new ConvexPolygon(fx, fy);
    }

    /** Reflected at the origin. */
    ConvexPolygon negated() {
        double[] nx = new double[size()];
        double[] ny = new double[size()];
        for (int i = 0; i < size(); i++) {
            nx[i] = -x[i];
            ny[i] = -y[i];
        }
        return new ConvexPolygon(nx, ny);
    }

    /**
     * The Minkowski sum, all points that are the sum of one of each: the edges of both, in the
     * order of their directions.
     */
    ConvexPolygon plus(ConvexPolygon other) {
        int n = size();
        int m = other.size();
        int i = lowest();
        int j = other.lowest();
        List<double[]> sum = new ArrayList<>(n + m);
        int a = 0;
        int b = 0;
        while (a < n || b < m) {
            sum.add(new double[] {x[i % n] + other.x[j % m], y[i % n] + other.y[j % m]});
            double cross = a >= n ? -1 : b >= m ? 1 : turn(this, i, other, j);
            if (cross >= 0) {
                i++;
                a++;
            }
            if (cross <= 0) {
                j++;
                b++;
            }
        }
        return of(sum);
    }

    private static double turn(ConvexPolygon p, int i, ConvexPolygon q, int j) {
        int n = p.size();
        int m = q.size();
        double ax = p.x[(i + 1) % n] - p.x[i % n];
        double ay = p.y[(i + 1) % n] - p.y[i % n];
        double bx = q.x[(j + 1) % m] - q.x[j % m];
        double by = q.y[(j + 1) % m] - q.y[j % m];
        return ax * by - ay * bx;
    }

    private static ConvexPolygon of(List<double[]> points) {
        List<double[]> kept = new ArrayList<>();
        for (double[] p : points) {
            double[] last = kept.isEmpty() ? null : kept.get(kept.size() - 1);
            if (last == null || Math.abs(p[0] - last[0]) + Math.abs(p[1] - last[1]) > DUST) {
                kept.add(p);
            }
        }
        double[] xs = new double[kept.size()];
        double[] ys = new double[kept.size()];
        for (int i = 0; i < xs.length; i++) {
            xs[i] = kept.get(i)[0];
            ys[i] = kept.get(i)[1];
        }
        return new ConvexPolygon(xs, ys);
    }

    private int lowest() {
        int low = 0;
        for (int i = 1; i < size(); i++) {
            if (y[i] < y[low] || (y[i] == y[low] && x[i] < x[low])) {
                low = i;
            }
        }
        return low;
    }

    /** Whether a point lies inside by more than a distance. */
    boolean holds(double px, double py, double byMm) {
        for (int i = 0; i < size(); i++) {
            int k = (i + 1) % size();
            double dx = x[k] - x[i];
            double dy = y[k] - y[i];
            double cross = dx * (py - y[i]) - dy * (px - x[i]);
            if (cross <= byMm * Math.sqrt(dx * dx + dy * dy)) {
                return false;
            }
        }
        return true;
    }

    /** The left side of the box round it. */
    public double leftMm() {
        return min(x);
    }

    /** The right side of the box round it. */
    public double rightMm() {
        return max(x);
    }

    /** The low side of the box round it. */
    public double lowMm() {
        return min(y);
    }

    /** The high side of the box round it. */
    public double highMm() {
        return max(y);
    }

    private static double min(double[] values) {
        double least = values[0];
        for (double value : values) {
            least = Math.min(least, value);
        }
        return least;
    }

    private static double max(double[] values) {
        double most = values[0];
        for (double value : values) {
            most = Math.max(most, value);
        }
        return most;
    }
}
