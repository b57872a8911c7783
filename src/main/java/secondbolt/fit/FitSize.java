package secondbolt.fit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import secondbolt.fit.made.AddedMeasures;
import secondbolt.fit.made.MadeMeasures;
import secondbolt.fit.result.FitResult;
import secondbolt.fit.size.SizeCalculation;
import secondbolt.fit.size.SizeInput;
import secondbolt.fit.size.SizeResult;
import secondbolt.garment.Serves;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.Meanings;
import secondbolt.wearer.BodyMeasure;
import secondbolt.wearer.Wearer;

/** Lays the wearer beside the pattern, with what the alterations already add. */
final class FitSize {
    private FitSize() {}

    static SizeResult of(FitResult result, MadeMeasures made, Optional<Wearer> wearer, Tape tape) {
        Meanings meanings = result.pattern().meanings();
        Map<BodyMeasure, Length> levels = BodyLevels.of(result.pieces(), meanings);
        Set<String> sides = meanings.edgeNames(Serves.SIDE).keySet();
        SizeInput.Pieces pieces =
                new SizeInput.Pieces(
                        lines(meanings),
                        List.copyOf(sides),
                        levels,
                        AddedMeasures.of(result, levels),
                        measured(made),
                        made(meanings));
        return SizeCalculation.work(
                new SizeInput(
                        wearer, result.pattern().sizes(), pieces, result.stretch().round(), tape));
    }

    private static Map<BodyMeasure, Length> measured(MadeMeasures made) {
        Map<BodyMeasure, Length> measured = new LinkedHashMap<>();
        made.girthsOfTheBody().forEach((measure, girth) -> measured.put(measure, girth.after()));
        return measured;
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
}
