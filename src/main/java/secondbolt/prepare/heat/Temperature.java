package secondbolt.prepare.heat;

/**
 * A temperature in whole degrees.
 *
 * @param celsius degrees Celsius
 */
public record Temperature(int celsius) implements Comparable<Temperature> {
    /** In degrees Fahrenheit, to the nearest whole one. */
    public int fahrenheit() {
        return Math.floorDiv(celsius * 18 + 325, 10);
    }

    /** On both scales, as {@code 150 °C (302 °F)}. */
    public String words() {
        return celsius + " °C (" + fahrenheit() + " °F)";
    }

    @Override
    public int compareTo(Temperature other) {
        return Integer.compare(celsius, other.celsius);
    }
}
