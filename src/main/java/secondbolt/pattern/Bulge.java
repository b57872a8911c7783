package secondbolt.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.pattern.piece.Piece;
import secondbolt.pattern.piece.PieceShape;
import secondbolt.shape.Point;

/** To which side of the line between its ends an edge lies, all in all. */
public enum Bulge {
    /** Away from its piece, as a cap. */
    OUTWARD,
    /** Into its piece, as an armhole. */
    INWARD,
    /** To neither. */
    STRAIGHT,
    /** Not known: the piece is not drawn. */
    UNKNOWN;

    /** Flattened so closely, a bulge to one side does not turn into one to the other. */
    private static final double CLOSELY_MM = 0.5;

    /** Less than this between the edge and the line between its ends is none. */
    private static final double LEAST_MM2 = 100;

    static Bulge of(Piece piece, String edge) {
        Optional<PieceShape.Drawn> drawn = piece.shape().asDrawn();
        if (drawn.isEmpty()) {
            return UNKNOWN;
        }
        List<Point> round = new ArrayList<>();
        drawn.get().edges().forEach(e -> round.addAll(e.line().flattened(CLOSELY_MM)));
        double bulge =
                turned(drawn.get().find(edge).orElseThrow().flattened(CLOSELY_MM))
                        * Math.signum(turned(round));
        if (Math.abs(bulge) < LEAST_MM2) {
            return STRAIGHT;
        }
        return bulge > 0 ? OUTWARD : INWARD;
    }

    /** Whether all edges of a piece are straight, as of a band; it must be drawn to be known. */
    public static boolean isStraightAllRound(Piece piece) {
        return piece.shape()
                .asDrawn()
                .filter(d -> d.edges().stream().allMatch(e -> e.line().isStraight()))
                .isPresent();
    }

    /** The area that points go round, in square millimetres; its sign says which way they turn. */
    private static double turned(List<Point> points) {
        double twice = 0;
        for (int i = 0; i < points.size(); i++) {
            Point a = points.get(i);
            Point b = points.get((i + 1) % points.size());
            twice += a.xMm() * b.yMm() - b.xMm() * a.yMm();
        }
        return twice / 2;
    }
}
