package secondbolt.sewing.plan;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.measure.Length;
import secondbolt.measure.Share;

/**
 * What she sews with.
 *
 * @param have the stitches of her machines, if told; none of them if she sews by hand
 * @param stitchLength how long a stitch of her seams is, if told
 * @param thickness how thick the layers of a seam are together, pressed, if told
 * @param ratios how much thread a stitch takes, as she measured it
 */
public record SewingMeans(
        Optional<List<Stitch>> have,
        Optional<Length> stitchLength,
        Optional<Length> thickness,
        Map<Stitch, Share> ratios) {
    /** Nothing told. */
    public static final SewingMeans NOTHING =
            new SewingMeans(Optional.empty(), Optional.empty(), Optional.empty(), Map.of());

    private static final List<Stitch> USUAL = List.of(Stitch.LOCKSTITCH, Stitch.ZIGZAG);

    /** Copies both in order. */
    public SewingMeans {
        have = have.map(List::copyOf);
        ratios = Collections.unmodifiableMap(new LinkedHashMap<>(ratios));
    }

    /** The stitches of her machines, or of a usual household machine. */
    public List<Stitch> haveOrUsual() {
        return have.orElse(USUAL);
    }

    /** Whether she sews by hand only. */
    public boolean isByHand() {
        return have.filter(List::isEmpty).isPresent();
    }

    /** Whether a stitch can be sewn: any by hand. */
    public boolean has(Stitch stitch) {
        return stitch.isByHand() || haveOrUsual().contains(stitch);
    }

    /** The overlock stitch of her machines with the most threads that neatens, if she has one. */
    public Optional<Stitch> overlock() {
        return List.of(Stitch.OVERLOCK_THREE, Stitch.OVERLOCK_FOUR, Stitch.OVERLOCK_TWO).stream()
                .filter(haveOrUsual()::contains)
                .findFirst();
    }
}
