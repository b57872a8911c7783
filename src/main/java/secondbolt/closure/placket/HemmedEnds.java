package secondbolt.closure.placket;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.fit.result.FitResult;
import secondbolt.garment.PieceEdge;
import secondbolt.hem.plan.TurnedUp;
import secondbolt.measure.Length;
import secondbolt.pattern.EdgeSum;
import secondbolt.pattern.piece.NamedEdge;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Point;

/** The bulk of hems at both ends of a placket that lies on edges of the pattern. */
final class HemmedEnds {
    private static final double SAME_POINT_MM = 0.01;

    private HemmedEnds() {}

    /**
     * The bulk at both ends of a row of edges.
     *
     * @param length of the row, after the alterations
     * @param turned what is turned up anywhere on the pattern
     */
    static List<PlacketSpot> atTheEnds(
            EdgeSum row, FitResult fit, Length length, List<TurnedUp> turned) {
        List<PlacketSpot> spots = new ArrayList<>();
        List<EdgeSum.Term> terms = row.terms();
        meeting(terms.get(0), End.TOP, fit, turned)
                .ifPresent(
                        up ->
                                spots.add(
                                        new PlacketSpot(
                                                up.depth(), up.what(), up.depth(), Length.ZERO)));
        meeting(terms.get(terms.size() - 1), End.FOOT, fit, turned)
                .ifPresent(
                        up ->
                                spots.add(
                                        new PlacketSpot(
                                                length.minus(up.depth()),
                                                up.what(),
                                                Length.ZERO,
                                                up.depth())));
        return spots;
    }

    private enum End {
        TOP,
        FOOT
    }

    /**
     * The deepest that meets an edge at one end; of a piece known by tape none, for its corners.
     */
    private static Optional<TurnedUp> meeting(
            EdgeSum.Term term, End end, FitResult fit, List<TurnedUp> turned) {
        List<NamedEdge> edges =
                fit.find(term.piece())
                        .flatMap(piece -> piece.shape().asDrawn())
                        .map(drawn -> drawn.edges())
                        .orElse(List.of());
        String name = term.edge().edge();
        Optional<Point> corner =
                edges.stream()
                        .filter(edge -> edge.name().equals(name))
                        .findFirst()
                        .map(edge -> corner(edge.line(), end));
        return edges.stream()
                .filter(edge -> !edge.name().equals(name))
                .filter(edge -> corner.filter(c -> endsAt(edge.line(), c)).isPresent())
                .map(edge -> new PieceEdge(term.piece(), edge.name()))
                .flatMap(met -> turned.stream().filter(up -> up.edge().equals(met)))
                .reduce((a, b) -> b.depth().isLongerThan(a.depth()) ? b : a);
    }

    /** The upper or the lower end of an edge, whichever way it is drawn. */
    private static Point corner(EdgeLine line, End end) {
        boolean isDrawnDown = line.start().yMm() <= line.end().yMm();
        return isDrawnDown == (end == End.TOP) ? line.start() : line.end();
    }

    private static boolean endsAt(EdgeLine line, Point corner) {
        return isSame(line.start(), corner) || isSame(line.end(), corner);
    }

    private static boolean isSame(Point a, Point b) {
        return Math.hypot(a.xMm() - b.xMm(), a.yMm() - b.yMm()) < SAME_POINT_MM;
    }
}
