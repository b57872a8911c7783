package secondbolt.fit.alter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.measure.Length;
import secondbolt.pattern.piece.DartShape;
import secondbolt.pattern.piece.NamedEdge;
import secondbolt.pattern.piece.NotchPlace;
import secondbolt.pattern.piece.Piece;
import secondbolt.pattern.piece.PieceShape;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Point;

/**
 * Something on a piece that must not disappear in a fold.
 *
 * @param what in words
 */
public record FoldObstacle(String what) {
    /** What is folded away where a cut shortens the piece; none if nothing is. */
    public static List<FoldObstacle> of(Piece piece, LengthenField field, LengthenField.Cut cut) {
        List<FoldObstacle> obstacles = new ArrayList<>();
        piece.shape().asDrawn().ifPresent(drawn -> ofDrawn(piece, drawn, cut, obstacles));
        for (LengthenField.Cut other : field.cuts()) {
            if (!other.name().equals(cut.name()) && cut.swallows(other.yMm())) {
                obstacles.add(new FoldObstacle("the line " + other.name()));
            }
        }
        return obstacles;
    }

    /**
     * How much can be folded away at a line with nothing in the way; a wider fold reaches whatever
     * a narrower one does.
     *
     * @param mark the tape's; the result is a whole number of marks, rounded down
     * @return nothing if not even a mark can
     */
    public static Optional<Length> mostFolded(
            Piece piece, LengthenField field, LengthenField.Cut cut, Length mark) {
        long possible = 0;
        long tooMuch = 1 + (long) Math.ceil(Math.abs(cut.byMm()) / mark.millimetres());
        while (tooMuch - possible > 1) {
            long middle = (possible + tooMuch) / 2;
            double byMm = -mark.times(middle).millimetres();
            if (of(piece, field, new LengthenField.Cut(cut.name(), cut.yMm(), byMm)).isEmpty()) {
                possible = middle;
            } else {
                tooMuch = middle;
            }
        }
        return possible == 0 ? Optional.empty() : Optional.of(mark.times(possible));
    }

    private static void ofDrawn(
            Piece piece,
            PieceShape.Drawn drawn,
            LengthenField.Cut cut,
            List<FoldObstacle> obstacles) {
        for (NamedEdge edge : drawn.edges()) {
            Point corner = edge.line().start();
            if (cut.swallows(corner.yMm())) {
                obstacles.add(new FoldObstacle("the corner where " + edge.name() + " begins"));
            }
        }
        Piece.Features features = piece.features();
        for (Piece.Notch notch : features.notches()) {
            if (cut.swallows(NotchPlace.point(drawn, notch).yMm())) {
                obstacles.add(new FoldObstacle("the notch on " + notch.edge()));
            }
        }
        for (Piece.MarkPoint mark : features.marks()) {
            if (cut.swallows(mark.at().yMm())) {
                obstacles.add(new FoldObstacle("the mark " + mark.what()));
            }
        }
        for (Piece.Dart dart : features.darts()) {
            if (reaches(drawn, dart, cut)) {
                obstacles.add(new FoldObstacle("the dart on " + dart.edge()));
            }
        }
        if (cut.foldTopMm() < drawn.box().topMm() || cut.foldBottomMm() > drawn.box().bottomMm()) {
            obstacles.add(new FoldObstacle("more than the piece has there"));
        }
    }

    /** A dart is in the way with its mouth as well as with its point. */
    private static boolean reaches(PieceShape.Drawn drawn, Piece.Dart dart, LengthenField.Cut cut) {
        EdgeLine edge = drawn.find(dart.edge()).orElseThrow();
        double halfMm = dart.takes().millimetres() / 2;
        double atMm = dart.at().millimetres();
        double first = edge.at(atMm - halfMm).yMm();
        double last = edge.at(atMm + halfMm).yMm();
        double middle = (cut.foldTopMm() + cut.foldBottomMm()) / 2;
        return cut.swallows(first)
                || cut.swallows(last)
                || cut.swallows(DartShape.of(drawn, dart).point().yMm())
                || (Math.min(first, last) < middle && middle < Math.max(first, last));
    }
}
