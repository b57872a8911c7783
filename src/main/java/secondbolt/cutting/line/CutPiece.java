package secondbolt.cutting.line;

import java.util.List;
import java.util.Optional;
import secondbolt.measure.Length;
import secondbolt.pattern.piece.NamedEdge;
import secondbolt.pattern.piece.NotchPlace;
import secondbolt.pattern.piece.Piece;
import secondbolt.pattern.piece.PieceShape;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;
import secondbolt.shape.cut.CuttingLine;

/**
 * A drawn piece with its cutting line.
 *
 * @param piece after the alterations
 * @param shape its outline as the pattern means it: the sewing line, or the cutting line if the
 *     allowance is included
 * @param before the outline before the alterations, if they changed it
 * @param edges the allowance of each edge, in the order of the outline
 * @param isIncluded whether the outline includes the allowance
 * @param line the cutting line
 */
public record CutPiece(
        Piece piece,
        PieceShape.Drawn shape,
        Optional<PieceShape.Drawn> before,
        List<EdgeAllowance> edges,
        boolean isIncluded,
        CuttingLine line) {
    /** A fold and what lies on it are drawn and flattened as closely. */
    private static final double ON_FOLD_MM = 0.1;

    /** Copies the allowances. */
    public CutPiece {
        edges = List.copyOf(edges);
        if (edges.size() != shape.edges().size()) {
            throw new IllegalArgumentException(
                    edges.size() + " allowances of " + shape.edges().size() + " edges");
        }
    }

    /** Its name. */
    public String name() {
        return piece.name();
    }

    /** The cutting line, in millimetres of the piece; on the fold if it is drawn half. */
    public Outline cut() {
        return line.outline();
    }

    /**
     * Where the cutting line crosses itself, if it does; of a half piece also where it reaches past
     * its fold, and so would cross its other half.
     */
    public Optional<Point> crossing() {
        return line.crossing().or(this::pastFold);
    }

    /** Where it reaches past the fold of a half piece, if it does. */
    public Optional<Point> pastFold() {
        return piece.fold()
                .flatMap(shape::find)
                .flatMap(
                        fold ->
                                cut().corners().stream()
                                        .filter(corner -> pastMm(fold, corner) > ON_FOLD_MM)
                                        .findFirst());
    }

    private double pastMm(EdgeLine fold, Point corner) {
        Point along = fold.directionAt(fold.lengthMm() / 2);
        double x = corner.xMm() - fold.start().xMm();
        double y = corner.yMm() - fold.start().yMm();
        return line.way() * (x * along.yMm() - y * along.xMm());
    }

    /** The number of an edge, from 0; it must be one of the piece. */
    public int number(String edge) {
        for (int i = 0; i < edges.size(); i++) {
            if (edges.get(i).edge().equals(edge)) {
                return i;
            }
        }
        throw new IllegalArgumentException("edge must be one of the piece, was " + edge);
    }

    /** An edge as it is drawn, by its number from 0. */
    public EdgeLine edge(int number) {
        return shape.edges().get(number).line();
    }

    NamedEdge named(int number) {
        return shape.edges().get(number);
    }

    /** How wide the allowance is along an edge, by its number from 0. */
    public double widthMm(int number) {
        return edges.get(number).width().millimetres();
    }

    /** A point of the outline moved so far out of the piece, square to its edge. */
    public Point beside(int number, double alongMm, double outMm) {
        Point out = line.outward(number, alongMm);
        return edge(number).at(alongMm).moved(out.xMm() * outMm, out.yMm() * outMm);
    }

    /** The point of the sewing line beside an edge, so far along from its start. */
    public Point onSewingLine(int number, double alongMm) {
        return beside(number, alongMm, isIncluded ? -widthMm(number) : 0);
    }

    /**
     * A point of the sewing line.
     *
     * @param edge one of the piece
     * @param along from the edge's start
     */
    public Point sewn(String edge, Length along) {
        return onSewingLine(number(edge), along.millimetres());
    }

    /** The point of the cutting line beside an edge, so far along from its start. */
    public Point onCuttingLine(int number, double alongMm) {
        return beside(number, alongMm, isIncluded ? 0 : widthMm(number));
    }

    /** How far a notch stands from its edge's start. */
    public double alongMm(Piece.Notch notch) {
        return NotchPlace.fromStartMm(shape, notch);
    }

    /** What to cut, as a sheet says it. */
    public String instruction() {
        StringBuilder words = new StringBuilder();
        piece.cuts()
                .forEach(
                        (role, cut) -> {
                            String one = words.isEmpty() ? cut.words() : cut.amount();
                            words.append(words.isEmpty() ? "" : ", ");
                            words.append(one).append(" of ").append(role.cloth());
                        });
        return words + (piece.fold().isPresent() ? ", on the fold" : "");
    }

    /** How many are cut in all. */
    public int copies() {
        return piece.cuts().values().stream().mapToInt(Piece.Cut::count).sum();
    }
}
