package secondbolt.pattern.piece;

import java.util.ArrayList;
import java.util.List;
import secondbolt.shape.Point;

/**
 * A measured point that leaves the line of its neighbours, as a mistyped figure does: the edge
 * bends there by more than a right angle's two thirds. Common practice, no source.
 *
 * @param edge on which edge
 * @param number which point of the piece, counted as its picture numbers them: in the order they
 *     are written, the start of the outline being 1
 */
public record StrayPoint(String edge, int number) {
    private static final double SHARP_RADIANS = Math.PI / 3;

    /** The points of a drawn piece that seem to be slips. */
    public static List<StrayPoint> in(PieceShape.Drawn drawn) {
        List<StrayPoint> strays = new ArrayList<>();
        int before = 0;
        for (NamedEdge edge : drawn.edges()) {
            List<Point> knots = edge.line().knots();
            for (int i = 1; i < knots.size() - 1; i++) {
                if (bend(knots.get(i - 1), knots.get(i), knots.get(i + 1)) > SHARP_RADIANS) {
                    strays.add(new StrayPoint(edge.name(), before + i + 1));
                }
            }
            before += knots.size() - 1;
        }
        return strays;
    }

    private static double bend(Point before, Point at, Point after) {
        double in = StrictMath.atan2(at.yMm() - before.yMm(), at.xMm() - before.xMm());
        double out = StrictMath.atan2(after.yMm() - at.yMm(), after.xMm() - at.xMm());
        double turn = Math.abs(out - in);
        return turn > Math.PI ? 2 * Math.PI - turn : turn;
    }
}
