package secondbolt.fit.alter;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import secondbolt.measure.Length;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.Meanings;
import secondbolt.pattern.piece.NamedEdge;
import secondbolt.pattern.piece.Piece;
import secondbolt.pattern.piece.PieceShape;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Point;

/** Alters one piece: its edges, its lines and what is marked on it move together. */
public final class PieceAlteration {
    private PieceAlteration() {}

    /**
     * The piece after all alterations.
     *
     * @param shares for each change of width, how much every edge of its name takes
     * @param meanings what the pattern's edges serve
     */
    static Piece apply(
            Piece piece,
            List<Alteration.Lengthen> lengthens,
            List<WidenShare> shares,
            Meanings meanings) {
        Piece longer =
                piece.shape()
                        .accept(
                                new PieceShape.Visitor<Piece>() {
                                    @Override
                                    public Piece drawn(PieceShape.Drawn drawn) {
                                        return lengthened(piece, drawn, lengthens);
                                    }

                                    @Override
                                    public Piece taped(PieceShape.Taped taped) {
                                        return TapedAlteration.lengthened(
                                                piece, taped, lengthens, meanings);
                                    }
                                });
        Piece altered = longer;
        for (WidenShare share : shares) {
            altered = widened(altered, share);
        }
        return altered;
    }

    /** The cuts of a piece, from the top down, each line once with all that is asked of it. */
    public static LengthenField field(Piece piece, List<Alteration.Lengthen> lengthens) {
        double topMm = topMm(piece);
        List<LengthenField.Cut> cuts = new ArrayList<>();
        piece.lines()
                .forEach(
                        (name, at) -> {
                            Length by = Length.ZERO;
                            for (Alteration.Lengthen lengthen : lengthens) {
                                by =
                                        lengthen.line().equals(name)
                                                ? by.plus(lengthen.on(piece))
                                                : by;
                            }
                            cuts.add(
                                    new LengthenField.Cut(
                                            name, topMm + at.millimetres(), by.millimetres()));
                        });
        cuts.sort(Comparator.comparingDouble(LengthenField.Cut::yMm));
        return new LengthenField(cuts);
    }

    /** How far down its top lies on paper; 0 for a piece known by tape. */
    public static double topMm(Piece piece) {
        return piece.shape().asDrawn().map(drawn -> drawn.box().topMm()).orElse(0.0);
    }

    private static Piece lengthened(
            Piece piece, PieceShape.Drawn drawn, List<Alteration.Lengthen> lengthens) {
        LengthenField field = field(piece, lengthens);
        if (field.isNothing()) {
            return piece;
        }
        PieceShape.Drawn moved = moved(drawn, edge -> edge.moved(field::move));
        double topMm = topMm(piece);
        Map<String, Length> lines = new LinkedHashMap<>();
        piece.lines()
                .forEach(
                        (name, at) ->
                                lines.put(
                                        name,
                                        Length.ofComputedMillimetres(
                                                field.lineAfterMm(topMm + at.millimetres())
                                                        - topMm)));
        Piece.Features features =
                new CarriedFeatures(drawn, moved, field::move).carry(piece.features());
        return piece.with(moved, lines, features);
    }

    private static PieceShape.Drawn moved(PieceShape.Drawn drawn, UnaryOperator<EdgeLine> move) {
        return new PieceShape.Drawn(
                drawn.edges().stream()
                        .map(edge -> new NamedEdge(edge.name(), move.apply(edge.line())))
                        .toList());
    }

    /** The piece with one share of a change of width, if it takes one. */
    static Piece widened(Piece piece, WidenShare share) {
        Optional<PieceShape.Drawn> drawn = piece.shape().asDrawn();
        if (!share.concerns(piece)) {
            return piece;
        }
        if (drawn.isEmpty()) {
            return TapedAlteration.widened(piece, share);
        }
        PieceShape.Drawn wider = new WidenedOutline(drawn.get(), share.on(piece)).edges();
        Piece.Features features =
                new CarriedFeatures(drawn.get(), wider, UnaryOperator.<Point>identity())
                        .carry(piece.features());
        return piece.with(wider, linesFrom(piece, wider.box().topMm()), features);
    }

    /** The lines stay where they are when the top of the piece has moved. */
    private static Map<String, Length> linesFrom(Piece piece, double newTopMm) {
        double topMm = topMm(piece);
        Map<String, Length> lines = new LinkedHashMap<>();
        piece.lines()
                .forEach(
                        (name, at) ->
                                lines.put(
                                        name,
                                        newTopMm == topMm
                                                ? at
                                                : Length.ofComputedMillimetres(
                                                        topMm + at.millimetres() - newTopMm)));
        return lines;
    }
}
