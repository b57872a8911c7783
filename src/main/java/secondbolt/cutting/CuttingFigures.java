package secondbolt.cutting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import secondbolt.cutting.line.CutPiece;
import secondbolt.cutting.line.CuttingResult;
import secondbolt.figure.Figures;
import secondbolt.measure.Area;
import secondbolt.measure.Length;
import secondbolt.pattern.piece.Piece;
import secondbolt.shape.Box;

/** The pieces for other programs. */
final class CuttingFigures {
    private CuttingFigures() {}

    static Figures of(CuttingResult result) {
        Figures figures = new Figures();
        result.pieces().forEach(piece -> figures.inside(piece.name(), of(piece)));
        return figures;
    }

    private static Figures of(CutPiece piece) {
        Figures byCloth = new Figures();
        piece.piece().cuts().forEach((role, cut) -> byCloth.count(role.word(), cut.count()));
        Map<String, Length> widths = new LinkedHashMap<>();
        piece.edges().forEach(edge -> widths.put(edge.edge(), edge.width()));
        return new Figures()
                .points("cut_outline", piece.cut().corners())
                .claim("on_fold", piece.piece().fold().isPresent())
                .count("copies", piece.copies())
                .inside("by_cloth", byCloth)
                .lengths("allowances", widths)
                .list("marks", marks(piece))
                .inside("cut_size", size(piece))
                .inside("cloth", cloth(piece));
    }

    private static List<Figures> marks(CutPiece piece) {
        Box sewn = piece.shape().box();
        List<Figures> marks = new ArrayList<>();
        for (Piece.MarkPoint mark : piece.piece().features().marks()) {
            String of = piece.name() + ": " + mark.what();
            marks.add(
                    new Figures()
                            .text("what", mark.what())
                            .toldLength(
                                    "from_top",
                                    mm(mark.at().yMm() - sewn.topMm()),
                                    of + ", from the piece's top")
                            .toldLength(
                                    "from_left",
                                    mm(mark.at().xMm() - sewn.leftMm()),
                                    of + ", from the piece's left"));
        }
        return marks;
    }

    private static Figures size(CutPiece piece) {
        Box cut = piece.cut().box();
        String as =
                piece.name()
                        + ", cut of "
                        + piece.piece().cuts().keySet().stream()
                                .map(Object::toString)
                                .collect(Collectors.joining(" and "));
        return new Figures()
                .toldLength("along", mm(cut.heightMm()), as + ": along")
                .toldLength("across", mm(cut.widthMm()), as + ": across");
    }

    /** What all copies of a piece cover of each cloth. */
    private static Figures cloth(CutPiece piece) {
        int halves = piece.piece().fold().isPresent() ? 2 : 1;
        double mm2 = piece.cut().areaMm2() * halves;
        Figures cloth = new Figures();
        piece.piece()
                .cuts()
                .forEach(
                        (role, cut) ->
                                cloth.toldArea(
                                        role.toString(),
                                        Area.ofComputedSquareMillimetres(mm2 * cut.count()),
                                        "Cloth in all pieces cut of " + role));
        return cloth;
    }

    private static Length mm(double mm) {
        return Length.ofComputedMillimetres(mm);
    }
}
