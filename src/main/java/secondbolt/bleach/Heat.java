package secondbolt.bleach;

/** Heat of a bath in both scales. */
final class Heat {
    private Heat() {}

    /** In words, such as {@code 85 °C (185 °F)}; Fahrenheit rounded down, for it is a ceiling. */
    static String words(int celsius) {
        return celsius + " °C (" + (celsius * 9 / 5 + 32) + " °F)";
    }
}
