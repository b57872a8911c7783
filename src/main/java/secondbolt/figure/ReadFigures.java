package secondbolt.figure;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.measure.Area;
import secondbolt.measure.Length;
import secondbolt.shape.Point;

/**
 * Turns maps, lists, text, numbers, truth values and nulls, as a file of figures holds them, into
 * figures again. The ending of a key says the unit.
 */
public final class ReadFigures {
    private static final String LENGTH = "_mm";
    private static final String AREA = "_mm2";
    private static final List<String> NUMBERS =
            List.of("_g_per_m2", "_g", "_percent", "_share", "_deg");

    private ReadFigures() {}

    /** All that a map holds; what no figure can be is taken as text. */
    public static Figures of(Map<?, ?> plain) {
        Figures figures = new Figures();
        plain.forEach((key, value) -> put(figures, String.valueOf(key), value));
        return figures;
    }

    private static void put(Figures figures, String key, Object value) {
        if (key.endsWith(AREA)) {
            Optional<Area> area = number(value).map(Area::ofComputedSquareMillimetres);
            figures.area(without(key, AREA), area);
        } else if (key.endsWith(LENGTH)) {
            figures.put(without(key, LENGTH), lengths(value));
        } else {
            String ending = NUMBERS.stream().filter(key::endsWith).findFirst().orElse("");
            figures.put(without(key, ending), plain(value, ending));
        }
    }

    private static String without(String key, String ending) {
        return key.substring(0, key.length() - ending.length());
    }

    private static Figure lengths(Object value) {
        if (value instanceof Map<?, ?> map) {
            Figures byName = new Figures();
            map.forEach((name, inside) -> byName.put(String.valueOf(name), lengths(inside)));
            return new Figure.Group(Optional.of(byName), LENGTH);
        }
        if (!(value instanceof List<?> list)) {
            return new Figure.Size(number(value).map(Length::ofComputedMillimetres));
        }
        if (!list.isEmpty() && list.stream().allMatch(ReadFigures::isPoint)) {
            return new Figure.Line(list.stream().map(ReadFigures::point).toList());
        }
        return new Figure.Sizes(
                list.stream()
                        .map(item -> number(item).orElse(0.0))
                        .map(Length::ofComputedMillimetres)
                        .toList());
    }

    private static boolean isPoint(Object item) {
        return item instanceof List<?> pair
                && pair.size() == 2
                && pair.stream().allMatch(n -> number(n).isPresent());
    }

    private static Point point(Object item) {
        List<?> pair = (List<?>) item;
        return new Point(number(pair.get(0)).orElseThrow(), number(pair.get(1)).orElseThrow());
    }

    private static Figure plain(Object value, String ending) {
        if (value instanceof Map<?, ?> map) {
            return new Figure.Group(Optional.of(of(map)), "");
        }
        if (value instanceof List<?> list && list.stream().allMatch(Map.class::isInstance)) {
            return new Figure.Items(list.stream().map(item -> of((Map<?, ?>) item)).toList());
        }
        if (value instanceof Boolean claim) {
            return new Figure.Claim(claim);
        }
        return number(value)
                .<Figure>map(n -> new Figure.Amount(Optional.of(n), ending))
                .orElseGet(() -> new Figure.Text(Optional.ofNullable(value).map(String::valueOf)));
    }

    private static Optional<Double> number(Object value) {
        return value instanceof BigDecimal number
                ? Optional.of(number.doubleValue()).filter(Double::isFinite)
                : Optional.empty();
    }
}
