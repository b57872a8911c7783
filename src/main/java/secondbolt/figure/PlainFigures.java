package secondbolt.figure;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import secondbolt.measure.Area;
import secondbolt.measure.ClothWeight;
import secondbolt.measure.Length;
import secondbolt.measure.Mass;
import secondbolt.shape.Point;

/** Turns figures into maps, lists, text, numbers, truth values and nulls. */
final class PlainFigures implements Figure.Visitor<Object> {
    private static final PlainFigures PLAIN = new PlainFigures();

    private PlainFigures() {}

    /** Each under its name and the ending of its unit. */
    static Map<String, Object> of(Figures figures) {
        Map<String, Object> plain = new LinkedHashMap<>();
        figures.entries()
                .forEach(
                        (key, entry) ->
                                plain.put(
                                        key + entry.figure().ending(),
                                        entry.figure().accept(PLAIN)));
        return Collections.unmodifiableMap(plain);
    }

    @Override
    public Object text(Figure.Text text) {
        return text.value().orElse(null);
    }

    @Override
    public Object number(Figure.Amount number) {
        if (number.value().isEmpty()) {
            return null;
        }
        double value = number.value().get();
        boolean isCount = number.ending().isEmpty() && value == Math.rint(value);
        return isCount ? (Object) (int) value : (Object) value;
    }

    @Override
    public Object claim(Figure.Claim claim) {
        return claim.holds();
    }

    @Override
    public Object size(Figure.Size size) {
        return size.value().map(Length::millimetres).orElse(null);
    }

    @Override
    public Object surface(Figure.Surface surface) {
        return surface.value().map(Area::squareMillimetres).orElse(null);
    }

    @Override
    public Object heft(Figure.Heft heft) {
        return heft.value().map(Mass::grams).orElse(null);
    }

    @Override
    public Object clothWeight(Figure.Weight weight) {
        return weight.value().map(ClothWeight::gramsPerSquareMetre).orElse(null);
    }

    @Override
    public Object place(Figure.Place place) {
        return place.value().map(PlainFigures::pair).orElse(null);
    }

    private static List<Double> pair(Point point) {
        return List.of(point.xMm(), point.yMm());
    }

    @Override
    public Object line(Figure.Line line) {
        return line.points().stream().map(PlainFigures::pair).toList();
    }

    @Override
    public Object sizes(Figure.Sizes sizes) {
        return sizes.lengths().stream().map(Length::millimetres).toList();
    }

    @Override
    public Object group(Figure.Group group) {
        if (group.figures().isEmpty()) {
            return null;
        }
        if (group.ending().isEmpty()) {
            return of(group.figures().get());
        }
        // The group's own key says the unit of all inside.
        Map<String, Object> plain = new LinkedHashMap<>();
        group.figures()
                .get()
                .entries()
                .forEach((key, entry) -> plain.put(key, entry.figure().accept(this)));
        return plain;
    }

    @Override
    public Object items(Figure.Items items) {
        return items.items().stream().<Object>map(PlainFigures::of).toList();
    }
}
