package secondbolt.fit;

import java.util.ArrayList;
import java.util.List;
import secondbolt.measure.Length;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Open;

/**
 * What is taken for granted, and asked, of pieces known by tape that are lengthened at a line
 * without {@code crosses}.
 *
 * @param result the altered pattern
 */
record TapedCrossings(FitResult result) {
    /** A line of a piece that is lengthened there, and the edges of it that are taken to grow. */
    private record Untold(String piece, String line, List<String> grow, List<String> stay) {}

    List<Assumed> assumed() {
        return untold().stream()
                .map(
                        u ->
                                new Assumed(
                                        u.piece() + ": edges that cross the line " + u.line(),
                                        u.grow().isEmpty() ? "none" : String.join(", ", u.grow()),
                                        "by their names, since a box does not show it; `crosses`"
                                                + " corrects it; common practice, no source"))
                .toList();
    }

    List<Open> open() {
        return untold().stream()
                .filter(u -> !u.stay().isEmpty())
                .map(
                        u ->
                                new Open(
                                        u.piece()
                                                + ": which edges the line "
                                                + u.line()
                                                + " crosses",
                                        "whether "
                                                + String.join(", ", u.stay())
                                                + " of "
                                                + u.piece()
                                                + " change; they are left as they are",
                                        "Look at the pattern and write `crosses: {"
                                                + u.line()
                                                + ": [edges]}` on the piece."))
                .toList();
    }

    private List<Untold> untold() {
        List<Untold> untold = new ArrayList<>();
        for (Piece piece : result.pattern().pieces()) {
            piece.shape()
                    .accept(
                            new PieceShape.Visitor<Boolean>() {
                                @Override
                                public Boolean drawn(PieceShape.Drawn drawn) {
                                    return false;
                                }

                                @Override
                                public Boolean taped(PieceShape.Taped taped) {
                                    return untold.addAll(untold(piece, taped));
                                }
                            });
        }
        return untold;
    }

    private List<Untold> untold(Piece piece, PieceShape.Taped taped) {
        List<Untold> untold = new ArrayList<>();
        for (String line : piece.lines().keySet()) {
            if (taped.crosses().containsKey(line) || !isAltered(piece, line)) {
                continue;
            }
            List<String> grow = TapedAlteration.crossing(taped, line);
            List<String> stay =
                    taped.edges().keySet().stream().filter(e -> !grow.contains(e)).toList();
            untold.add(new Untold(piece.name(), line, grow, stay));
        }
        return untold;
    }

    private boolean isAltered(Piece piece, String line) {
        return result.alterations().stream()
                .anyMatch(
                        alteration ->
                                alteration.accept(
                                        new Alteration.Visitor<Boolean>() {
                                            @Override
                                            public Boolean lengthen(Alteration.Lengthen lengthen) {
                                                return lengthen.line().equals(line)
                                                        && !lengthen.on(piece).equals(Length.ZERO);
                                            }

                                            @Override
                                            public Boolean widen(Alteration.Widen widen) {
                                                return false;
                                            }
                                        }));
    }
}
