package secondbolt.fit.made;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.fit.seam.SewnLengths;
import secondbolt.garment.Serves;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.NamedEdge;
import secondbolt.pattern.piece.Piece;
import secondbolt.shape.Point;
import secondbolt.shape.cut.SewnEdges;

/**
 * A drawn piece on its sewing line.
 *
 * @param piece as drawn or as altered
 * @param pattern it belongs to
 */
record SewnPiece(Piece piece, Pattern pattern) {
    private static final double CLOSELY_MM = 0.05;

    /** The first edge that serves this, if there is one. */
    Optional<String> edge(Serves what) {
        return edges().filter(edge -> serves(edge, what)).findFirst();
    }

    /** Whether an edge serves this; one that is turned up is a hem. */
    boolean serves(String edge, Serves what) {
        return what == Serves.HEM
                ? pattern.meanings().isHem(piece.name(), edge)
                : pattern.meanings().serves(piece.name(), edge, what);
    }

    Stream<String> edges() {
        return piece.shape().asDrawn().stream()
                .flatMap(drawn -> drawn.edges().stream())
                .map(NamedEdge::name);
    }

    /** Whether two edges meet at a corner. */
    boolean meet(String one, String other) {
        List<String> names = edges().toList();
        int apart = Math.abs(names.indexOf(one) - names.indexOf(other));
        return apart == 1 || apart == names.size() - 1;
    }

    /** Points of an edge as it is sewn, close together. */
    List<Point> line(String edge) {
        return new SewnLengths(pattern.allowance())
                .sewn(piece, edge)
                .map(SewnEdges.Sewn::line)
                .orElseGet(
                        () ->
                                piece.shape()
                                        .asDrawn()
                                        .orElseThrow()
                                        .find(edge)
                                        .orElseThrow()
                                        .flattened(CLOSELY_MM));
    }

    /**
     * From the highest point of one edge straight down to another; to its nearest end beside it.
     */
    double downMm(String from, String to) {
        Point top = line(from).stream().reduce((a, b) -> b.yMm() < a.yMm() ? b : a).orElseThrow();
        return levelMm(line(to), top.xMm()) - top.yMm();
    }

    private static double levelMm(List<Point> line, double xMm) {
        double nearestMm = Double.MAX_VALUE;
        double levelMm = 0;
        for (int i = 1; i < line.size(); i++) {
            Point a = line.get(i - 1);
            Point b = line.get(i);
            double leftMm = Math.min(a.xMm(), b.xMm());
            double rightMm = Math.max(a.xMm(), b.xMm());
            double atMm = Math.max(leftMm, Math.min(rightMm, xMm));
            if (Math.abs(atMm - xMm) < nearestMm) {
                nearestMm = Math.abs(atMm - xMm);
                double share = rightMm == leftMm ? 0 : (atMm - a.xMm()) / (b.xMm() - a.xMm());
                levelMm = a.yMm() + share * (b.yMm() - a.yMm());
            }
        }
        return levelMm;
    }

    /** How wide it is at a level so far down from its top as drawn. */
    double widthMm(double yMm) {
        double leftMm = Double.MAX_VALUE;
        double rightMm = -Double.MAX_VALUE;
        for (String edge : edges().toList()) {
            List<Point> line = line(edge);
            for (int i = 1; i < line.size(); i++) {
                Point a = line.get(i - 1);
                Point b = line.get(i);
                if (Math.min(a.yMm(), b.yMm()) <= yMm && Math.max(a.yMm(), b.yMm()) >= yMm) {
                    double share = a.yMm() == b.yMm() ? 0 : (yMm - a.yMm()) / (b.yMm() - a.yMm());
                    double xMm = a.xMm() + share * (b.xMm() - a.xMm());
                    leftMm = Math.min(leftMm, xMm);
                    rightMm = Math.max(rightMm, xMm);
                }
            }
        }
        return Math.max(0, rightMm - leftMm);
    }
}
