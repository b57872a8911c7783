package secondbolt.fit.made;

import java.util.ArrayList;
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
    private static final double LITTLE_MM = 0.001;

    /** The cosine of 60 degrees. */
    private static final double HALF = 0.5;

    /** The first edge that serves this, if there is one. */
    Optional<String> edge(Serves what) {
        return edges().filter(edge -> serves(edge, what)).findFirst();
    }

    /** Whether an edge serves this; one that is turned up is a hem. */
    boolean serves(String edge, Serves what) {
        return switch (what) {
            case HEM -> pattern.meanings().isHem(piece.name(), edge);
            case WAIST -> new CalledWaist(piece, pattern).isTheWaist(edge);
            default -> pattern.meanings().serves(piece.name(), edge, what);
        };
    }

    boolean isFold(String edge) {
        return piece.fold().filter(edge::equals).isPresent();
    }

    /** Whether one edge goes on where another ends, without a corner. */
    boolean goesOn(String one, String other) {
        List<Point> a = line(one);
        List<Point> b = line(other);
        return meet(one, other) && (isInLine(a, b) || isInLine(b, a));
    }

    private static boolean isInLine(List<Point> a, List<Point> b) {
        Point end = a.get(a.size() - 1);
        if (end.distanceMm(b.get(0)) > 1) {
            return false;
        }
        Point before = a.get(a.size() - 2);
        Point after = b.get(1);
        double dot =
                (end.xMm() - before.xMm()) * (after.xMm() - end.xMm())
                        + (end.yMm() - before.yMm()) * (after.yMm() - end.yMm());
        return dot > HALF * end.distanceMm(before) * after.distanceMm(end);
    }

    /** Whether an edge runs down its piece as far as the edge at its lower end. */
    boolean runsToTheEnd(String edge) {
        return isDown(edge)
                && LowerEdge.across(this).stream()
                        .anyMatch(
                                lower ->
                                        meet(edge, lower)
                                                || edges().anyMatch(
                                                                e ->
                                                                        isDown(e)
                                                                                && meet(e, lower)
                                                                                && goesOn(
                                                                                        edge, e)));
    }

    /**
     * The edges of one side: from the one given on, away from the edge it meets, as far as they run
     * down.
     */
    List<String> side(String first, String top) {
        List<String> names = edges().toList();
        int count = names.size();
        int at = names.indexOf(first);
        int step = names.get((at + count - 1) % count).equals(top) ? 1 : count - 1;
        List<String> side = new ArrayList<>();
        while (side.size() < count && isOfASide(names.get(at))) {
            side.add(names.get(at));
            at = (at + step) % count;
        }
        return side;
    }

    private boolean isOfASide(String edge) {
        return isDown(edge)
                && pattern.meanings()
                        .edge(piece.name(), edge)
                        .map(m -> m.serves().isLengthwise())
                        .orElse(true);
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

    /** Whether an edge runs down its piece: by what it serves, else by how it is drawn. */
    boolean isDown(String edge) {
        return pattern.meanings()
                .edge(piece.name(), edge)
                .filter(m -> m.serves().isLengthwise())
                .map(m -> true)
                .orElseGet(() -> piece.fold().filter(edge::equals).isPresent() || !isAcross(edge));
    }

    private boolean isAcross(String edge) {
        List<Point> line = line(edge);
        Point a = line.get(0);
        Point b = line.get(line.size() - 1);
        return Math.abs(a.xMm() - b.xMm()) >= Math.abs(a.yMm() - b.yMm());
    }

    /**
     * Points of an edge as it is sewn, close together; as it is drawn where the allowance beside it
     * leaves nothing of it to sew.
     */
    List<Point> line(String edge) {
        return new SewnLengths(pattern.allowance())
                .sewn(piece, edge)
                .map(SewnEdges.Sewn::line)
                .filter(line -> line.size() > 1)
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

    /**
     * From the middle of one edge square to it as far as another; nothing if it lies beside that.
     * Derived: rings, rectangles and strips have one length across, which this is.
     */
    Optional<Double> acrossMm(String from, String to) {
        List<Point> line = line(from);
        Point a = line.get(0);
        Point b = line.get(line.size() - 1);
        Point middle = middle(line);
        double chordMm = a.distanceMm(b);
        double nearestMm = Double.MAX_VALUE;
        List<Point> other = line(to);
        for (int i = 1; i < other.size() && chordMm > 0; i++) {
            double before = alongMm(other.get(i - 1), middle, a, b);
            double after = alongMm(other.get(i), middle, a, b);
            if (before * after <= 0) {
                double share = before == after ? 0 : before / (before - after);
                Point p = other.get(i - 1);
                Point q = other.get(i);
                Point met =
                        new Point(
                                p.xMm() + share * (q.xMm() - p.xMm()),
                                p.yMm() + share * (q.yMm() - p.yMm()));
                nearestMm = Math.min(nearestMm, met.distanceMm(middle));
            }
        }
        return nearestMm == Double.MAX_VALUE ? Optional.empty() : Optional.of(nearestMm);
    }

    /** How far a point lies from another, measured along the line from a to b. */
    private static double alongMm(Point point, Point from, Point a, Point b) {
        double chordMm = a.distanceMm(b);
        return ((point.xMm() - from.xMm()) * (b.xMm() - a.xMm())
                        + (point.yMm() - from.yMm()) * (b.yMm() - a.yMm()))
                / chordMm;
    }

    private static Point middle(List<Point> line) {
        double wholeMm = 0;
        for (int i = 1; i < line.size(); i++) {
            wholeMm += line.get(i - 1).distanceMm(line.get(i));
        }
        double leftMm = wholeMm / 2;
        for (int i = 1; i < line.size(); i++) {
            Point a = line.get(i - 1);
            Point b = line.get(i);
            double partMm = a.distanceMm(b);
            if (partMm >= leftMm && partMm > 0) {
                double share = leftMm / partMm;
                return new Point(
                        a.xMm() + share * (b.xMm() - a.xMm()),
                        a.yMm() + share * (b.yMm() - a.yMm()));
            }
            leftMm -= partMm;
        }
        return line.get(0);
    }

    /** Where the lowest point of an edge lies. */
    double bottomMm(String edge) {
        return line(edge).stream().mapToDouble(Point::yMm).max().orElseThrow();
    }

    /**
     * A piece at a level.
     *
     * @param left the edge it ends at to the left
     * @param right the edge it ends at to the right
     * @param mm from the one to the other
     */
    record Level(String left, String right, double mm) {}

    /** How wide it is at a level, and between which edges. */
    Level level(double yMm) {
        double leftMm = Double.MAX_VALUE;
        double rightMm = -Double.MAX_VALUE;
        String left = "";
        String right = "";
        for (String edge : edges().toList()) {
            List<Point> line = line(edge);
            for (int i = 1; i < line.size(); i++) {
                Point a = line.get(i - 1);
                Point b = line.get(i);
                if (Math.min(a.yMm(), b.yMm()) <= yMm && Math.max(a.yMm(), b.yMm()) >= yMm) {
                    double share = a.yMm() == b.yMm() ? 0 : (yMm - a.yMm()) / (b.yMm() - a.yMm());
                    double xMm = a.xMm() + share * (b.xMm() - a.xMm());
                    // Of two edges that meet there, the one that runs down is what it ends at.
                    if (xMm < leftMm - LITTLE_MM || (xMm < leftMm + LITTLE_MM && isDown(edge))) {
                        leftMm = xMm;
                        left = edge;
                    }
                    if (xMm > rightMm + LITTLE_MM || (xMm > rightMm - LITTLE_MM && isDown(edge))) {
                        rightMm = xMm;
                        right = edge;
                    }
                }
            }
        }
        return new Level(left, right, Math.max(0, rightMm - leftMm));
    }
}
