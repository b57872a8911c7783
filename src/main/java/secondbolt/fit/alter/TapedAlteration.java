package secondbolt.fit.alter;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import secondbolt.measure.Length;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.Meanings;
import secondbolt.pattern.piece.Piece;
import secondbolt.pattern.piece.PieceShape;

/**
 * Alters a piece that is known by tape only. The edges that a line crosses change with it; those of
 * which that is not known keep the length that was taped, and are marked as open.
 */
final class TapedAlteration {
    private TapedAlteration() {}

    static Piece lengthened(
            Piece piece,
            PieceShape.Taped taped,
            List<Alteration.Lengthen> lengthens,
            Meanings meanings) {
        LengthenField field = PieceAlteration.field(piece, lengthens);
        if (field.isNothing()) {
            return piece;
        }
        Map<String, Length> edges = new LinkedHashMap<>(taped.edges());
        Set<String> open = new LinkedHashSet<>(taped.open());
        Length along = taped.along();
        Map<String, TapedLine> lines = TapedLine.moved(piece, lengthens, meanings);
        for (LengthenField.Cut cut : field.cuts()) {
            if (lines.containsKey(cut.name())) {
                Length by = Length.ofComputedMillimetres(cut.byMm());
                lines.get(cut.name()).crossing().forEach(e -> edges.merge(e, by, Length::plus));
                open.addAll(lines.get(cut.name()).open());
                along = along.plus(by);
            }
        }
        PieceShape longer =
                new PieceShape.Taped(taped.across(), along, edges, taped.crosses(), open);
        return piece.with(longer, lines(piece, field), piece.features());
    }

    /** The lines move with what is spread or folded above them, as they do on a drawn piece. */
    private static Map<String, Length> lines(Piece piece, LengthenField field) {
        Map<String, Length> lines = new LinkedHashMap<>();
        piece.lines()
                .forEach(
                        (name, at) ->
                                lines.put(
                                        name,
                                        Length.ofComputedMillimetres(
                                                field.lineAfterMm(at.millimetres()))));
        return lines;
    }

    /** The box grows or narrows; which edges end at its sides and change with them is not known. */
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
                                return wider(piece, taped, share.on(piece));
                            }
                        });
    }

    private static Piece wider(Piece piece, PieceShape.Taped taped, WidenShare share) {
        Set<String> open = new LinkedHashSet<>(taped.open());
        taped.edges().keySet().stream().filter(e -> !share.edges().contains(e)).forEach(open::add);
        PieceShape wider =
                new PieceShape.Taped(
                        taped.across()
                                .plus(share.each().times(WidenShare.sidesOn(piece, share.edges()))),
                        taped.along(),
                        taped.edges(),
                        taped.crosses(),
                        open);
        return piece.with(wider, piece.lines(), piece.features());
    }
}
