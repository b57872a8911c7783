package secondbolt.pattern.piece;

import secondbolt.measure.Length;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Point;

/** Where a notch stands on its edge, whichever end it is measured from. */
public final class NotchPlace {
    private static final double MEETS_MM = 0.5;

    private NotchPlace() {}

    /** How far from the edge's start, in millimetres. */
    public static double fromStartMm(PieceShape.Drawn shape, Piece.Notch notch) {
        double atMm = notch.at().millimetres();
        return isFromEnd(shape, notch)
                ? shape.find(notch.edge()).orElseThrow().lengthMm() - atMm
                : atMm;
    }

    /**
     * Whether it is measured from the edge's end, because that is where the named edge meets it.
     */
    public static boolean isFromEnd(PieceShape.Drawn shape, Piece.Notch notch) {
        Point end = shape.find(notch.edge()).map(EdgeLine::end).orElseThrow();
        return notch.from()
                .flatMap(shape::find)
                .filter(
                        other ->
                                other.start().distanceMm(end) < MEETS_MM
                                        || other.end().distanceMm(end) < MEETS_MM)
                .isPresent();
    }

    /** The point on the sewing line. */
    public static Point point(PieceShape.Drawn shape, Piece.Notch notch) {
        return shape.find(notch.edge()).orElseThrow().at(fromStartMm(shape, notch));
    }

    /** The notch's distance from the edge's start, as a length. */
    public static Length fromStart(PieceShape.Drawn shape, Piece.Notch notch) {
        return Length.ofComputedMillimetres(fromStartMm(shape, notch));
    }
}
