package secondbolt.worksheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.measure.Area;
import secondbolt.measure.ClothWeight;
import secondbolt.measure.Length;
import secondbolt.measure.Mass;
import secondbolt.measure.Share;
import secondbolt.shape.Point;

/**
 * Figures for other programs, in the order put, each measure under a key that ends in its unit.
 *
 * <p>Gathered once and then only read.
 */
public final class Figures {
    private final Map<String, Object> values = new LinkedHashMap<>();

    /** Puts text. */
    public Figures text(String key, String value) {
        values.put(key, value);
        return this;
    }

    /** Puts text, or null where there is none. */
    public Figures text(String key, Optional<String> value) {
        values.put(key, value.orElse(null));
        return this;
    }

    /** Puts a count. */
    public Figures count(String key, int value) {
        values.put(key, value);
        return this;
    }

    /** Puts a claim that is true or false. */
    public Figures claim(String key, boolean value) {
        values.put(key, value);
        return this;
    }

    /** Puts a length under {@code key_mm}. */
    public Figures length(String key, Length value) {
        values.put(key + "_mm", value.millimetres());
        return this;
    }

    /** Puts a length under {@code key_mm}; null if it is open. */
    public Figures length(String key, Optional<Length> value) {
        values.put(key + "_mm", value.map(Length::millimetres).orElse(null));
        return this;
    }

    /** Puts an area under {@code key_mm2}; null if it is open. */
    public Figures area(String key, Optional<Area> value) {
        values.put(key + "_mm2", value.map(Area::squareMillimetres).orElse(null));
        return this;
    }

    /** Puts a mass under {@code key_g}; null if it is open. */
    public Figures mass(String key, Optional<Mass> value) {
        values.put(key + "_g", value.map(Mass::grams).orElse(null));
        return this;
    }

    /** Puts a cloth weight under {@code key_g_per_m2}; null if it is open. */
    public Figures weight(String key, Optional<ClothWeight> value) {
        values.put(key + "_g_per_m2", value.map(ClothWeight::gramsPerSquareMetre).orElse(null));
        return this;
    }

    /**
     * Puts a change in hundredths under {@code key_percent}, minus for less; null if it is open.
     */
    public Figures change(String key, Optional<Share> left) {
        values.put(key + "_percent", left.map(share -> (share.fraction() - 1) * 100).orElse(null));
        return this;
    }

    /** Puts a share, 0 to 1, rounded to a thousandth, under {@code key_share}. */
    public Figures share(String key, double share) {
        values.put(key + "_share", Math.rint(share * 1000) / 1000);
        return this;
    }

    /** Puts a position or a size {@code [across, along]} under {@code key_mm}. */
    public Figures acrossAlong(String key, Optional<Point> value) {
        values.put(key + "_mm", value.map(p -> List.of(p.xMm(), p.yMm())).orElse(null));
        return this;
    }

    /** Puts positions {@code [[across, along], …]} under {@code key_mm}. */
    public Figures points(String key, List<Point> points) {
        values.put(key + "_mm", points.stream().map(p -> List.of(p.xMm(), p.yMm())).toList());
        return this;
    }

    /** Puts lengths by name under {@code key_mm}. */
    public Figures lengths(String key, Map<String, Length> lengths) {
        Map<String, Object> byName = new LinkedHashMap<>();
        lengths.forEach((name, length) -> byName.put(name, length.millimetres()));
        values.put(key + "_mm", byName);
        return this;
    }

    /** Puts several lengths in order under {@code key_mm}. */
    public Figures lengths(String key, List<Length> lengths) {
        values.put(key + "_mm", lengths.stream().map(Length::millimetres).toList());
        return this;
    }

    /** Puts figures inside. */
    public Figures inside(String key, Figures value) {
        values.put(key, value.asMap());
        return this;
    }

    /** Puts figures inside, or null where there are none. */
    public Figures inside(String key, Optional<Figures> value) {
        values.put(key, value.map(Figures::asMap).orElse(null));
        return this;
    }

    /** Puts a list of figures. */
    public Figures list(String key, List<Figures> items) {
        List<Object> list = new ArrayList<>();
        items.forEach(item -> list.add(item.asMap()));
        values.put(key, list);
        return this;
    }

    /** All that was put, in order: maps, lists, text, numbers, truth values and nulls. */
    public Map<String, Object> asMap() {
        return Collections.unmodifiableMap(values);
    }
}
