package secondbolt.shape.cut;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Point;

/**
 * An edge turned up on an outline that includes what is turned up: the outline is the cutting line,
 * and the fold lies inside it.
 */
public final class IncludedHem {
    private IncludedHem() {}

    /**
     * How much of an outline that includes it is turned up, or lies beyond its seam.
     *
     * @param widthMm how far inside its edge the fold or the seam lies; zero on a fold of the cloth
     * @param depthMm how deep it is turned up; zero of an edge that is not
     */
    public record Included(double widthMm, double depthMm) {}

    /**
     * An edge of such an outline: fold, outer line and landing line lie inside it, between the
     * seams of its sides, which run past the fold as the outline draws them.
     *
     * <p>Derived: what is sewn down is as long as the sides' seams leave it at the depth outside
     * the fold; what it lands on, at the depth inside.
     *
     * @param outline the cutting line in drawing order, either way round
     * @param number of the edge, from 0; its depth is above zero
     * @param included of each edge
     */
    public static TurnedEdge turned(List<EdgeLine> outline, int number, List<Included> included) {
        int count = outline.size();
        int before = (number + count - 1) % count;
        int after = (number + 1) % count;
        int way = CuttingLine.way(outline);
        double depthMm = included.get(number).depthMm();
        List<SewnEdges.Sewn> folds = sewn(outline, included, 0);
        TurnedEdge.Drawn drawn =
                new TurnedEdge.Drawn(
                        sewn(outline, included, -1).get(number),
                        sewn(outline, included, 1).get(number));
        List<Point> line = folds.get(number).line();
        if (line.size() < 2) {
            return TurnedEdge.square(outline.get(number), way, depthMm).drawn(drawn);
        }
        Point first = line.get(0);
        Point last = line.get(line.size() - 1);
        EdgeLine fold =
                outline.get(number).isStraight()
                        ? EdgeLine.straight(first, last)
                        : EdgeLine.through(apart(line));
        List<Point> up = new ArrayList<>(folds.get(before).line());
        Collections.reverse(up);
        return TurnedEdge.of(
                        fold,
                        way,
                        depthMm,
                        side(first, up, fold.directionAt(0), way, included.get(before)),
                        side(
                                last,
                                folds.get(after).line(),
                                fold.directionAt(fold.lengthMm()),
                                way,
                                included.get(after)))
                .drawn(drawn);
    }

    private static List<SewnEdges.Sewn> sewn(
            List<EdgeLine> outline, List<Included> included, int depths) {
        return SewnEdges.of(
                outline,
                included.stream()
                        .map(edge -> Math.max(0, edge.widthMm() + depths * edge.depthMm()))
                        .toList());
    }

    /** Without points that lie on each other. */
    private static List<Point> apart(List<Point> line) {
        List<Point> points = new ArrayList<>();
        for (Point point : line) {
            if (points.isEmpty() || points.get(points.size() - 1).distanceMm(point) > 1e-6) {
                points.add(point);
            }
        }
        return points;
    }

    /** The seam of a side from the fold on; square to the fold where nothing is left of it. */
    private static TurnedSide side(
            Point corner, List<Point> seam, Point fold, int way, Included is) {
        Optional<Point> next = seam.stream().filter(p -> p.distanceMm(corner) > 1e-3).findFirst();
        return new TurnedSide(
                next.map(to -> EdgeLine.straight(corner, to))
                        .orElseGet(() -> TurnedEdge.ray(corner, TurnedEdge.inward(fold, way), 1)),
                is.depthMm(),
                is.depthMm() > 0);
    }
}
