package secondbolt.cutting.sketch;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import secondbolt.cutting.line.CutPiece;
import secondbolt.cutting.line.CuttingCalculation;
import secondbolt.cutting.line.EdgeAllowance;
import secondbolt.draw.Drawing;
import secondbolt.measure.Length;
import secondbolt.pattern.piece.NamedEdge;
import secondbolt.pattern.piece.Piece;
import secondbolt.pattern.piece.PieceShape;
import secondbolt.shape.Box;
import secondbolt.shape.Point;

/** A piece reduced for the page, with its points numbered. */
public final class PicturePiece {
    private static final double ACROSS_MM = 120;
    private static final double ALONG_MM = 110;

    private final double scale;

    private PicturePiece(double scale) {
        this.scale = scale;
    }

    /** The piece as a small picture, at most half as large as it is. */
    public static Drawing of(CutPiece piece) {
        Box box = piece.cut().box();
        double scale =
                Math.min(0.5, Math.min(ACROSS_MM / box.widthMm(), ALONG_MM / box.heightMm()));
        return PieceSketch.of(
                new PicturePiece(scale).reduced(piece), List.of(), SketchStyle.PICTURE);
    }

    private CutPiece reduced(CutPiece piece) {
        PieceShape.Drawn shape = reduced(piece.shape());
        List<EdgeAllowance> edges =
                piece.edges().stream()
                        .map(
                                e ->
                                        new EdgeAllowance(
                                                e.edge(), reduced(e.width()), e.kind(), e.taken()))
                        .toList();
        Map<String, Length> lines = new LinkedHashMap<>();
        piece.piece().lines().forEach((name, at) -> lines.put(name, reduced(at)));
        return new CutPiece(
                piece.piece().with(shape, lines, reduced(piece.piece().features())),
                shape,
                piece.before().map(this::reduced),
                edges,
                piece.isIncluded(),
                CuttingCalculation.line(shape, edges, piece.isIncluded()));
    }

    private PieceShape.Drawn reduced(PieceShape.Drawn shape) {
        UnaryOperator<Point> nearer = this::reduced;
        return new PieceShape.Drawn(
                shape.edges().stream()
                        .map(edge -> new NamedEdge(edge.name(), edge.line().moved(nearer)))
                        .toList());
    }

    private Piece.Features reduced(Piece.Features features) {
        return new Piece.Features(
                features.notches().stream()
                        .map(n -> new Piece.Notch(n.edge(), reduced(n.at()), n.from()))
                        .toList(),
                features.marks().stream()
                        .map(m -> new Piece.MarkPoint(m.what(), reduced(m.at())))
                        .toList(),
                features.darts().stream().map(this::reduced).toList(),
                features.pleats().stream().map(this::reduced).toList());
    }

    private Piece.Dart reduced(Piece.Dart dart) {
        return new Piece.Dart(
                dart.edge(), reduced(dart.at()), reduced(dart.takes()), reduced(dart.deep()));
    }

    private Point reduced(Point point) {
        return new Point(point.xMm() * scale, point.yMm() * scale);
    }

    private Length reduced(Length length) {
        return Length.ofComputedMillimetres(length.millimetres() * scale);
    }
}
