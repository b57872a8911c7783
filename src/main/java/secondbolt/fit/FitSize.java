package secondbolt.fit;

import java.util.LinkedHashMap;
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
    private static final Set<BodyMeasure> ALL_ROUND =
            Set.of(BodyMeasure.BUST, BodyMeasure.WAIST, BodyMeasure.HIP);

    private FitSize() {}

    static SizeResult of(FitResult result, Optional<Wearer> wearer, Tape tape) {
        Set<String> lines = new TreeSet<>();
        Set<String> edges = new TreeSet<>();
        for (Piece piece : result.pattern().pieces()) {
            lines.addAll(piece.lines().keySet());
            edges.addAll(piece.shape().edgeNames());
        }
        SizeInput.Pieces pieces = new SizeInput.Pieces(lines, edges, Map.of(), added(result));
        return SizeCalculation.work(new SizeInput(wearer, result.pattern().sizes(), pieces, tape));
    }

    private static Map<BodyMeasure, Length> added(FitResult result) {
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
                            for (BodyMeasure measure : BodyMeasure.values()) {
                                // A taper that begins further down leaves bust and waist as they
                                // are.
                                boolean reached =
                                        measure == BodyMeasure.HIP || widen.from().isEmpty();
                                if (atTheSide && reached && ALL_ROUND.contains(measure)) {
                                    added.merge(measure, widen.by(), Length::plus);
                                }
                            }
                            return true;
                        }
                    });
        }
        return added;
    }
}
