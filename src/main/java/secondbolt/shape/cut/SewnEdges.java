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
        List<CutEdge> parts = new ArrayList<>();
        List<Integer> last = new ArrayList<>();
        for (int i = 0; i < edges.size(); i++) {
            parts.addAll(CutEdge.partsOf(edges.get(i), Allowance.plain(widthsMm.get(i)), way));
            last.add(parts.size());
        }
        List<CutCorner> corners = CutCorner.round(parts, way);
        List<Sewn> sewn = new ArrayList<>();
        for (int i = 0; i < edges.size(); i++) {
            sewn.add(sewn(edges.get(i), parts, corners, i == 0 ? 0 : last.get(i - 1), last.get(i)));
        }
        return List.copyOf(sewn);
    }

    private static Sewn sewn(
            EdgeLine edge, List<CutEdge> parts, List<CutCorner> corners, int first, int past) {
        List<Point> line = new ArrayList<>();
        double lengthMm = 0;
        for (int i = first; i < past; i++) {
            double from = corners.get((i + parts.size() - 1) % parts.size()).enterMm();
            double to = corners.get(i).leaveMm();
            if (to > from) {
                line.addAll(parts.get(i).cut().between(from, to));
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
