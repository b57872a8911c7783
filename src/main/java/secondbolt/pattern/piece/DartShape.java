package secondbolt.pattern.piece;

import secondbolt.shape.Box;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Point;

/**
 * A dart as it is drawn: its two legs meet at a point inside the piece.
 *
 * @param first where one leg leaves the edge
 * @param second where the other does
 * @param point where they meet
 */
public record DartShape(Point first, Point second, Point point) {
    /** The legs of a dart of this piece. */
    public static DartShape of(PieceShape.Drawn drawn, Piece.Dart dart) {
        EdgeLine edge = drawn.find(dart.edge()).orElseThrow();
        double atMm = dart.at().millimetres();
        double halfMm = dart.takes().millimetres() / 2;
        Point direction = edge.directionAt(atMm);
        Point middle = edge.at(atMm);
        Box box = drawn.box();
        double deepMm = dart.deep().millimetres();
        Point one = middle.moved(-direction.yMm() * deepMm, direction.xMm() * deepMm);
        Point other = middle.moved(direction.yMm() * deepMm, -direction.xMm() * deepMm);
        boolean oneIsInside = one.distanceMm(box.middle()) < other.distanceMm(box.middle());
        return new DartShape(
                edge.at(atMm - halfMm), edge.at(atMm + halfMm), oneIsInside ? one : other);
    }
}
