package secondbolt.fit.alter;

import java.util.List;
import java.util.function.UnaryOperator;
import secondbolt.measure.Length;
import secondbolt.pattern.piece.NotchPlace;
import secondbolt.pattern.piece.Piece;
import secondbolt.pattern.piece.PieceShape;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Point;

/**
 * Carries what is marked on a piece to its altered shape.
 *
 * @param before the shape it was marked on
 * @param after the altered shape
 * @param move where a point inside goes
 */
record CarriedFeatures(PieceShape.Drawn before, PieceShape.Drawn after, UnaryOperator<Point> move) {
    Piece.Features carry(Piece.Features features) {
        return new Piece.Features(
                features.notches().stream().map(this::notch).toList(),
                features.marks().stream()
                        .map(mark -> new Piece.MarkPoint(mark.what(), move.apply(mark.at())))
                        .toList(),
                darts(features.darts()),
                darts(features.pleats()));
    }

    private Piece.Notch notch(Piece.Notch notch) {
        EdgeLine old = before.find(notch.edge()).orElseThrow();
        double fromStart = NotchPlace.fromStartMm(before, notch);
        double carried = along(notch.edge(), old.at(fromStart));
        double written =
                NotchPlace.isFromEnd(before, notch)
                        ? after.find(notch.edge()).orElseThrow().lengthMm() - carried
                        : carried;
        return new Piece.Notch(notch.edge(), Length.ofComputedMillimetres(written), notch.from());
    }

    private List<Piece.Dart> darts(List<Piece.Dart> darts) {
        return darts.stream()
                .map(
                        dart -> {
                            EdgeLine old = before.find(dart.edge()).orElseThrow();
                            double at = along(dart.edge(), old.at(dart.at().millimetres()));
                            return new Piece.Dart(
                                    dart.edge(),
                                    Length.ofComputedMillimetres(at),
                                    dart.takes(),
                                    dart.deep());
                        })
                .toList();
    }

    private double along(String edge, Point was) {
        return after.find(edge).orElseThrow().alongMm(move.apply(was));
    }
}
