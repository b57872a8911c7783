package secondbolt.prepare.heat;

import java.util.Arrays;

/**
 * The heat of an iron by the dots on its dial and on a care label.
 *
 * <p>Source: ISO 3758:2012, the greatest heat of the sole plate, as told by a workwear maker's care
 * page and a cloth maker's label page. A later edition of 2023 was not seen; its ceilings may be
 * higher, and these lie below both.
 */
@SuppressWarnings("ImmutableEnumChecker") // a temperature never changes
public enum IronHeat {
    /** One dot. */
    LOW(1, 110),
    /** Two dots. */
    MEDIUM(2, 150),
    /** Three dots. */
    HIGH(3, 200);

    private final int dots;
    private final Temperature atMost;

    IronHeat(int dots, int celsius) {
        this.dots = dots;
        this.atMost = new Temperature(celsius);
    }

    /** The one of so many dots, 1 to 3. */
    public static IronHeat of(int dots) {
        return Arrays.stream(values())
                .filter(heat -> heat.dots == dots)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no iron of " + dots + " dots"));
    }

    /** How many dots. */
    public int dots() {
        return dots;
    }

    /** The greatest heat of the sole plate. */
    public Temperature atMost() {
        return atMost;
    }

    /** As {@code two dots, 150 °C (302 °F)}. */
    public String words() {
        return switch (this) {
                    case LOW -> "one dot, ";
                    case MEDIUM -> "two dots, ";
                    case HIGH -> "three dots, ";
                }
                + atMost.words();
    }
}
