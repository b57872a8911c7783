package secondbolt.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import secondbolt.garment.PieceEdge;

/**
 * What alterations ask of the pieces, sorted by kind.
 *
 * @param lengthens the changes of length, in order
 * @param shares for each change of width, how much every edge of its names takes
 */
record PieceChanges(List<Alteration.Lengthen> lengthens, List<WidenShare> shares) {
    /** Nothing is asked. */
    static final PieceChanges NONE = new PieceChanges(List.of(), List.of());

    PieceChanges {
        lengthens = List.copyOf(lengthens);
        shares = List.copyOf(shares);
    }

    static PieceChanges of(Alteration alteration, Pattern pattern) {
        return alteration.accept(
                new Alteration.Visitor<PieceChanges>() {
                    @Override
                    public PieceChanges lengthen(Alteration.Lengthen lengthen) {
                        return new PieceChanges(List.of(lengthen), List.of());
                    }

                    @Override
                    public PieceChanges widen(Alteration.Widen widen) {
                        return new PieceChanges(List.of(), WidenShare.of(widen, pattern));
                    }
                });
    }

    /** These and then others. */
    PieceChanges and(PieceChanges others) {
        return new PieceChanges(
                Stream.concat(lengthens.stream(), others.lengthens.stream()).toList(),
                Stream.concat(shares.stream(), others.shares.stream()).toList());
    }

    /** Whether any of it is asked of this piece. */
    boolean concern(Piece piece) {
        return lengthens.stream().anyMatch(l -> piece.lines().containsKey(l.line()))
                || shares.stream().anyMatch(share -> share.concerns(piece));
    }

    /** The piece, as drawn, with all of it. */
    Piece on(Piece piece, Meanings meanings) {
        return PieceAlteration.apply(piece, lengthens, shares, meanings);
    }

    /** The taped edges of which it is not known whether a change of length changes them. */
    List<PieceEdge> open(Pattern pattern) {
        List<PieceEdge> open = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            TapedLine.moved(piece, lengthens, pattern.meanings())
                    .values()
                    .forEach(
                            line ->
                                    line.open()
                                            .forEach(
                                                    edge ->
                                                            open.add(
                                                                    new PieceEdge(
                                                                            piece.name(), edge))));
        }
        return open;
    }
}
