package secondbolt.fit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import secondbolt.fit.alter.WidenShare;
import secondbolt.fit.alter.WidthSharing;
import secondbolt.fit.made.Limb;
import secondbolt.fit.result.FitResult;
import secondbolt.fit.size.SizeCalculation;
import secondbolt.fit.size.SizeInput;
import secondbolt.fit.size.SizeResult;
import secondbolt.garment.Role;
import secondbolt.garment.Serves;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.Meanings;
import secondbolt.pattern.Pattern;
import secondbolt.wearer.BodyMeasure;
import secondbolt.wearer.Wearer;

/** Lays the wearer beside the pattern, with what the alterations already add. */
final class FitSize {
    /** What a change of the sides adds to. */
    static final List<BodyMeasure> ALL_ROUND =
            List.of(BodyMeasure.BUST, BodyMeasure.WAIST, BodyMeasure.HIP);

    private static final Map<Limb, List<BodyMeasure>> GIRTHS =
            Map.of(
                    Limb.SLEEVE, List.of(BodyMeasure.UPPER_ARM, BodyMeasure.WRIST),
                    Limb.LEG,
                            List.of(
                                    BodyMeasure.THIGH,
                                    BodyMeasure.KNEE,
                                    BodyMeasure.CALF,
                                    BodyMeasure.ANKLE));

    private static final Map<Limb, List<BodyMeasure>> ENDS =
            Map.of(
                    Limb.SLEEVE, List.of(BodyMeasure.WRIST),
                    Limb.LEG, List.of(BodyMeasure.ANKLE));

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
                        added(result.alterations(), result.pattern(), sides, levels),
                        made(meanings));
        return SizeCalculation.work(
                new SizeInput(
                        wearer, result.pattern().sizes(), pieces, result.stretch().round(), tape));
    }

    private static SizeInput.Made made(Meanings meanings) {
        if (hasAny(meanings, Serves.SHOULDER, Serves.ARMHOLE, Serves.NECKLINE, Serves.CAP)) {
            return SizeInput.Made.FROM_THE_SHOULDERS;
        }
        if (hasAny(meanings, Serves.INSEAM, Serves.CROTCH)) {
            return SizeInput.Made.LEGS;
        }
        return hasAny(meanings, Serves.WAIST) ? SizeInput.Made.SKIRT : SizeInput.Made.UNKNOWN;
    }

    private static boolean hasAny(Meanings meanings, Serves... sought) {
        return Stream.of(sought).anyMatch(s -> !meanings.edgeNames(s).isEmpty());
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
            Pattern pattern,
            Set<String> sides,
            Map<BodyMeasure, Length> levels) {
        Map<BodyMeasure, Length> added = new LinkedHashMap<>();
        Meanings meanings = pattern.meanings();
        for (Alteration alteration : alterations) {
            alteration.accept(
                    new Alteration.Visitor<Boolean>() {
                        @Override
                        public Boolean lengthen(Alteration.Lengthen lengthen) {
                            meanings.line(lengthen.line())
                                    .ifPresent(
                                            line -> addLength(line.serves(), lengthen.by(), added));
                            return true;
                        }

                        @Override
                        public Boolean widen(Alteration.Widen widen) {
                            boolean atTheSide =
                                    widen.edges().stream().anyMatch(sides::contains)
                                            || isOutsideOfLegs(widen, pattern);
                            if (atTheSide) {
                                ALL_ROUND.forEach(
                                        m -> added.merge(m, at(widen, m, levels), Length::plus));
                            }
                            addToLimbs(widen, pattern, added);
                            return true;
                        }
                    });
        }
        return added;
    }

    /** The outside of a leg runs up to the waist. */
    private static boolean isOutsideOfLegs(Alteration.Widen widen, Pattern pattern) {
        return pattern.pieces().stream()
                .filter(piece -> Limb.of(piece, pattern.meanings()).equals(Optional.of(Limb.LEG)))
                .anyMatch(
                        piece ->
                                widen.edges().stream()
                                        .anyMatch(
                                                edge ->
                                                        pattern.meanings()
                                                                .serves(
                                                                        piece.name(),
                                                                        edge,
                                                                        Serves.OUTSEAM)));
    }

    /** A line between waist and crotch is crossed in front and at the back by what goes between. */
    private static void addLength(Serves line, Length by, Map<BodyMeasure, Length> added) {
        SizeCalculation.alteredAt(line).ifPresent(m -> added.merge(m, by, Length::plus));
        if (line == Serves.CROTCH_DEPTH) {
            added.merge(BodyMeasure.CROTCH_LENGTH, by.times(2), Length::plus);
        }
        if (line == Serves.CROTCH_DEPTH || line == Serves.LEG) {
            added.merge(BodyMeasure.OUTSIDE_LEG, by, Length::plus);
        }
    }

    /** What each arm or leg gets; of a taper only what lies at its end. */
    private static void addToLimbs(
            Alteration.Widen widen, Pattern pattern, Map<BodyMeasure, Length> added) {
        for (WidenShare share : WidthSharing.of(widen, pattern).shares()) {
            Optional<Limb> limb = Limb.of(share.pieces(), pattern);
            boolean isOutside =
                    share.pieces().stream()
                            .flatMap(name -> pattern.find(name).stream())
                            .allMatch(piece -> piece.cuts().containsKey(Role.MAIN));
            if (limb.isPresent() && isOutside) {
                Length each = Limb.each(share.by(), share.pieces(), pattern);
                (widen.from().isPresent() ? ENDS : GIRTHS)
                        .get(limb.get())
                        .forEach(m -> added.merge(m, each, Length::plus));
                return;
            }
        }
    }
}
