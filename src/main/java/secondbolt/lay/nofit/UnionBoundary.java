package secondbolt.lay.nofit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The boundary of the union of convex parts. It is used by one thread. */
final class UnionBoundary {
    private final List<ConvexPolygon> parts;
    private final double[][] boxes;
    private final double dust;
    private final double[][] normalX;
    private final double[][] normalY;
    private final double[][] offset;
    private final List<double[]> segments = new ArrayList<>();
    private double[] starts = new double[16];
    private double[] ends = new double[16];
    private int spans;

    /** The part that covered an edge last; it often covers the next one too. */
    private int last;

    private UnionBoundary(List<ConvexPolygon> parts, double[][] boxes, double dust) {
        this.parts = parts;
        this.boxes = boxes;
        this.dust = dust;
        int count = parts.size();
        normalX = new double[count][];
        normalY = new double[count][];
        offset = new double[count][];
        for (int k = 0; k < count; k++) {
            normals(k);
        }
    }

    /**
     * The stretches of the edges of all parts that lie inside no other part, each as four numbers
     * in millimetres: from across and along, to across and along.
     *
     * @param boxes round the parts, each as left, low, right, high
     * @param dust shorter stretches do not count, in millimetres
     */
    static List<double[]> of(List<ConvexPolygon> parts, double[][] boxes, double dust) {
        return new UnionBoundary(parts, boxes, dust).all();
    }

    /** Every edge as a line, by its normal and its distance from the origin. */
    private void normals(int k) {
        ConvexPolygon part = parts.get(k);
        int n = part.size();
        normalX[k] = new double[n];
        normalY[k] = new double[n];
        offset[k] = new double[n];
        for (int i = 0; i < n; i++) {
            int j = i + 1 == n ? 0 : i + 1;
            double ax = part.x[j] - part.x[i];
            double ay = part.y[j] - part.y[i];
            double size = Math.sqrt(ax * ax + ay * ay);
            normalX[k][i] = -ay / size;
            normalY[k][i] = ax / size;
            offset[k][i] = normalX[k][i] * part.x[i] + normalY[k][i] * part.y[i] + dust;
        }
    }

    private List<double[]> all() {
        for (int k = 0; k < parts.size(); k++) {
            ConvexPolygon part = parts.get(k);
            for (int i = 0; i < part.size(); i++) {
                int j = (i + 1) % part.size();
                add(k, part.x[i], part.y[i], part.x[j], part.y[j]);
            }
        }
        return segments;
    }

    private void add(int own, double fromX, double fromY, double toX, double toY) {
        double length = StrictMath.hypot(toX - fromX, toY - fromY);
        if (length <= dust) {
            return;
        }
        double least = dust / length;
        spans = 0;
        int count = parts.size();
        for (int i = 0; i < count; i++) {
            int other = i == 0 ? last : i == last ? 0 : i;
            boolean whole = other != own && covers(other, fromX, fromY, toX, toY, least);
            if (whole) {
                last = other;
                return;
            }
        }
        sortSpans();
        double from = 0;
        for (int i = 0; i < spans; i++) {
            if (starts[i] > from + least) {
                segments.add(part(fromX, fromY, toX, toY, from, starts[i]));
            }
            from = Math.max(from, ends[i]);
        }
        if (from < 1 - least) {
            segments.add(part(fromX, fromY, toX, toY, from, 1));
        }
    }

    private static double[] part(
            double fromX, double fromY, double toX, double toY, double from, double to) {
        double x = toX - fromX;
        double y = toY - fromY;
        return new double[] {fromX + x * from, fromY + y * from, fromX + x * to, fromY + y * to};
    }

    /** Whether a part covers a whole edge; a stretch that it covers is noted as a span. */
    private boolean covers(
            int k, double fromX, double fromY, double toX, double toY, double least) {
        double[] box = boxes[k];
        if (box[0] > Math.max(fromX, toX)
                || box[2] < Math.min(fromX, toX)
                || box[1] > Math.max(fromY, toY)
                || box[3] < Math.min(fromY, toY)) {
            return false;
        }
        double[] nx = normalX[k];
        double[] ny = normalY[k];
        double[] c = offset[k];
        double t0 = 0;
        double t1 = 1;
        for (int i = 0; i < nx.length; i++) {
            double d0 = nx[i] * fromX + ny[i] * fromY - c[i];
            double d1 = nx[i] * toX + ny[i] * toY - c[i];
            if (d0 <= 0 && d1 <= 0) {
                return false;
            }
            if (d0 < 0) {
                t0 = Math.max(t0, d0 / (d0 - d1));
            } else if (d1 < 0) {
                t1 = Math.min(t1, d0 / (d0 - d1));
            }
        }
        if (t0 <= least && t1 >= 1 - least) {
            return true;
        }
        if (t0 < t1) {
            addSpan(t0, t1);
        }
        return false;
    }

    private void addSpan(double from, double to) {
        if (spans == starts.length) {
            starts = Arrays.copyOf(starts, 2 * spans);
            ends = Arrays.copyOf(ends, 2 * spans);
        }
        starts[spans] = from;
        ends[spans] = to;
        spans++;
    }

    /** By insertion, since they are few. */
    private void sortSpans() {
        for (int i = 1; i < spans; i++) {
            double from = starts[i];
            double to = ends[i];
            int at = i;
            while (at > 0 && starts[at - 1] > from) {
                starts[at] = starts[at - 1];
                ends[at] = ends[at - 1];
                at--;
            }
            starts[at] = from;
            ends[at] = to;
        }
    }
}
