package secondbolt.cutting.sketch;

import java.util.List;
import secondbolt.cutting.line.CutPiece;
import secondbolt.draw.Pen;
import secondbolt.draw.Shade;
import secondbolt.draw.Sketch;
import secondbolt.pattern.piece.DartShape;
import secondbolt.pattern.piece.Piece;
import secondbolt.shape.Path;
import secondbolt.shape.Point;

/**
 * Draws the signs on a piece: arrows, notches, darts, pleats, marks, the bracket on a fold.
 *
 * @param piece the piece
 * @param style how large
 * @param sketch where they are drawn
 * @param room what is taken
 */
record PieceSigns(CutPiece piece, SketchStyle style, Sketch sketch, LabelRoom room) {
    /** Stands inside the fold, its arrows pointing at it. */
    void foldBracket(int number) {
        double longMm = piece.edge(number).lengthMm();
        double inMm = -2.5 * style.signMm();
        Point first = piece.beside(number, longMm * 0.12, 0);
        Point second = piece.beside(number, longMm * 0.88, 0);
        Point from = piece.beside(number, longMm * 0.12, inMm);
        Point to = piece.beside(number, longMm * 0.88, inMm);
        sketch.line(from, to, Pen.PLAIN);
        arrow(from, first);
        arrow(to, second);
        room.take(from, to, 0.3);
        room.take(from, first, style.signMm() / 3);
        room.take(to, second, style.signMm() / 3);
    }

    void arrow(Point from, Point to) {
        sketch.line(from, to, Pen.PLAIN);
        double longMm = from.distanceMm(to);
        double x = (to.xMm() - from.xMm()) / longMm;
        double y = (to.yMm() - from.yMm()) / longMm;
        double headMm = Math.min(style.signMm(), longMm / 2);
        Point neck = to.moved(-x * headMm, -y * headMm);
        double halfMm = headMm / 3;
        sketch.fill(
                Path.polygon(
                        List.of(
                                to,
                                neck.moved(-y * halfMm, x * halfMm),
                                neck.moved(y * halfMm, -x * halfMm))),
                Shade.BLACK);
    }

    /** A wedge on the cutting line, and a stroke through the sewing line. */
    void notch(Piece.Notch notch) {
        int number = piece.number(notch.edge());
        double alongMm = piece.alongMm(notch);
        Point cut = piece.onCuttingLine(number, alongMm);
        Point sewn = piece.onSewingLine(number, alongMm);
        double signMm = style.signMm();
        Point in = inward(number, alongMm);
        double deepMm = Math.max(signMm * 0.75, Math.min(signMm, piece.widthMm(number) * 0.6));
        double half = signMm / 2;
        sketch.fill(
                Path.polygon(
                        List.of(
                                cut.moved(-in.yMm() * half, in.xMm() * half),
                                cut.moved(in.xMm() * deepMm, in.yMm() * deepMm),
                                cut.moved(in.yMm() * half, -in.xMm() * half))),
                Shade.BLACK);
        Point inner = sewn.moved(in.xMm() * half, in.yMm() * half);
        sketch.line(cut, inner, Pen.PLAIN);
        room.take(cut, inner, half);
    }

    private Point inward(int number, double alongMm) {
        Point out = piece.line().outward(number, alongMm);
        return new Point(-out.xMm(), -out.yMm());
    }

    void dart(Piece.Dart dart) {
        DartShape shape = DartShape.of(piece.shape(), dart);
        sketch.line(shape.first(), shape.point(), style.sewn());
        sketch.line(shape.second(), shape.point(), style.sewn());
        sketch.line(Path.circle(shape.point(), style.signMm() / 3), Pen.PLAIN);
        room.take(shape.first(), shape.point(), 0.5);
        room.take(shape.second(), shape.point(), 0.5);
        ends(dart);
    }

    /** Where the legs of a dart or a pleat reach the cutting line. */
    private void ends(Piece.Dart dart) {
        int number = piece.number(dart.edge());
        double halfMm = dart.takes().millimetres() / 2;
        for (double alongMm :
                List.of(dart.at().millimetres() - halfMm, dart.at().millimetres() + halfMm)) {
            Point cut = piece.onCuttingLine(number, alongMm);
            Point sewn = piece.onSewingLine(number, alongMm);
            if (cut.distanceMm(sewn) > 0) {
                sketch.line(cut, sewn, Pen.PLAIN);
            }
        }
    }

    /** Two fold lines from the edge into the piece, and an arrow from one to the other. */
    void pleat(Piece.Dart pleat) {
        int number = piece.number(pleat.edge());
        double deepMm = 12 * style.signMm();
        double halfMm = pleat.takes().millimetres() / 2;
        double from = pleat.at().millimetres() - halfMm;
        double to = pleat.at().millimetres() + halfMm;
        for (double alongMm : List.of(from, to)) {
            Point edge = piece.onCuttingLine(number, alongMm);
            Point inner = piece.beside(number, alongMm, -deepMm);
            sketch.line(edge, inner, Pen.PLAIN);
            room.take(edge, inner, 0.5);
        }
        arrow(piece.beside(number, from, -deepMm * 0.6), piece.beside(number, to, -deepMm * 0.6));
    }

    void cross(Piece.MarkPoint mark) {
        Point at = mark.at();
        double arm = style.signMm() * 0.75;
        sketch.line(at.moved(-arm, 0), at.moved(arm, 0), Pen.FINE);
        sketch.line(at.moved(0, -arm), at.moved(0, arm), Pen.FINE);
        sketch.line(Path.circle(at, arm / 2), Pen.FINE);
        room.take(at, at, arm);
    }
}
