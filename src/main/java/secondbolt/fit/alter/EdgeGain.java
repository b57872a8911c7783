package secondbolt.fit.alter;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import secondbolt.measure.Length;
import secondbolt.pattern.piece.Piece;
import secondbolt.pattern.piece.PieceShape;

/**
 * By how much the edges of a piece get longer when it is widened: what is sewn to them must gain as
 * much.
 *
 * @param piece as drawn
 * @param names the edges that are moved
 */
record EdgeGain(Piece piece, List<String> names) {
    /** Small beside any piece, so that its gain for each millimetre is told. */
    private static final Length TRIED = Length.ofMillimetres(1);

    /** A box whose edge is as long as it is wide, to a millimetre, has that edge across. */
    private static final double SAME_MM = 1;

    /** Whether none of its edges is moved. */
    boolean isOfNothing() {
        return WidenShare.edgesOn(piece, names).isEmpty();
    }

    /** What an edge gains by a share, in millimetres. */
    double ofMm(String edge, WidenShare share) {
        Optional<PieceShape.Taped> taped = piece.shape().asTaped();
        if (taped.isPresent()) {
            return isAcross(taped.get(), edge)
                    ? share.each().millimetres() * WidenShare.sidesOn(piece, names)
                    : 0;
        }
        Map<String, Length> before = piece.shape().edgeLengths();
        Map<String, Length> after = PieceAlteration.widened(piece, share).shape().edgeLengths();
        return after.get(edge).minus(before.get(edge)).millimetres();
    }

    /** What an edge gains for each millimetre that each edge is moved outward, throughout. */
    double forEachMm(String edge) {
        return ofMm(edge, share(TRIED)) / TRIED.millimetres();
    }

    /** The piece by itself, each edge moved by so much throughout. */
    WidenShare share(Length each) {
        int count = WidenShare.sidesOn(piece, names) * piece.timesRoundTheBody();
        return new WidenShare(
                names,
                Set.of(piece.name()),
                each.times(count),
                count,
                Optional.empty(),
                Optional.empty());
    }

    private static boolean isAcross(PieceShape.Taped taped, String edge) {
        Length length = taped.edges().get(edge);
        return length != null && Math.abs(length.minus(taped.across()).millimetres()) <= SAME_MM;
    }
}
