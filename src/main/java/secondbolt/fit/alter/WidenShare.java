package secondbolt.fit.alter;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.piece.Piece;
import secondbolt.pattern.piece.PieceShape;

/**
 * What every cut edge of a name takes of a change of width.
 *
 * <p>Source: Central Washington University costume text, chapter 17: divide the amount by the
 * number of seams available and add at the outside edges; derived: so each cut edge takes the
 * amount over twice the seams.
 *
 * @param edges the edges' names
 * @param pieces the pieces that go round the body together
 * @param by in all round the body; negative narrows
 * @param cutEdges how many edges of that name are cut, a side that is drawn as several edges once
 * @param from nothing above this, along the piece from its top
 * @param to all from this on
 */
public record WidenShare(
        List<String> edges,
        Set<String> pieces,
        Length by,
        int cutEdges,
        Optional<Length> from,
        Optional<Length> to) {
    /** As closely as a side is taped. */
    private static final Length CLOSELY = Length.ofMillimetres(10);

    /** The edges of a piece that are moved; not its fold, if others of the names are there. */
    static List<String> edgesOn(Piece piece, List<String> names) {
        List<String> there = names.stream().filter(piece::hasEdge).toList();
        List<String> cut =
                there.stream().filter(e -> piece.fold().filter(e::equals).isEmpty()).toList();
        return cut.isEmpty() ? there : cut;
    }

    /**
     * How many sides of a piece are moved: edges drawn one after the other down one side are one,
     * for the piece grows there once.
     */
    static int sidesOn(Piece piece, List<String> names) {
        List<String> moved = edgesOn(piece, names);
        return piece.shape()
                .accept(
                        new PieceShape.Visitor<Integer>() {
                            @Override
                            public Integer drawn(PieceShape.Drawn drawn) {
                                return new EdgeWay(drawn).sides(drawn, moved);
                            }

                            @Override
                            public Integer taped(PieceShape.Taped taped) {
                                return isOneSide(taped, moved) ? 1 : moved.size();
                            }
                        });
    }

    /** Of a piece known by tape: edges that are together as long as its box is high. */
    private static boolean isOneSide(PieceShape.Taped taped, List<String> moved) {
        Length inAll =
                moved.stream()
                        .map(edge -> taped.edges().getOrDefault(edge, taped.along()))
                        .reduce(Length.ZERO, Length::plus);
        return moved.size() > 1 && !inAll.isLongerThan(taped.along().plus(CLOSELY));
    }

    /** The same share for one more piece that is moved as far, by itself. */
    WidenShare alsoOn(Piece piece) {
        int count = cutEdgesOf(piece);
        return new WidenShare(edges, Set.of(piece.name()), each().times(count), count, from, to);
    }

    /** How many sides of a piece are moved, all its copies together. */
    public int cutEdgesOf(Piece piece) {
        return sidesOn(piece, edges) * piece.timesRoundTheBody();
    }

    /** The share with none but the edges that it moves on this piece. */
    WidenShare on(Piece piece) {
        return new WidenShare(edgesOn(piece, edges), pieces, by, cutEdges, from, to);
    }

    /** Whether it changes this piece. */
    boolean concerns(Piece piece) {
        return pieces.contains(piece.name()) && edges.stream().anyMatch(piece::hasEdge);
    }

    /** What each edge takes, exactly. */
    public Length each() {
        return cutEdges == 0 ? Length.ZERO : by.dividedBy(cutEdges);
    }

    /** How much of the share an edge takes so far along the piece, from 0 to 1. */
    double ramp(double alongMm) {
        return ramp(from, to, alongMm);
    }

    /** The same for a taper from one height to another; without them it is 1 throughout. */
    public static double ramp(Optional<Length> from, Optional<Length> to, double alongMm) {
        if (from.isEmpty() || to.isEmpty()) {
            return 1;
        }
        double fromMm = from.get().millimetres();
        double toMm = to.get().millimetres();
        if (alongMm <= fromMm) {
            return 0;
        }
        return alongMm >= toMm ? 1 : (alongMm - fromMm) / (toMm - fromMm);
    }

    /**
     * How the share is marked with a tape that does not show it: so many edges at one mark, the
     * others at the next, so that the total is right.
     *
     * @param lower the smaller mark
     * @param atLower how many edges take it
     * @param upper the next mark
     * @param atUpper how many edges take it
     */
    public record ByTheTape(Length lower, int atLower, Length upper, int atUpper) {}

    /** The share by the tape's marks, added or taken off; nothing if it stands on one. */
    public Optional<ByTheTape> byTheTape(Tape tape) {
        Length step = tape.mark();
        Length share = each().size();
        Length lower = share.roundedDownTo(step);
        if (cutEdges == 0 || lower.equals(share)) {
            return Optional.empty();
        }
        Length rest = by.size().roundedTo(step).minus(lower.times(cutEdges));
        int atUpper = (int) Math.round(rest.millimetres() / step.millimetres());
        return Optional.of(new ByTheTape(lower, cutEdges - atUpper, lower.plus(step), atUpper));
    }
}
