package secondbolt.fit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import secondbolt.measure.Length;

/**
 * Alters a piece that is known by tape only. Which of its edges cross a line is not drawn, so it is
 * told with {@code crosses}. Where it is not, only edges whose name says that they run along the
 * piece are taken to, if they are long enough; all others stay as they are, and the page asks.
 */
final class TapedAlteration {
    /** Edges that run along a garment, by the trade's names; common practice, no source. */
    private static final List<String> LENGTHWISE =
            List.of(
                    "side",
                    "left",
                    "right",
                    "inseam",
                    "outseam",
                    "inside leg",
                    "outside leg",
                    "underarm",
                    "centre",
                    "center",
                    "fold");

    private TapedAlteration() {}

    static Piece lengthened(
            Piece piece, PieceShape.Taped taped, List<Alteration.Lengthen> lengthens) {
        Map<String, Length> edges = new LinkedHashMap<>(taped.edges());
        Map<String, Length> lines = new LinkedHashMap<>(piece.lines());
        Length along = taped.along();
        for (Alteration.Lengthen lengthen : lengthens) {
            Length by = lengthen.on(piece);
            if (!piece.lines().containsKey(lengthen.line()) || by.equals(Length.ZERO)) {
                continue;
            }
            along = along.plus(by);
            crossing(taped, lengthen.line())
                    .forEach(edge -> edges.computeIfPresent(edge, (name, was) -> was.plus(by)));
            Length at = piece.lines().get(lengthen.line());
            lines.replaceAll(
                    (name, was) -> piece.lines().get(name).isLongerThan(at) ? was.plus(by) : was);
        }
        return along.equals(taped.along()) && edges.equals(taped.edges())
                ? piece
                : piece.with(
                        new PieceShape.Taped(taped.across(), along, edges, taped.crosses()),
                        lines,
                        piece.features());
    }

    /** The edges that are taken to cross a line. */
    static List<String> crossing(PieceShape.Taped taped, String line) {
        return taped.crosses().containsKey(line)
                ? taped.crosses().get(line)
                : taped.edges().keySet().stream().filter(edge -> runsAlong(taped, edge)).toList();
    }

    /** Whether an edge runs along the piece by its name, and is half as long as it or longer. */
    private static boolean runsAlong(PieceShape.Taped taped, String edge) {
        boolean named =
                LENGTHWISE.stream().anyMatch(word -> edge.toLowerCase(Locale.ROOT).contains(word));
        return named && !taped.edges().get(edge).times(2).isShorterThan(taped.along());
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
                        taped.across().plus(share.each()),
                        taped.along(),
                        taped.edges(),
                        taped.crosses());
        return piece.with(wider, piece.lines(), piece.features());
    }
}
