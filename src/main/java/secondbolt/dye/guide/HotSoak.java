package secondbolt.dye.guide;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import secondbolt.dye.bath.DyeBatch;
import secondbolt.dye.bath.DyedCloth;
import secondbolt.prepare.heat.Heat;
import secondbolt.prepare.heat.Temperature;

/**
 * How hot reactive dye is washed off: as hot as washes best, but no hotter than the cloths bear.
 *
 * @param limits the cloths that do not bear the hot wash, the most tender first
 */
public record HotSoak(List<Limit> limits) {
    /** Source: a dyer's reference site, washing out. */
    private static final Temperature BEST = new Temperature(60);

    /**
     * What one cloth bears.
     *
     * @param cloth the maker's name for it
     * @param most the hottest wash; nothing if its label has it washed in no water
     * @param by what decides it: a fibre, or its label
     */
    public record Limit(String cloth, Optional<Temperature> most, String by) {
        private String words() {
            return cloth
                    + " "
                    + most.map(Temperature::words).orElse("no wash at all")
                    + " ("
                    + by
                    + ")";
        }

        private int celsius() {
            return most.map(Temperature::celsius).orElse(0);
        }
    }

    /** Copies the list. */
    public HotSoak {
        limits = List.copyOf(limits);
    }

    /** Of the cloths of a colour. */
    public static HotSoak of(DyeBatch batch) {
        return new HotSoak(
                batch.cloths().stream()
                        .map(HotSoak::limit)
                        .filter(limit -> limit.celsius() < BEST.celsius())
                        .sorted(Comparator.comparingInt(Limit::celsius))
                        .toList());
    }

    private static Limit limit(DyedCloth cloth) {
        Heat heat = Heat.of(cloth.fibre(), cloth.cloth().cloth().state().label());
        return new Limit(cloth.name(), heat.wash(), heat.washBy());
    }

    /** Whether all of it bears the hot wash. */
    public boolean isBorne() {
        return limits.isEmpty();
    }

    /** What each bears at most, in words: {@code jersey 40 °C (104 °F) (elastane)}. */
    public String words() {
        return String.join("; ", limits.stream().map(Limit::words).toList());
    }
}
