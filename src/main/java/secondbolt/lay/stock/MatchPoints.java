package secondbolt.lay.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import secondbolt.cutting.line.CutPiece;
import secondbolt.garment.PieceEdge;
import secondbolt.lay.piece.LayPiece;
import secondbolt.lay.piece.LayPieces;
import secondbolt.lay.plan.Match;
import secondbolt.measure.Length;
import secondbolt.pattern.piece.NotchPlace;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Point;

/**
 * The points at which the two pieces of a match meet, copy by copy.
 *
 * @param pairs of copies that are sewn to each other
 */
record MatchPoints(List<CopyPair> pairs) {
    /** Copies the list. */
    MatchPoints {
        pairs = List.copyOf(pairs);
    }

    /**
     * One copy's place.
     *
     * @param piece the number of the copy
     * @param isMirrored whether it is the mirror image, or its half is
     * @param at where on it, in its own millimetres
     */
    record CopyPoint(int piece, boolean isMirrored, Point at) {}

    /**
     * Two copies that meet.
     *
     * @param first of the first piece
     * @param second of the second
     */
    record CopyPair(CopyPoint first, CopyPoint second) {}

    static MatchPoints of(Match match, List<LayPiece> pieces) {
        PieceEdge first = match.first().value();
        PieceEdge second = match.second().value();
        boolean notched = isNotched(first, pieces) && isNotched(second, pieces);
        List<CopyPoint> ones = points(first, notched, pieces);
        List<CopyPoint> others = points(second, notched, pieces);
        boolean opposite = runAlike(first, second, pieces);
        List<CopyPair> pairs = new ArrayList<>();
        List<CopyPoint> free = new ArrayList<>(others);
        for (CopyPoint one : ones) {
            Optional<CopyPoint> other =
                    free.stream()
                            .filter(o -> (o.isMirrored() != one.isMirrored()) == opposite)
                            .findFirst()
                            .or(() -> free.stream().findFirst());
            if (other.isPresent() && other.get().piece() != one.piece()) {
                free.remove(other.get());
                pairs.add(new CopyPair(one, other.get()));
            }
        }
        return new MatchPoints(List.copyOf(pairs));
    }

    private static Optional<CutPiece> cut(PieceEdge part, List<LayPiece> pieces) {
        return pieces.stream()
                .filter(p -> p.piece().name().equals(part.piece()))
                .findFirst()
                .flatMap(LayPiece::cut);
    }

    private static boolean isNotched(PieceEdge part, List<LayPiece> pieces) {
        return cut(part, pieces)
                .filter(
                        cut ->
                                cut.piece().features().notches().stream()
                                        .anyMatch(n -> n.edge().equals(part.edge())))
                .isPresent();
    }

    private static List<CopyPoint> points(PieceEdge part, boolean notched, List<LayPiece> pieces) {
        List<CopyPoint> points = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            LayPiece piece = pieces.get(i);
            if (piece.cut().isEmpty() || !piece.piece().name().equals(part.piece())) {
                continue;
            }
            CutPiece cut = piece.cut().get();
            Point drawn = place(cut, part.edge(), notched);
            Point own = piece.isMirrored() ? LayPieces.MIRROR.apply(drawn) : drawn;
            points.add(new CopyPoint(i, piece.isMirrored(), own));
            if (piece.isOpened()) {
                EdgeLine fold = LayPieces.fold(cut).orElseThrow();
                Point twin = LayPieces.mirrored(drawn, fold.start(), fold.end());
                points.add(new CopyPoint(i, true, twin));
            }
        }
        // What is cut already stands behind the rest, and is sewn to the same copy as before.
        points.sort(Comparator.comparingInt(point -> pieces.get(point.piece()).copy()));
        return points;
    }

    /** A mark, the lowest notch of an edge, its lower end, or the middle of a level one. */
    private static Point place(CutPiece cut, String part, boolean notched) {
        Optional<EdgeLine> edge = cut.shape().find(part);
        if (edge.isEmpty()) {
            return cut.piece().features().marks().stream()
                    .filter(mark -> mark.what().equals(part))
                    .findFirst()
                    .orElseThrow()
                    .at();
        }
        double length = edge.get().lengthMm();
        boolean down = edge.get().end().yMm() > edge.get().start().yMm();
        double along = isLevel(edge.get()) ? length / 2 : down ? length : 0;
        if (notched) {
            along =
                    cut.piece().features().notches().stream()
                            .filter(n -> n.edge().equals(part))
                            .mapToDouble(n -> NotchPlace.fromStartMm(cut.shape(), n))
                            .reduce((a, b) -> down ? Math.max(a, b) : Math.min(a, b))
                            .orElse(along);
        }
        return cut.sewn(part, Length.ofComputedMillimetres(along));
    }

    private static boolean isLevel(EdgeLine edge) {
        return Math.abs(edge.end().xMm() - edge.start().xMm())
                > Math.abs(edge.end().yMm() - edge.start().yMm());
    }

    /**
     * Whether the two edges, each going round its piece the same way, run both down or both up:
     * then a copy meets the mirror image of the other piece, as a front meets a back that is drawn
     * with its middle on the same side.
     */
    private static boolean runAlike(PieceEdge first, PieceEdge second, List<LayPiece> pieces) {
        double one = down(first, pieces);
        double two = down(second, pieces);
        return one * two > 0;
    }

    private static double down(PieceEdge part, List<LayPiece> pieces) {
        Optional<CutPiece> cut = cut(part, pieces);
        Optional<EdgeLine> edge = cut.flatMap(c -> c.shape().find(part.edge()));
        if (edge.isEmpty() || isLevel(edge.get())) {
            return 0;
        }
        int round = LayPieces.half(cut.get()).runsClockwise() ? 1 : -1;
        return round * (edge.get().end().yMm() - edge.get().start().yMm());
    }
}
