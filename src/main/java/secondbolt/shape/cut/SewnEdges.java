package secondbolt.shape.cut;

import java.util.ArrayList;
import java.util.List;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Point;

/**
 * The sewing line inside a closed cutting line, with an allowance of its own along each edge.
 *
 * <p>Derived: each sewing line runs beside its edge at the width of the allowance, and two
 * neighbours end where they cross, which is the corner that is sewn.
 */
public final class SewnEdges {
    private SewnEdges() {}

    /**
     * One edge as it is sewn.
     *
     * @param line points of its sewing line, so close together that straight lines will do
     * @param lengthMm how long it is; zero if its neighbours' allowances leave nothing of it
     * @param beginsMm how far along the edge as drawn it begins
     * @param endsMm how far along the edge as drawn it ends
     */
    public record Sewn(List<Point> line, double lengthMm, double beginsMm, double endsMm) {
        /** Copies the points. */
        public Sewn {
            line = List.copyOf(line);
        }
    }

    /**
     * The edges as they are sewn, in order.
     *
     * @param edges the cutting line in drawing order, either way round
     * @param widthsMm the allowance of each edge, zero or more; zero on a fold
     * @throws IllegalArgumentException if the numbers differ or the edges do not close
     */
    public static List<Sewn> of(List<EdgeLine> edges, List<Double> widthsMm) {
        if (edges.isEmpty() || edges.size() != widthsMm.size()) {
            throw new IllegalArgumentException(
                    edges.size() + " edges but " + widthsMm.size() + " allowances");
        }
        // Seen from outside, the sewing line is the cutting line of all that the piece is not.
        int way = -CuttingLine.way(edges);
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < edges.size(); i++) {
            int number = i;
            CutEdge.partsOf(edges.get(i), Allowance.plain(widthsMm.get(i)), way)
                    .forEach(part -> parts.add(new Part(number, part)));
        }
        return sewn(edges, withRoom(parts, way), way);
    }

    /**
     * A smooth part of an edge.
     *
     * @param edge the number of the edge, from 0
     * @param line the part
     */
    private record Part(int edge, CutEdge line) {}

    /**
     * Without the parts, one after the other, of which the neighbours' allowances leave nothing.
     */
    private static List<Part> withRoom(List<Part> parts, int way) {
        List<Part> left = new ArrayList<>(parts);
        for (int i = 0; i < left.size() && left.size() > 3; i++) {
            List<CutCorner> corners = corners(left, way);
            double from = corners.get((i + left.size() - 1) % left.size()).enterMm();
            if (left.get(i).line().isTurnedBack() || from > corners.get(i).leaveMm()) {
                left.remove(i);
                i = -1;
            }
        }
        return left;
    }

    private static List<CutCorner> corners(List<Part> parts, int way) {
        return CutCorner.crossing(parts.stream().map(Part::line).toList(), way);
    }

    private static List<Sewn> sewn(List<EdgeLine> edges, List<Part> parts, int way) {
        List<CutCorner> corners = corners(parts, way);
        List<Sewn> sewn = new ArrayList<>();
        for (int i = 0; i < edges.size(); i++) {
            sewn.add(sewn(edges.get(i), i, parts, corners));
        }
        return List.copyOf(sewn);
    }

    private static Sewn sewn(EdgeLine edge, int number, List<Part> parts, List<CutCorner> corners) {
        List<Point> line = new ArrayList<>();
        double lengthMm = 0;
        for (int i = 0; i < parts.size(); i++) {
            double from = corners.get((i + parts.size() - 1) % parts.size()).enterMm();
            double to = corners.get(i).leaveMm();
            if (parts.get(i).edge() == number && to > from) {
                line.addAll(parts.get(i).line().cut().between(from, to));
                lengthMm += to - from;
            }
        }
        return line.isEmpty()
                ? new Sewn(line, 0, 0, 0)
                : new Sewn(
                        line,
                        lengthMm,
                        edge.alongMm(line.get(0)),
                        edge.alongMm(line.get(line.size() - 1)));
    }
}
