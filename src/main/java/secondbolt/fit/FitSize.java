package secondbolt.fit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import secondbolt.fit.size.BodyMeasure;
import secondbolt.fit.size.SizeCalculation;
import secondbolt.fit.size.SizeInput;
import secondbolt.fit.size.SizeResult;
import secondbolt.fit.size.Wearer;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/** Lays the wearer beside the pattern, with what the alterations already add. */
final class FitSize {
    private static final List<BodyMeasure> ALL_ROUND =
            List.of(BodyMeasure.BUST, BodyMeasure.WAIST, BodyMeasure.HIP);

    private FitSize() {}

    static SizeResult of(FitResult result, Optional<Wearer> wearer, Tape tape) {
        Set<String> lines = new TreeSet<>();
        Set<String> edges = new TreeSet<>();
        for (Piece piece : result.pattern().pieces()) {
            lines.addAll(piece.lines().keySet());
            edges.addAll(piece.shape().edgeNames());
        }
        Map<BodyMeasure, Length> levels = BodyLevels.of(result.pieces());
        SizeInput.Pieces pieces = new SizeInput.Pieces(lines, edges, levels, added(result, levels));
        return SizeCalculation.work(new SizeInput(wearer, result.pattern().sizes(), pieces, tape));
    }

    /** What a change of the sides adds at a measurement. */
    private static Length at(
            Alteration.Widen widen, BodyMeasure measure, Map<BodyMeasure, Length> levels) {
        if (widen.from().isEmpty()) {
            return widen.by();
        }
        Length level = levels.get(measure);
        if (level == null) {
            // Where it lies is not known: a taper is taken to serve the hip, the usual reason.
            return measure == BodyMeasure.HIP ? widen.by() : Length.ZERO;
        }
        double share = WidenShare.ramp(widen.from(), widen.to(), level.millimetres());
        return Length.ofComputedMillimetres(widen.by().millimetres() * share);
    }

    private static Map<BodyMeasure, Length> added(
            FitResult result, Map<BodyMeasure, Length> levels) {
        Map<BodyMeasure, Length> added = new LinkedHashMap<>();
        for (Alteration alteration : result.alterations()) {
            alteration.accept(
                    new Alteration.Visitor<Boolean>() {
                        @Override
                        public Boolean lengthen(Alteration.Lengthen lengthen) {
                            SizeCalculation.measureOfLine(lengthen.line())
                                    .ifPresent(m -> added.merge(m, lengthen.by(), Length::plus));
                            return true;
                        }

                        @Override
                        public Boolean widen(Alteration.Widen widen) {
                            boolean atTheSide =
                                    widen.edges().stream().anyMatch(SizeCalculation::isSide);
                            if (atTheSide) {
                                ALL_ROUND.forEach(
                                        m -> added.merge(m, at(widen, m, levels), Length::plus));
                            }
                            return true;
                        }
                    });
        }
        return added;
    }
}
