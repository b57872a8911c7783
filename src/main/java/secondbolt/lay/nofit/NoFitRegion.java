package secondbolt.lay.nofit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The positions at which a shape overlaps something that stays where it is, and for each of them
 * the penetration depth: how far the shape must move to come free.
 *
 * <p>The region is the Minkowski sum of what stays and the shape reflected at its origin, kept as
 * the segments of its boundary. A grid over the region says for every cell which of the segments
 * can be nearest, so that a depth costs a few distances.
 */
public final class NoFitRegion {
    private static final int CELLS = 40;
    private static final double EPS = 1e-7;

    private final double left;
    private final double low;
    private final double right;
    private final double high;
    private final double perX;
    private final double perY;
    private final double dust;
    private final int[] starts;
    private final int[] nearest;
    private final boolean[] mixed;
    private final double[] sx;
    private final double[] sy;
    private final double[] dx;
    private final double[] dy;
    private final double[] perLength2;
    private final List<ConvexPolygon> parts;
    private final double[][] boxes;

    private NoFitRegion(List<ConvexPolygon> parts, double[] box) {
        left = box[0];
        low = box[1];
        right = box[2];
        high = box[3];
        perX = CELLS / Math.max(right - left, EPS);
        perY = CELLS / Math.max(high - low, EPS);
        this.parts = parts;
        this.boxes = boxes(parts);
        dust = EPS * Math.max(right - left, high - low);
        List<double[]> segments = UnionBoundary.of(parts, boxes, dust);
        int count = segments.size();
        sx = new double[count];
        sy = new double[count];
        dx = new double[count];
        dy = new double[count];
        perLength2 = new double[count];
        for (int i = 0; i < count; i++) {
            double[] s = segments.get(i);
            sx[i] = s[0];
            sy[i] = s[1];
            dx[i] = s[2] - s[0];
            dy[i] = s[3] - s[1];
            perLength2[i] = 1 / (dx[i] * dx[i] + dy[i] * dy[i]);
        }
        starts = new int[CELLS * CELLS + 1];
        mixed = new boolean[CELLS * CELLS];
        nearest = grid();
    }

    /** The region of a shape against what stays where it is, both in convex parts. */
    static NoFitRegion of(List<ConvexPolygon> staying, List<ConvexPolygon> shape) {
        List<ConvexPolygon> sums = sums(staying, shape);
        double[] box = {
            Double.POSITIVE_INFINITY,
            Double.POSITIVE_INFINITY,
            Double.NEGATIVE_INFINITY,
            Double.NEGATIVE_INFINITY
        };
        for (ConvexPolygon sum : sums) {
            box[0] = Math.min(box[0], sum.leftMm());
            box[1] = Math.min(box[1], sum.lowMm());
            box[2] = Math.max(box[2], sum.rightMm());
            box[3] = Math.max(box[3], sum.highMm());
        }
        return new NoFitRegion(sums, box);
    }

    /** The same where only positions within a box are asked for: left, low, right, high. */
    static NoFitRegion within(
            List<ConvexPolygon> staying, List<ConvexPolygon> shape, double[] box) {
        return new NoFitRegion(sums(staying, shape), box);
    }

    private static List<ConvexPolygon> sums(
            List<ConvexPolygon> staying, List<ConvexPolygon> shape) {
        List<ConvexPolygon> sums = new ArrayList<>(staying.size() * shape.size());
        for (ConvexPolygon part : shape) {
            ConvexPolygon negated = part.negated();
            for (ConvexPolygon there : staying) {
                sums.add(there.plus(negated));
            }
        }
        return sums;
    }

    private static double[][] boxes(List<ConvexPolygon> parts) {
        double[][] boxes = new double[parts.size()][];
        for (int i = 0; i < boxes.length; i++) {
            ConvexPolygon p = parts.get(i);
            boxes[i] = new double[] {p.leftMm(), p.lowMm(), p.rightMm(), p.highMm()};
        }
        return boxes;
    }

    /** Fills the grid; the answer lists for one cell after the other which segments are near. */
    private int[] grid() {
        int[] found = new int[CELLS * CELLS * 3];
        int size = 0;
        double cellX = (right - left) / CELLS;
        double cellY = (high - low) / CELLS;
        double half = StrictMath.hypot(cellX, cellY) / 2 * 1.0001;
        double[] distance = new double[sx.length];
        for (int cell = 0; cell < mixed.length; cell++) {
            int column = cell % CELLS;
            int row = cell / CELLS;
            double px = left + (column + 0.5) * cellX;
            double py = low + (row + 0.5) * cellY;
            double least = distances(px, py, distance);
            mixed[cell] = least <= half;
            if (mixed[cell] || holds(px, py)) {
                for (int s = 0; s < distance.length; s++) {
                    if (distance[s] <= least + 2 * half) {
                        found = size == found.length ? Arrays.copyOf(found, 2 * size) : found;
                        found[size++] = s;
                    }
                }
            }
            starts[cell + 1] = size;
        }
        return Arrays.copyOf(found, size);
    }

    /** Finds how far each segment is from a place, and answers the least. */
    private double distances(double px, double py, double[] distance) {
        double least = Double.POSITIVE_INFINITY;
        for (int s = 0; s < distance.length; s++) {
            distance[s] = Math.sqrt(distance2(s, px, py));
            least = Math.min(least, distance[s]);
        }
        return least;
    }

