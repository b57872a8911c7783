package secondbolt.dye.bath;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import secondbolt.cloth.yields.ClothResult;

/**
 * What colours are worked out from, beside what is written of them.
 *
 * @param cloths all there are, worked out
 * @param pieces those of the pattern; none if there is none
 * @param laidOn the names of the cloths each piece is cut from, as far as it found a place
 */
public record DyeInput(
        List<ClothResult> cloths, PieceParts pieces, Map<String, Set<String>> laidOn) {
    /** Copies the collections. */
    public DyeInput {
        cloths = List.copyOf(cloths);
        laidOn = Collections.unmodifiableMap(new LinkedHashMap<>(laidOn));
    }

    /** Cloths alone, without a pattern. */
    public static DyeInput of(List<ClothResult> cloths) {
        return new DyeInput(cloths, PieceParts.NONE, Map.of());
    }

    /** The cloths of these names, in that order. */
    List<ClothResult> named(List<String> names) {
        return names.stream()
                .flatMap(name -> cloths.stream().filter(cloth -> cloth.name().equals(name)))
                .toList();
    }
}
