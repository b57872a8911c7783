package secondbolt.figure;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import secondbolt.measure.Area;
import secondbolt.measure.ClothWeight;
import secondbolt.measure.Length;
import secondbolt.measure.Mass;
import secondbolt.measure.Share;
import secondbolt.measure.Volume;
import secondbolt.shape.Point;

/**
 * Figures by name, in the order put. A figure may carry what a maker calls it: then she is told
 * when it moves.
 *
 * <p>Gathered once and then only read.
 */
public final class Figures {
    private final Map<String, FigureEntry> entries = new LinkedHashMap<>();

    /** Puts a figure that a maker is not told of by itself. */
    public Figures put(String key, Figure figure) {
        entries.put(key, FigureEntry.of(figure, Optional.empty()));
        return this;
    }

    /** Puts text. */
    public Figures text(String key, String value) {
        return text(key, Optional.of(value));
    }

    /** Puts text, or null where there is none. */
    public Figures text(String key, Optional<String> value) {
        return put(key, new Figure.Text(value));
    }

    /** Puts a count. */
    public Figures count(String key, int value) {
        return put(key, new Figure.Amount(Optional.of((double) value), ""));
    }

    /** Puts a claim that is true or false. */
    public Figures claim(String key, boolean value) {
        return put(key, new Figure.Claim(value));
    }

    /** Puts a length under {@code key_mm}. */
    public Figures length(String key, Length value) {
        return length(key, Optional.of(value));
    }

    /** Puts a length under {@code key_mm}; null if it is open. */
    public Figures length(String key, Optional<Length> value) {
        return put(key, new Figure.Size(value));
    }

    /**
     * Puts a length under {@code key_mm} that a maker is told of when it moves.
     *
     * @param told what she calls it, unlike anything else that is told of the project
     */
    public Figures toldLength(String key, Length value, String told) {
        entries.put(key, FigureEntry.of(new Figure.Size(Optional.of(value)), Optional.of(told)));
        return this;
    }

    /** Puts an area under {@code key_mm2}; null if it is open. */
    public Figures area(String key, Optional<Area> value) {
        return put(key, new Figure.Surface(value));
    }

    /**
     * Puts an area under {@code key_mm2} that a maker is told of when it moves.
     *
     * @param told what she calls it; areas that she calls the same are added up
     */
    public Figures toldArea(String key, Area value, String told) {
        entries.put(key, FigureEntry.of(new Figure.Surface(Optional.of(value)), Optional.of(told)));
        return this;
    }

    /** Puts a mass under {@code key_g}; null if it is open. */
    public Figures mass(String key, Optional<Mass> value) {
        return put(key, new Figure.Heft(value));
    }

    /** Puts a volume under {@code key_ml}, to the millilitre; null if it is open. */
    public Figures volume(String key, Optional<Volume> value) {
        return put(key, new Figure.Amount(value.map(v -> Math.rint(v.millilitres())), "_ml"));
    }

    /** Puts a cloth weight under {@code key_g_per_m2}; null if it is open. */
    public Figures weight(String key, Optional<ClothWeight> value) {
        return put(key, new Figure.Weight(value));
    }

    /**
     * Puts a change in hundredths under {@code key_percent}, minus for less; null if it is open.
     */
    public Figures change(String key, Optional<Share> left) {
        return put(
                key,
                new Figure.Amount(left.map(share -> (share.fraction() - 1) * 100), "_percent"));
    }

    /** Puts a share, 0 to 1, rounded to a thousandth, under {@code key_share}. */
    public Figures share(String key, double share) {
        return put(key, new Figure.Amount(Optional.of(Math.rint(share * 1000) / 1000), "_share"));
    }

    /** Puts a position or a size {@code [across, along]} under {@code key_mm}. */
    public Figures acrossAlong(String key, Optional<Point> value) {
        return put(key, new Figure.Place(value));
    }

    /** Puts positions {@code [[across, along], …]} under {@code key_mm}. */
    public Figures points(String key, List<Point> points) {
        return put(key, new Figure.Line(points));
    }

    /** Puts lengths by name under {@code key_mm}. */
    public Figures lengths(String key, Map<String, Length> lengths) {
        Figures byName = new Figures();
        lengths.forEach(byName::length);
        return put(key, new Figure.Group(Optional.of(byName), "_mm"));
    }

    /** Puts several lengths in order under {@code key_mm}. */
    public Figures lengths(String key, List<Length> lengths) {
        return put(key, new Figure.Sizes(lengths));
    }

    /** Puts figures inside. */
    public Figures inside(String key, Figures value) {
        return inside(key, Optional.of(value));
    }

    /** Puts figures inside, or null where there are none. */
    public Figures inside(String key, Optional<Figures> value) {
        return put(key, new Figure.Group(value, ""));
    }

    /** Puts a list of figures. */
    public Figures list(String key, List<Figures> items) {
        return put(key, new Figure.Items(items));
    }

    /**
     * Puts a list of figures that is made when it is first read. A maker is told of nothing in it.
     *
     * @param items pure
     */
    public Figures listLater(String key, Supplier<List<Figures>> items) {
        entries.put(key, FigureEntry.later(() -> new Figure.Items(items.get())));
        return this;
    }

    /** All that was put, by its name without the ending of its unit, in order. */
    public Map<String, FigureEntry> entries() {
        return Collections.unmodifiableMap(entries);
    }

    /** All that was put, in order: maps, lists, text, numbers, truth values and nulls. */
    public Map<String, Object> asMap() {
        return PlainFigures.of(this);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Figures figures && entries.equals(figures.entries);
    }

    @Override
    public int hashCode() {
        return entries.hashCode();
    }
}