    private boolean holds(double px, double py) {
        for (int i = 0; i < boxes.length; i++) {
            double[] b = boxes[i];
            if (px > b[0] && px < b[2] && py > b[1] && py < b[3] && parts.get(i).holds(px, py, 0)) {
                return true;
            }
        }
        return false;
    }

    private double distance2(int s, double px, double py) {
        double qx = px - sx[s];
        double qy = py - sy[s];
        double t = (qx * dx[s] + qy * dy[s]) * perLength2[s];
        t = t < 0 ? 0 : t > 1 ? 1 : t;
        double ex = qx - t * dx[s];
        double ey = qy - t * dy[s];
        return ex * ex + ey * ey;
    }

    /** The penetration depth in millimetres at a position; zero where the shape is free. */
    public double depthMm(double px, double py) {
        if (px <= left || px >= right || py <= low || py >= high) {
            return 0;
        }
        int row = (int) ((py - low) * perY);
        int cell = row * CELLS + (int) ((px - left) * perX);
        if (cell >= mixed.length) {
            return 0;
        }
        int from = starts[cell];
        int to = starts[cell + 1];
        if (from == to) {
            return 0;
        }
        double least = Double.POSITIVE_INFINITY;
        int best = -1;
        boolean atItsEnd = false;
        for (int i = from; i < to; i++) {
            int s = nearest[i];
            double qx = px - sx[s];
            double qy = py - sy[s];
            double t = (qx * dx[s] + qy * dy[s]) * perLength2[s];
            boolean end = t <= 0 || t >= 1;
            t = t < 0 ? 0 : t > 1 ? 1 : t;
            double ex = qx - t * dx[s];
            double ey = qy - t * dy[s];
            double d = ex * ex + ey * ey;
            if (d < least) {
                least = d;
                best = s;
                atItsEnd = end;
            }
        }
        boolean isFree =
                mixed[cell]
                        && !isInside(best, atItsEnd, px, py)
                        && (!hasTwin(best, from, to, px, py, least) || !holds(px, py));
        return isFree ? 0 : Math.sqrt(least);
    }

    /**
     * Whether a place that is free by its nearest segment lies inside by another one that is no
     * farther: where a shape fits exactly, two segments run along each other, back to back.
     */
    private boolean hasTwin(
            int best, int from, int to, double px, double py, double leastDistance2) {
        double reach = Math.sqrt(leastDistance2) + 2 * dust;
        for (int i = from; i < to; i++) {
            int s = nearest[i];
            if (s != best
                    && dx[s] * (py - sy[s]) - dy[s] * (px - sx[s]) > 0
                    && distance2(s, px, py) <= reach * reach) {
                return true;
            }
        }
        return false;
    }

    /** Beside a segment its side tells; at a corner only the parts themselves do. */
    private boolean isInside(int segment, boolean atItsEnd, double px, double py) {
        double qx = px - sx[segment];
        double qy = py - sy[segment];
        return atItsEnd ? holds(px, py) : dx[segment] * qy - dy[segment] * qx > 0;
    }

    /**
     * A position across at which the shape touches, one of several.
     *
     * @param py how far along it lies
     * @param share which of them, from 0 to below 1
     * @return not a number if it touches nowhere so far along
     */
    double touchX(double py, double share) {
        return touch(sx, dx, sy, dy, py, share);
    }

    /** A position along at which the shape touches, likewise. */
    double touchY(double px, double share) {
        return touch(sy, dy, sx, dx, px, share);
    }

    /**
     * The first position across at which the shape touches, or the last.
     *
     * @return not a number if it touches nowhere so far along
     */
    double touchX(double py, boolean isLast) {
        double end = Double.NaN;
        for (int s = 0; s < sy.length; s++) {
            if (crosses(sy[s], dy[s], py)) {
                double x = sx[s] + dx[s] * (py - sy[s]) / dy[s];
                boolean isFarther = isLast ? x > end : x < end;
                end = Double.isNaN(end) || isFarther ? x : end;
            }
        }
        return end;
    }

    private static double touch(
            double[] start,
            double[] by,
            double[] fixed,
            double[] fixedBy,
            double at,
            double share) {
        int count = 0;
        for (int s = 0; s < fixed.length; s++) {
            count += crosses(fixed[s], fixedBy[s], at) ? 1 : 0;
        }
        int wanted = (int) (share * count);
        for (int s = 0; s < fixed.length; s++) {
            if (crosses(fixed[s], fixedBy[s], at) && wanted-- == 0) {
                return start[s] + by[s] * (at - fixed[s]) / fixedBy[s];
            }
        }
        return Double.NaN;
    }

    private static boolean crosses(double start, double by, double at) {
        double t = at - start;
        return by > 0 ? t >= 0 && t <= by : by < 0 && t <= 0 && t >= by;
    }

    /** Whether any cell of the grid may have a free position; for a region within a box. */
    public boolean hasFree() {
        for (int cell = 0; cell < mixed.length; cell++) {
            if (mixed[cell] || starts[cell] == starts[cell + 1]) {
                return true;
            }
        }
        return false;
    }
}
