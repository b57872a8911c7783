package secondbolt.shape;

import java.util.ArrayList;
import java.util.List;

/**
 * Tells of many points which lie inside an outline: the same answers as {@link Outline#contains},
 * but each looks only at the edges beside the point. It never changes.
 */
public final class InsideTest {
    private static final int MOST_STRIPS = 256;

    private final Box box;
    private final double stripMm;

    /** The edges that pass through each level strip of the box, from the top down. */
    private final List<List<Edge>> strips = new ArrayList<>();

    private record Edge(Point from, Point to) {
        boolean spans(double yMm) {
            return to.yMm() > yMm != from.yMm() > yMm;
        }
    }

    /** Makes the test of an outline. */
    public InsideTest(Outline outline) {
        List<Point> corners = outline.corners();
        int count = Math.min(MOST_STRIPS, corners.size());
        box = outline.box();
        stripMm = box.heightMm() / count;
        for (int i = 0; i < count; i++) {
            strips.add(new ArrayList<>());
        }
        Point last = corners.get(corners.size() - 1);
        for (Point corner : corners) {
            add(new Edge(last, corner));
            last = corner;
        }
    }

    private void add(Edge edge) {
        int first = strip(Math.min(edge.from().yMm(), edge.to().yMm()));
        int end = strip(Math.max(edge.from().yMm(), edge.to().yMm()));
        for (int i = first; i <= end; i++) {
            strips.get(i).add(edge);
        }
    }

    /** Grows with y, so that a point between an edge's ends lies in a strip of the edge. */
    private int strip(double yMm) {
        int strip = stripMm > 0 ? (int) ((yMm - box.topMm()) / stripMm) : 0;
        return Math.min(strip, strips.size() - 1);
    }

    /** Whether a point lies inside; on the line itself it may come out either way. */
    public boolean contains(Point point) {
        if (point.yMm() < box.topMm()) {
            return false;
        }
        boolean inside = false;
        for (Edge edge : strips.get(strip(point.yMm()))) {
            if (edge.spans(point.yMm())
                    && point.xMm() < Outline.crossingXMm(edge.from(), edge.to(), point.yMm())) {
                inside = !inside;
            }
        }
        return inside;
    }
}
