package secondbolt.fit.size;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.measure.Length;
import secondbolt.wearer.BodyMeasure;

/**
 * By how much the body differs from the size it is cut in, as altered so far, at each measurement
 * of which both are known.
 */
final class BodyDifferences {
    /** The girths that a change of the side follows, from the top down. */
    static final List<BodyMeasure> WIDTHS =
            List.of(BodyMeasure.BUST, BodyMeasure.CHEST, BodyMeasure.WAIST, BodyMeasure.HIP);

    private final SizeInput input;
    private final Map<BodyMeasure, SizeResult.Measurement> measured =
            new EnumMap<>(BodyMeasure.class);
    private final Map<BodyMeasure, Length> least = new EnumMap<>(BodyMeasure.class);
    private final Map<BodyMeasure, Length> charted = new EnumMap<>(BodyMeasure.class);
    private final Map<BodyMeasure, Length> needed = new EnumMap<>(BodyMeasure.class);

    BodyDifferences(SizeInput input, List<SizeResult.Measurement> measurements) {
        this.input = input;
        measurements.forEach(this::add);
    }

    private void add(SizeResult.Measurement measurement) {
        BodyMeasure name = measurement.name();
        measured.put(name, measurement);
        measurement
                .ease()
                .flatMap(ease -> least(measurement, ease))
                .ifPresent(l -> least.put(name, l.roundedUpTo(input.tape().mark())));
        measurement
                .body()
                .flatMap(body -> measurement.pattern().map(body::minus))
                .ifPresent(
                        by -> {
                            charted.put(name, by);
                            needed.put(name, by.orLonger(least.getOrDefault(name, by)));
                        });
    }

    private static Optional<Length> least(SizeResult.Measurement measurement, Length ease) {
        if (measurement.usual().isPresent()) {
            return measurement.usual().map(usual -> usual.least().minus(ease));
        }
        // No source tells the usual: it is only not taken in below the body itself.
        return WIDTHS.contains(measurement.name())
                ? Optional.of(Length.ZERO.minus(ease).orShorter(Length.ZERO))
                : Optional.empty();
    }

    SizeInput input() {
        return input;
    }

    /** A measurement that body or pattern tell. */
    SizeResult.Measurement measured(BodyMeasure measure) {
        return measured.get(measure);
    }

    /** What the body measures more than the size as altered so far; nothing if either is open. */
    Optional<Length> charted(BodyMeasure measure) {
        return Optional.ofNullable(charted.get(measure));
    }

    /**
     * By how much it should be larger: what the chart says, but never so little that the finished
     * garment, where its measurement is told, falls below the usual wearing ease.
     */
    Optional<Length> needed(BodyMeasure measure) {
        return Optional.ofNullable(needed.get(measure));
    }

    /** The same by the tape's marks; nothing is taken in that the finished garment cannot spare. */
    Length total(BodyMeasure measure) {
        Length total = needed(measure).orElseThrow().roundedTo(input.tape().mark());
        return total.isNegative() ? spare().map(total::orLonger).orElse(total) : total;
    }

    /** What may be taken in at a girth that the chart has no row for, but the finished garment. */
    private Optional<Length> spare() {
        return WIDTHS.stream()
                .filter(measure -> !charted.containsKey(measure))
                .flatMap(measure -> Optional.ofNullable(least.get(measure)).stream())
                .reduce(Length::orLonger)
                .map(least -> least.orShorter(Length.ZERO));
    }

    boolean isWorthIt(Length difference) {
        return !difference.size().isShorterThan(input.least());
    }

    /** A bust much fuller than the high bust is given room over the bust alone, not at the side. */
    boolean enlargesTheBust() {
        Length more = needed(BodyMeasure.BUST).orElse(Length.ZERO);
        return input.wearer().filter(SizeChoice::goesByHighBust).isPresent()
                && more.isPositive()
                && isWorthIt(more);
    }
}
