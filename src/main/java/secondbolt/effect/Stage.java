package secondbolt.effect;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.closure.Closure;
import secondbolt.closure.ClosureCalculation;
import secondbolt.closure.ClosureResult;
import secondbolt.closure.Machine;
import secondbolt.cutting.CutPiece;
import secondbolt.cutting.CuttingCalculation;
import secondbolt.fit.FitResult;
import secondbolt.fit.Piece;
import secondbolt.hem.Hem;
import secondbolt.measure.Area;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;

/**
 * What can be measured on a garment with some of its alterations made.
 *
 * @param lengths by what they are, in the order of working
 * @param cloth what the cut pieces cover, by the role of the cloth
 */
record Stage(Map<String, Length> lengths, Map<String, Area> cloth) {
    static Stage of(
            FitResult fit,
            Map<String, Closure> closures,
            Machine machine,
            Map<String, Hem> hems,
            Tape tape) {
        Map<String, Length> lengths = new LinkedHashMap<>();
        Map<String, Area> cloth = new LinkedHashMap<>();
        ClosureCalculation.all(closures, Optional.of(fit), machine, tape)
                .forEach(closure -> addTo(lengths, closure));
        hems.forEach((name, hem) -> lengths.put(name + ": its fold, all round", fold(hem, fit)));
        for (CutPiece piece : CuttingCalculation.work(fit, hems, tape).pieces()) {
            addTo(lengths, piece);
            addCloth(cloth, piece);
        }
        return new Stage(lengths, cloth);
    }

    private static void addTo(Map<String, Length> lengths, ClosureResult closure) {
        String name = closure.name();
        lengths.put(name + ": the placket", closure.length());
        closure.gap().ifPresent(gap -> lengths.put(name + ": from button to button", gap));
        List<ClosureResult.Mark> marks = closure.marks();
        ClosureResult.Mark last = marks.get(marks.size() - 1);
        lengths.put(
                name
                        + ": "
                        + closure.closure().fastening().kind().one()
                        + " "
                        + last.number()
                        + ", from the top",
                last.fromTop());
    }

    private static Length fold(Hem hem, FitResult fit) {
        Length all = Length.ZERO;
        for (Hem.Edge edge : hem.edges()) {
            Piece piece = fit.find(edge.piece()).orElseThrow();
            Length once = piece.shape().edgeLengths().get(edge.edge());
            all = all.plus(once.times(piece.timesRoundTheBody()));
        }
        return all;
    }

    private static void addTo(Map<String, Length> lengths, CutPiece piece) {
        Box sewn = piece.shape().box();
        for (Piece.MarkPoint mark : piece.piece().features().marks()) {
            String of = piece.name() + ": " + mark.what();
            lengths.put(of + ", from the piece's top", mm(mark.at().yMm() - sewn.topMm()));
            lengths.put(of + ", from the piece's left", mm(mark.at().xMm() - sewn.leftMm()));
        }
        Box cut = piece.cut().box();
        String as =
                piece.name() + ", cut of " + String.join(" and ", piece.piece().cuts().keySet());
        lengths.put(as + ": along", mm(cut.heightMm()));
        lengths.put(as + ": across", mm(cut.widthMm()));
    }

    private static Length mm(double mm) {
        return Length.ofComputedMillimetres(mm);
    }

    private static void addCloth(Map<String, Area> cloth, CutPiece piece) {
        int halves = piece.piece().fold().isPresent() ? 2 : 1;
        double mm2 = piece.cut().areaMm2() * halves;
        piece.piece()
                .cuts()
                .forEach(
                        (role, cut) ->
                                cloth.merge(
                                        role,
                                        Area.ofComputedSquareMillimetres(mm2 * cut.count()),
                                        Area::plus));
    }
}
