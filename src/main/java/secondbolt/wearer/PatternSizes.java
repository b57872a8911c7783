package secondbolt.wearer;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import secondbolt.measure.Length;

/**
 * What a pattern says of its sizes, as the maker copied it.
 *
 * @param chart the body measurements of each size
 * @param size the size she works in
 * @param finished the finished garment in that size, by where on the body it is measured
 * @param lengths how long the finished garment is in that size
 */
public record PatternSizes(
        Optional<SizeChart> chart,
        Optional<ChosenSize> size,
        Map<BodyMeasure, Length> finished,
        Map<GarmentLength, Length> lengths) {
    /** Copies the finished measurements in their order. */
    public PatternSizes {
        finished = Collections.unmodifiableMap(new LinkedHashMap<>(finished));
        lengths = Collections.unmodifiableMap(new LinkedHashMap<>(lengths));
    }

    /** All that is told of the finished garment. */
    public Map<FinishedMeasure, Length> allFinished() {
        Map<FinishedMeasure, Length> all = new LinkedHashMap<>(finished);
        all.putAll(lengths);
        return all;
    }

    /** Nothing told. */
    public static PatternSizes none() {
        return new PatternSizes(Optional.empty(), Optional.empty(), Map.of(), Map.of());
    }
}
