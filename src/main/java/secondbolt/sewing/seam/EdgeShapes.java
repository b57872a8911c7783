package secondbolt.sewing.seam;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import secondbolt.cutting.line.CutPiece;
import secondbolt.cutting.line.CuttingResult;
import secondbolt.fit.result.FitResult;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;
import secondbolt.pattern.piece.Piece;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Point;

/**
 * How edges run, and how wide their allowances are as they are cut.
 *
 * @param fit the altered pattern
 * @param cutting its cutting lines
 */
record EdgeShapes(FitResult fit, CuttingResult cutting) {
    /** An edge that leaves its chord by less is folded as a straight one; common practice. */
    private static final double STRAIGHT_MM = 5;

    private static final double CLOSELY_MM = 0.5;

    /** How the edges of a join run: straight only if all of them do. */
    JoinLine.Curve of(Collection<PieceEdge> edges) {
        List<JoinLine.Curve> curves = edges.stream().map(this::of).toList();
        if (curves.contains(JoinLine.Curve.CURVED)) {
            return JoinLine.Curve.CURVED;
        }
        return curves.contains(JoinLine.Curve.UNKNOWN)
                ? JoinLine.Curve.UNKNOWN
                : JoinLine.Curve.STRAIGHT;
    }

    /** How one edge runs. */
    JoinLine.Curve of(PieceEdge edge) {
        Optional<EdgeLine> line =
                fit.find(edge.piece())
                        .flatMap(piece -> piece.shape().asDrawn())
                        .flatMap(drawn -> drawn.find(edge.edge()));
        return line.map(l -> curves(l) ? JoinLine.Curve.CURVED : JoinLine.Curve.STRAIGHT)
                .orElse(JoinLine.Curve.UNKNOWN);
    }

    /** Derived: the farthest of its points from the line between its ends. */
    private static boolean curves(EdgeLine line) {
        Point from = line.start();
        double chordMm = from.distanceMm(line.end());
        return line.flattened(CLOSELY_MM).stream()
                .anyMatch(point -> fromChordMm(point, from, line.end(), chordMm) > STRAIGHT_MM);
    }

    private static double fromChordMm(Point point, Point from, Point to, double chordMm) {
        double crossMm2 =
                (point.xMm() - from.xMm()) * (to.yMm() - from.yMm())
                        - (point.yMm() - from.yMm()) * (to.xMm() - from.xMm());
        return chordMm > 0 ? Math.abs(crossMm2) / chordMm : point.distanceMm(from);
    }

    /** How wide the allowance of an edge is as it is cut. */
    Length allowance(PieceEdge edge) {
        return cutting.pieces().stream()
                .filter(cut -> cut.name().equals(edge.piece()))
                .findFirst()
                .map((CutPiece cut) -> cut.edges().get(cut.number(edge.edge())).width())
                .orElseGet(() -> taped(edge));
    }

    private Length taped(PieceEdge edge) {
        Piece piece = fit.find(edge.piece()).orElseThrow();
        return piece.allowance(edge.edge(), cutting.allowance());
    }
}
