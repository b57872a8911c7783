package secondbolt.measure;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The units of one kind of measure, each exactly in the base unit, with a model of the right form.
 *
 * <p>Source: 1 in = 25.4 mm and 1 yd = 0.9144 m exactly, international yard and pound agreement,
 * 1959; 1 lb = 0.45359237 kg, the same; 40 lignes = 1 in, trade use; US gallon 231 cubic inches,
 * NIST Handbook 44, Appendix C (the last from memory).
 */
record UnitTable(String kind, String model, List<Unit> units) {
    static final Exact MM_PER_INCH = Exact.of("25.4");

    static final UnitTable LENGTH =
            new UnitTable(
                    "length",
                    "12 cm, 3 mm, 1.2 m, 5/8 in, 1 3/8\" or 2 1/4 yd",
                    List.of(
                            Unit.of("mm", Exact.of(1), "millimetre", "millimetres", "millimeter"),
                            Unit.of("cm", Exact.of(10), "centimetre", "centimetres", "centimeters"),
                            Unit.of("m", Exact.of(1000), "metre", "metres", "meter", "meters"),
                            Unit.of(
                                    "in",
                                    MM_PER_INCH,
                                    "inch",
                                    "inches",
                                    "\"",
                                    "″",
                                    "”",
                                    "“",
                                    "''",
                                    "′′",
                                    "’’"),
                            Unit.of("ft", inches(12), "foot", "feet", "'", "′", "’"),
                            Unit.of("yd", inches(36), "yds", "yard", "yards"),
                            Unit.of("ligne", inches(1, 40), "lignes", "line", "lines")));

    static final UnitTable AREA =
            new UnitTable(
                    "area",
                    "1.5 m2, 320 cm2 or 2 yd2",
                    List.of(
                            Unit.of("mm2", Exact.of(1), "mm²"),
                            Unit.of("cm2", Exact.of(100), "cm²"),
                            Unit.of("m2", Exact.of(1_000_000), "m²"),
                            Unit.of("in2", square(inches(1)), "in²"),
                            Unit.of("ft2", square(inches(12)), "ft²"),
                            Unit.of("yd2", square(inches(36)), "yd²")));

    static final UnitTable MASS =
            new UnitTable(
                    "mass",
                    "650 g, 1.2 kg or 14 oz",
                    List.of(
                            Unit.of("g", Exact.of(1), "gram", "grams", "gramme", "grammes"),
                            Unit.of("kg", Exact.of(1000), "kilo", "kilos"),
                            Unit.of("oz", ounces(1), "ounce", "ounces"),
                            Unit.of("lb", ounces(16), "lbs", "pound", "pounds")));

    static final UnitTable CLOTH_WEIGHT =
            new UnitTable(
                    "cloth weight",
                    "190 g/m2 or 5.6 oz/yd2",
                    List.of(
                            Unit.of("g/m2", Exact.of(1), "g/m²", "gsm"),
                            Unit.of(
                                    "oz/yd2",
                                    ounces(1).dividedBy(square(Exact.of("0.9144"))),
                                    "oz/yd²",
                                    "oz/sq yd")));

    static final UnitTable VOLUME =
            new UnitTable(
                    "volume",
                    "12 l, 250 ml, 2 tbsp or 1 1/2 gal",
                    List.of(
                            Unit.of("ml", Exact.of(1), "millilitre", "millilitres"),
                            Unit.of("l", Exact.of(1000), "litre", "litres", "liter", "liters"),
                            Unit.of("tsp", gallons(1, 768), "teaspoon", "teaspoons"),
                            Unit.of("tbsp", gallons(1, 256), "tablespoon", "tablespoons"),
                            Unit.of("fl oz", gallons(1, 128), "fluid ounce", "fluid ounces"),
                            Unit.of("cup", gallons(1, 16), "cups"),
                            Unit.of("gal", gallons(1, 1), "gallon", "gallons")));

    static final UnitTable SHARE =
            new UnitTable(
                    "share",
                    "65 %",
                    List.of(Unit.of("%", Exact.of(1, 100), "percent", "per cent")));

    UnitTable {
        units = List.copyOf(units);
    }

    private static Exact inches(long count) {
        return MM_PER_INCH.times(Exact.of(count));
    }

    private static Exact inches(long over, long under) {
        return MM_PER_INCH.times(Exact.of(over, under));
    }

    private static Exact ounces(long count) {
        return Exact.of("28.349523125").times(Exact.of(count));
    }

    /** US liquid measure in millilitres: the gallon is 231 cubic inches. */
    private static Exact gallons(long over, long under) {
        return Exact.of("3785.411784").times(Exact.of(over, under));
    }

    private static Exact square(Exact side) {
        return side.times(side);
    }

    Optional<Unit> find(String spelling) {
        return units.stream().filter(unit -> unit.isSpelt(spelling)).findFirst();
    }

    Unit get(String symbol) {
        return find(symbol).orElseThrow(() -> new IllegalArgumentException("no unit " + symbol));
    }

    /** Whether the unit is larger than the other, as feet are beside inches. */
    static boolean descends(Unit larger, Unit smaller) {
        return larger.inBaseUnits().compareTo(smaller.inBaseUnits()) > 0;
    }

    String symbols() {
        return units.stream().map(Unit::symbol).collect(Collectors.joining(", "));
    }
}
