package secondbolt.shape.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;
import secondbolt.shape.Stretch;

/**
 * The cutting line round a closed sewing line, with an allowance of its own along each edge.
 *
 * <p>Two neighbouring cutting lines run out, or are shortened, to where they meet (a mitre); past
 * four times the wider allowance the point is cut off squarely. Where allowances of different
 * widths follow each other in nearly the same direction, the wider ends squarely at the corner. A
 * fold, or an edge without an allowance, runs straight on to the cutting line of its neighbour. A
 * part too short or too hollow for its allowance is passed over where its neighbours' lines go on
 * without crossing, as at the tip of a godet. The ends of a hem are the sides of the piece mirrored
 * at the turn, so that the turned hem lies flat on the piece.
 *
 * <p>Source for the mirrored hem: derived, since folding mirrors each point at the fold; for the
 * mitre and the step, common practice, no source.
 */
public final class CuttingLine {
    private static final double GAP_MM = 0.01;
    private static final double DUST_MM = 1e-6;

    private final List<EdgeLine> edges;
    private final int way;
    private final Outline outline;
    private final Optional<Point> eaten;

    private CuttingLine(List<EdgeLine> edges, int way, Outline outline, Optional<Point> eaten) {
        this.edges = List.copyOf(edges);
        this.way = way;
        this.outline = outline;
        this.eaten = eaten;
    }

    /**
     * The cutting line of a sewing line.
     *
     * @param edges in drawing order, either way round, each beginning where the last ends
     * @param allowances one for each edge
     * @throws IllegalArgumentException if the numbers differ or the edges do not close
     */
    public static CuttingLine of(List<EdgeLine> edges, List<Allowance> allowances) {
        if (edges.isEmpty() || edges.size() != allowances.size()) {
            throw new IllegalArgumentException(
                    edges.size() + " edges but " + allowances.size() + " allowances");
        }
        int way = way(edges);
        List<CutEdge> parts = new ArrayList<>();
        for (int i = 0; i < edges.size(); i++) {
            parts.addAll(CutEdge.partsOf(edges.get(i), allowances.get(i), way));
        }
        return joined(edges, parts, way);
    }

    /**
     * 1 if the outline runs clockwise on paper, -1 if against it.
     *
     * @throws IllegalArgumentException if the edges do not close
     */
    public static int way(List<EdgeLine> edges) {
        double twice = 0;
        Point last = edges.get(edges.size() - 1).end();
        for (EdgeLine edge : edges) {
            if (edge.start().distanceMm(last) > GAP_MM) {
                throw new IllegalArgumentException(
                        "an edge begins at " + edge.start() + " but the last ends at " + last);
            }
            for (Point point : edge.flattened(CutEdge.TOLERANCE_MM)) {
                twice += last.xMm() * point.yMm() - point.xMm() * last.yMm();
                last = point;
            }
        }
        return twice < 0 ? -1 : 1;
    }

    private static CuttingLine joined(List<EdgeLine> edges, List<CutEdge> parts, int way) {
        CuttingLine whole = through(edges, parts, way);
        if (whole.crossing().isEmpty()) {
            return whole;
        }
        CuttingLine without = through(edges, withRoom(parts, way), way);
        return without.crossing().isEmpty() ? without : whole;
    }

    /**
     * Without the parts, one after the other, of which nothing is left between their neighbours.
     */
    private static List<CutEdge> withRoom(List<CutEdge> parts, int way) {
        List<CutEdge> left = new ArrayList<>(parts);
        int none = numberWithoutRoom(left, way);
        while (none >= 0 && left.size() > 3) {
            left.remove(none);
            none = numberWithoutRoom(left, way);
        }
        return left;
    }

    private static int numberWithoutRoom(List<CutEdge> parts, int way) {
        List<CutCorner> corners = CutCorner.round(parts, way);
        for (int i = 0; i < parts.size(); i++) {
            double from = corners.get((i + parts.size() - 1) % parts.size()).enterMm();
            if (parts.get(i).isTurnedBack() || from > corners.get(i).leaveMm() + DUST_MM) {
                return i;
            }
        }
        return -1;
    }

    private static CuttingLine through(List<EdgeLine> edges, List<CutEdge> parts, int way) {
        List<CutCorner> corners = CutCorner.round(parts, way);
        List<Point> points = new ArrayList<>();
        Optional<Point> eaten = Optional.empty();
        for (int i = 0; i < parts.size(); i++) {
            double from = corners.get((i + parts.size() - 1) % parts.size()).enterMm();
            double to = corners.get(i).leaveMm();
            Run cut = parts.get(i).cut();
            if (from > to + DUST_MM && eaten.isEmpty()) {
                eaten = Optional.of(cut.at((from + to) / 2));
            }
            cut.between(from, to).forEach(point -> add(points, point));
            corners.get(i).between().forEach(point -> add(points, point));
        }
        return new CuttingLine(edges, way, new Outline(bends(points)), eaten);
    }

    /** Without the points at which the line runs straight on. */
    private static List<Point> bends(List<Point> points) {
        List<Point> bends = new ArrayList<>(points);
        for (int i = bends.size() - 1; i >= 0 && bends.size() > 3; i--) {
            Point before = bends.get((i + bends.size() - 1) % bends.size());
            Point after = bends.get((i + 1) % bends.size());
            Stretch past = Stretch.straight(before, after);
            if (past.nearest(bends.get(i)).distanceMm() <= DUST_MM) {
                bends.remove(i);
            }
        }
        return bends;
    }

    private static void add(List<Point> points, Point point) {
        if (points.isEmpty() || points.get(points.size() - 1).distanceMm(point) > DUST_MM) {
            points.add(point);
        }
    }

    /** The cutting line, curves within 0.02 mm, the same way round as the sewing line. */
    public Outline outline() {
        return outline;
    }

    /**
     * Where the cutting line crosses itself, if it does: an allowance wider than a hollow, or than
     * an edge between two others, has room for.
     */
    public Optional<Point> crossing() {
        return eaten.isPresent() ? eaten : outline.crossing();
    }

    /** 1 if the sewing line runs clockwise on paper, -1 if against it. */
    public int way() {
        return way;
    }

    /**
     * Which way is out of the piece, square to an edge, as an arrow of length one; times the
     * allowance it leads from the sewing line to the cutting line.
     *
     * @param edge its number, from 0
     * @param alongMm from the edge's start
     */
    public Point outward(int edge, double alongMm) {
        Point direction = edges.get(edge).directionAt(alongMm);
        return new Point(way * direction.yMm(), -way * direction.xMm());
    }

    /** Whether the other is the same line round the same edges. */
    @Override
    public boolean equals(Object other) {
        return other instanceof CuttingLine line
                && way == line.way
                && edges.equals(line.edges)
                && outline.equals(line.outline)
                && eaten.equals(line.eaten);
    }

    @Override
    public int hashCode() {
        return Objects.hash(edges, outline);
    }

    @Override
    public String toString() {
        return "CuttingLine" + outline.corners();
    }
}
