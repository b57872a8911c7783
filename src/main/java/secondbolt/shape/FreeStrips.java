package secondbolt.shape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.NavigableSet;
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

    /** The same with a box taken out. */
    FreeStrips without(Box box) {
        TreeSet<Double> all = new TreeSet<>();
        for (double cut : cuts) {
            all.add(cut);
        }
        addCut(all, box.topMm());
        addCut(all, box.bottomMm());
        double[] newCuts = all.stream().mapToDouble(Double::doubleValue).toArray();
        double[][] newSpans = new double[newCuts.length - 1][];
        int old = 0;
        for (int i = 0; i < newSpans.length; i++) {
            while (cuts[old + 1] <= newCuts[i]) {
                old++;
            }
            boolean beside =
                    newCuts[i + 1] <= box.topMm() + 2 * SAME_MM
                            || newCuts[i] >= box.bottomMm() - 2 * SAME_MM;
            newSpans[i] = beside ? spans[old] : cutOut(spans[old], box);
        }
        return new FreeStrips(newCuts, newSpans);
    }

    /** A cut that is there already, but for the last bits of a double, is not made again. */
    private static void addCut(NavigableSet<Double> cuts, double at) {
        boolean there = !cuts.subSet(at - 2 * SAME_MM, true, at + 2 * SAME_MM, true).isEmpty();
        if (!there && at > cuts.first() && at < cuts.last()) {
            cuts.add(at);
        }
    }

    private static double[] cutOut(double[] spans, Box box) {
        double[] left = new double[spans.length + 2];
        int count = 0;
        for (int i = 0; i < spans.length; i += 2) {
            double end = Math.min(spans[i + 1], box.leftMm());
            if (end - spans[i] > SAME_MM) {
                left[count++] = spans[i];
                left[count++] = end;
            }
            double start = Math.max(spans[i], box.rightMm());
            if (spans[i + 1] - start > SAME_MM) {
                left[count++] = start;
                left[count++] = spans[i + 1];
            }
        }
        return Arrays.copyOf(left, count);
    }

    /** Fewer, higher strips, each free where all it stands for are. */
    FreeStrips coarser(int together) {
        int groups = (count() + together - 1) / together;
        double[] newCuts = new double[groups + 1];
        double[][] newSpans = new double[groups][];
        for (int group = 0; group < groups; group++) {
            int from = group * together;
            int to = Math.min(from + together, count());
            newCuts[group] = cuts[from];
            newCuts[group + 1] = cuts[to];
            newSpans[group] = spans[from];
            for (int i = from + 1; i < to; i++) {
                double[] common = new double[newSpans[group].length + spans[i].length];
                int count = intersect(newSpans[group], newSpans[group].length, spans[i], common);
                newSpans[group] = Arrays.copyOf(common, count);
            }
        }
        return new FreeStrips(newCuts, newSpans);
    }

    /** What two lists of spans have in common: writes it to the third, answers how many ends. */
    static int intersect(double[] one, int count, double[] other, double[] common) {
        int kept = 0;
        int i = 0;
        int j = 0;
        while (i < count && j < other.length) {
            double left = Math.max(one[i], other[j]);
            double right = Math.min(one[i + 1], other[j + 1]);
            if (right > left) {
                common[kept++] = left;
                common[kept++] = right;
            }
            if (one[i + 1] < other[j + 1]) {
                i += 2;
            } else {
                j += 2;
            }
        }
        return kept;
    }

    /** How wide the widest free span of each strip is. */
    double[] widest() {
        double[] widest = new double[count()];
        for (int i = 0; i < widest.length; i++) {
            for (int k = 0; k < spans[i].length; k += 2) {
                widest[i] = Math.max(widest[i], spans[i][k + 1] - spans[i][k]);
            }
        }
        return widest;
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
