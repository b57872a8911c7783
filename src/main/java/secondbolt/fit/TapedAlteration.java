package secondbolt.fit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import secondbolt.measure.Length;

/**
 * Alters a piece that is known by tape only. Which of its edges cross a line is not drawn: those
 * that run along it, at least a third of its length, are taken to, and the page says so.
 */
final class TapedAlteration {
    private TapedAlteration() {}

    static Piece lengthened(
            Piece piece, PieceShape.Taped taped, List<Alteration.Lengthen> lengthens) {
        Length by = Length.ZERO;
        for (Alteration.Lengthen lengthen : lengthens) {
            by = by.plus(lengthen.on(piece));
        }
        if (by.equals(Length.ZERO)) {
            return piece;
        }
        Map<String, Length> edges = new LinkedHashMap<>();
        for (Map.Entry<String, Length> edge : taped.edges().entrySet()) {
            edges.put(
                    edge.getKey(),
                    runsAlong(taped, edge.getValue()) ? edge.getValue().plus(by) : edge.getValue());
        }
        PieceShape longer = new PieceShape.Taped(taped.across(), taped.along().plus(by), edges);
        return piece.with(longer, piece.lines(), piece.features());
    }

    /** Whether an edge is taken to cross the piece's lines. */
    static boolean runsAlong(PieceShape.Taped taped, Length edge) {
        return !edge.times(3).isShorterThan(taped.along());
    }

    static Piece widened(Piece piece, WidenShare share) {
        return piece.shape()
                .accept(
                        new PieceShape.Visitor<Piece>() {
                            @Override
                            public Piece drawn(PieceShape.Drawn drawn) {
                                return piece;
                            }

                            @Override
                            public Piece taped(PieceShape.Taped taped) {
                                return wider(piece, taped, share);
                            }
                        });
    }

    private static Piece wider(Piece piece, PieceShape.Taped taped, WidenShare share) {
        PieceShape wider =
                new PieceShape.Taped(
                        taped.across().plus(share.each()), taped.along(), taped.edges());
        return piece.with(wider, piece.lines(), piece.features());
    }
}
