package secondbolt.lay.design;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import secondbolt.lay.stock.SpreadCloth;
import secondbolt.lay.stock.StockLay;
import secondbolt.shape.Box;

/**
 * What stays over of each cloth in one piece: the largest clear rectangle beside what is laid.
 *
 * @param byCloth by the name of the cloth, as it is spread; none where nothing stays over
 */
public record Remnants(Map<String, Box> byCloth) {
    /** Nothing stays over. */
    public static final Remnants NONE = new Remnants(Map.of());

    /** Copies the map. */
    public Remnants {
        byCloth = Collections.unmodifiableMap(new LinkedHashMap<>(byCloth));
    }

    /** What stays over of a cloth. */
    public Optional<Box> of(SpreadCloth cloth) {
        return Optional.ofNullable(byCloth.get(cloth.name()));
    }

    /** The largest of a stock; of several equally large ones that of the cloth used first. */
    public Optional<Box> largest(StockLay stock) {
        return stock.spreads().stream()
                .flatMap(cloth -> of(cloth).stream())
                .reduce((a, b) -> b.areaMm2() > a.areaMm2() ? b : a);
    }
}
