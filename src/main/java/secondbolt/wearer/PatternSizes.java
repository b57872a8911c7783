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
 */
public record PatternSizes(
        Optional<SizeChart> chart, Optional<ChosenSize> size, Map<BodyMeasure, Length> finished) {
    /** Copies the finished measurements in their order. */
    public PatternSizes {
        finished = Collections.unmodifiableMap(new LinkedHashMap<>(finished));
    }

    /** Nothing told. */
    public static PatternSizes none() {
        return new PatternSizes(Optional.empty(), Optional.empty(), Map.of());
    }
}
