package secondbolt.fit.alter;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import secondbolt.garment.PieceEdge;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.Meanings;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.Piece;

/**
 * What alterations ask of the pieces, sorted by kind.
 *
 * @param lengthens the changes of length, in order
 * @param shares for each change of width, how much every edge of its names takes
 */
public record PieceChanges(List<Alteration.Lengthen> lengthens, List<WidenShare> shares) {
    /** Nothing is asked. */
    public static final PieceChanges NONE = new PieceChanges(List.of(), List.of());

    /** Copies the lists. */
    public PieceChanges {
        lengthens = List.copyOf(lengthens);
        shares = List.copyOf(shares);
    }

    /** What one alteration asks of the pieces of a pattern. */
    public static PieceChanges of(Alteration alteration, Pattern pattern) {
        return alteration.accept(
                new Alteration.Visitor<PieceChanges>() {
                    @Override
                    public PieceChanges lengthen(Alteration.Lengthen lengthen) {
                        return new PieceChanges(List.of(lengthen), List.of());
                    }

                    @Override
                    public PieceChanges widen(Alteration.Widen widen) {
                        return new PieceChanges(
                                List.of(), WidthSharing.of(widen, pattern).shares());
                    }
                });
    }

    /** These and then others. */
    public PieceChanges and(PieceChanges others) {
        return new PieceChanges(
                Stream.concat(lengthens.stream(), others.lengthens.stream()).toList(),
                Stream.concat(shares.stream(), others.shares.stream()).toList());
    }

    /** Whether any of it is asked of this piece. */
    public boolean concern(Piece piece) {
        return lengthens.stream().anyMatch(l -> piece.lines().containsKey(l.line()))
                || shares.stream().anyMatch(share -> share.concerns(piece));
    }

    /** The piece, as drawn, with all of it. */
    public Piece on(Piece piece, Meanings meanings) {
        return PieceAlteration.apply(piece, lengthens, shares, meanings);
    }

    /** The taped edges of which it is not known whether a change of length changes them. */
    public List<PieceEdge> open(Pattern pattern) {
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
