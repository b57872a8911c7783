package secondbolt.fit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import secondbolt.fit.alter.WidenShare;
import secondbolt.fit.result.FitResult;
import secondbolt.fit.size.SizeCalculation;
import secondbolt.fit.size.SizeInput;
import secondbolt.fit.size.SizeResult;
import secondbolt.garment.Serves;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.Meanings;
import secondbolt.wearer.BodyMeasure;
import secondbolt.wearer.Wearer;

/** Lays the wearer beside the pattern, with what the alterations already add. */
final class FitSize {
    /** What a change of the sides adds to. */
    static final List<BodyMeasure> ALL_ROUND =
            List.of(BodyMeasure.BUST, BodyMeasure.WAIST, BodyMeasure.HIP);

    private FitSize() {}

    static SizeResult of(FitResult result, Optional<Wearer> wearer, Tape tape) {
        Meanings meanings = result.pattern().meanings();
        Map<BodyMeasure, Length> levels = BodyLevels.of(result.pieces(), meanings);
        Set<String> sides = meanings.edgeNames(Serves.SIDE).keySet();
        SizeInput.Pieces pieces =
                new SizeInput.Pieces(
                        lines(meanings),
                        List.copyOf(sides),
                        levels,
                        added(result.alterations(), meanings, sides, levels));
        return SizeCalculation.work(
                new SizeInput(
                        wearer, result.pattern().sizes(), pieces, result.stretch().round(), tape));
    }

    /** For each length of the body, the line it is altered at. */
    private static Map<BodyMeasure, String> lines(Meanings meanings) {
        Map<BodyMeasure, String> lines = new LinkedHashMap<>();
        for (BodyMeasure measure : BodyMeasure.values()) {
            meanings.lineFor(s -> SizeCalculation.alteredAt(s).equals(Optional.of(measure)))
                    .ifPresent(line -> lines.put(measure, line));
        }
        return lines;
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
            List<Alteration> alterations,
            Meanings meanings,
            Set<String> sides,
            Map<BodyMeasure, Length> levels) {
        Map<BodyMeasure, Length> added = new LinkedHashMap<>();
        for (Alteration alteration : alterations) {
            alteration.accept(
                    new Alteration.Visitor<Boolean>() {
                        @Override
                        public Boolean lengthen(Alteration.Lengthen lengthen) {
                            meanings.line(lengthen.line())
                                    .flatMap(line -> SizeCalculation.alteredAt(line.serves()))
                                    .ifPresent(m -> added.merge(m, lengthen.by(), Length::plus));
                            return true;
                        }

                        @Override
                        public Boolean widen(Alteration.Widen widen) {
                            boolean atTheSide = widen.edges().stream().anyMatch(sides::contains);
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
