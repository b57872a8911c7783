package secondbolt.fit.made;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import secondbolt.closure.placket.DrawnLaps;
import secondbolt.fit.result.FitResult;
import secondbolt.wearer.BodyMeasure;
import secondbolt.wearer.FinishedMeasure;

/**
 * What the finished garment measures, as far as its pieces are drawn.
 *
 * @param lengths how long it is
 * @param girths how far round it goes
 */
public record MadeMeasures(List<Made> lengths, List<Made> girths) {
    /** Copies the lists. */
    public MadeMeasures {
        lengths = List.copyOf(lengths);
        girths = List.copyOf(girths);
    }

    /** Of a pattern, altered, that laps over nowhere. */
    public static MadeMeasures of(FitResult result) {
        return of(result, DrawnLaps.NONE);
    }

    /** Of a pattern, altered. */
    public static MadeMeasures of(FitResult result, DrawnLaps laps) {
        return new MadeMeasures(new MadeLengths(result).all(), new MadeGirths(result, laps).all());
    }

    /** All of them, the lengths first. */
    public List<Made> all() {
        return Stream.concat(lengths.stream(), girths.stream()).toList();
    }

    /** Those that tell a measure. */
    public List<Made> of(FinishedMeasure measure) {
        return all().stream().filter(made -> made.tells(measure)).toList();
    }

    /**
     * The girths of the body or a limb: of several the least, which the body must pass through as
     * well.
     */
    public Map<BodyMeasure, Made> girthsOfTheBody() {
        Map<BodyMeasure, Made> least = new LinkedHashMap<>();
        for (BodyMeasure measure : BodyMeasure.values()) {
            girths.stream()
                    .filter(made -> made.tells(measure))
                    .min(Comparator.comparing(Made::after))
                    .ifPresent(made -> least.put(measure, made));
        }
        return least;
    }
}
