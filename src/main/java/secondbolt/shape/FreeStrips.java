package secondbolt.shape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;

/**
 * A region cut into level strips; of each strip, the spans across that are free over its whole
 * height.
 *
 * <p>A strip ends wherever an edge does, so between two cuts every edge runs straight through. It
 * is cut finer where edges slant, so that what is given away beside a slanted edge is at most half
 * a millimetre, either across or along. Beside upright and level edges nothing is given away.
 */
final class FreeStrips {
    /** What may be given away beside a slanted edge: the distance of two marks of a metric tape. */
    private static final double MOST_LOSS_MM = 0.5;

    /** Two coordinates nearer than this are one. */
    static final double SAME_MM = 1e-6;

    /** Coordinates are rounded to so many parts of a millimetre. */
    private static final double PER_MM = 1e6;

    private final double[] cuts;
    private final double[][] spans;

    private FreeStrips(double[] cuts, double[][] spans) {
        this.cuts = cuts;
        this.spans = spans;
    }

    /** An edge that is not level, from its upper to its lower end. */
    private record Edge(double topX, double top, double bottomX, double bottom) {
        double slant() {
            return (bottomX - topX) / (bottom - top);
        }

        double at(double y) {
            return topX + (y - top) * slant();
        }
    }

    static FreeStrips of(Region region) {
        List<Edge> edges = edges(region);
        double[] cuts = cuts(edges);
        List<List<Edge>> crossing = new ArrayList<>();
        for (int i = 0; i + 1 < cuts.length; i++) {
            crossing.add(new ArrayList<>());
        }
        for (Edge edge : edges) {
            int from = Arrays.binarySearch(cuts, edge.top());
            int to = Arrays.binarySearch(cuts, edge.bottom());
            for (int i = from; i < to; i++) {
                crossing.get(i).add(edge);
            }
        }
        double[][] spans = new double[crossing.size()][];
        for (int i = 0; i < spans.length; i++) {
            spans[i] = spans(crossing.get(i), cuts[i], cuts[i + 1]);
        }
        return new FreeStrips(cuts, spans);
    }

    static double rounded(double mm) {
        return Math.rint(mm * PER_MM) / PER_MM;
    }

    private static List<Edge> edges(Region region) {
        List<Edge> edges = new ArrayList<>();
        for (Outline outline : region.outlines()) {
            List<Point> corners = outline.corners();
            for (int i = 0; i < corners.size(); i++) {
                Point a = corners.get(i);
                Point b = corners.get((i + 1) % corners.size());
                double ay = rounded(a.yMm());
                double by = rounded(b.yMm());
                if (ay < by) {
                    edges.add(new Edge(rounded(a.xMm()), ay, rounded(b.xMm()), by));
                } else if (by < ay) {
                    edges.add(new Edge(rounded(b.xMm()), by, rounded(a.xMm()), ay));
                }
            }
        }
        return edges;
    }

    private static double[] cuts(List<Edge> edges) {
        TreeSet<Double> ends = new TreeSet<>();
        for (Edge edge : edges) {
            ends.add(edge.top());
            ends.add(edge.bottom());
        }
        double[] at = ends.stream().mapToDouble(Double::doubleValue).toArray();
        double[] finest = new double[Math.max(0, at.length - 1)];
        Arrays.fill(finest, Double.POSITIVE_INFINITY);
        for (Edge edge : edges) {
            double slant = Math.abs(edge.slant());
            if (slant > SAME_MM) {
                double height = MOST_LOSS_MM * Math.max(1, 1 / slant);
                int to = Arrays.binarySearch(at, edge.bottom());
                for (int i = Arrays.binarySearch(at, edge.top()); i < to; i++) {
                    finest[i] = Math.min(finest[i], height);
                }
            }
        }
        List<Double> cuts = new ArrayList<>();
        for (int i = 0; i < finest.length; i++) {
            double height = at[i + 1] - at[i];
            int parts = (int) Math.max(1, Math.ceil(height / finest[i] - SAME_MM));
            for (int part = 0; part < parts; part++) {
                cuts.add(at[i] + height * part / parts);
            }
        }
        if (at.length > 0) {
            cuts.add(at[at.length - 1]);
        }
        return cuts.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Left, right, left, right …: inside between each odd edge and the even one after it. */
    private static double[] spans(List<Edge> crossing, double top, double bottom) {
        double middle = (top + bottom) / 2;
        Edge[] inOrder = crossing.toArray(new Edge[0]);
        Arrays.sort(inOrder, (a, b) -> Double.compare(a.at(middle), b.at(middle)));
        double[] spans = new double[inOrder.length];
        int count = 0;
        for (int i = 0; i + 1 < inOrder.length; i += 2) {
            double left = Math.max(inOrder[i].at(top), inOrder[i].at(bottom));
            double right = Math.min(inOrder[i + 1].at(top), inOrder[i + 1].at(bottom));
            if (right - left > SAME_MM) {
                boolean joins = count > 0 && left - spans[count - 1] <= SAME_MM;
                if (!joins) {
                    spans[count++] = left;
                    count++;
                }
                spans[count - 1] = right;
            }
        }
        return Arrays.copyOf(spans, count);
    }

    int count() {
        return spans.length;
    }

    double top(int strip) {
        return cuts[strip];
    }

    double bottom(int strip) {
        return cuts[strip + 1];
    }

    double end() {
        return cuts[cuts.length - 1];
    }

    /** The free spans of a strip; not to be written to. */
    double[] spans(int strip) {
        return spans[strip];
    }

    /** Whether all that is free in one strip is free in the next one above it too. */
    boolean opensUpwards(int strip) {
        if (strip == 0) {
            return false;
        }
        double[] own = spans[strip];
        double[] above = spans[strip - 1];
        int j = 0;
        for (int i = 0; i < own.length; i += 2) {
            while (j < above.length && above[j + 1] < own[i + 1] - SAME_MM) {
                j += 2;
            }
            if (j >= above.length || above[j] > own[i] + SAME_MM) {
                return false;
            }
        }
        return true;
    }
}
