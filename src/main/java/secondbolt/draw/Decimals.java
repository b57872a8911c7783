package secondbolt.draw;

/** Writes millimetres as text; every renderer and the sheet code write them here. */
public final class Decimals {
    private static final int STEPS_PER_MM = 1000;

    private Decimals() {}

    /**
     * Millimetres to the nearest thousandth, with a point, without trailing zeros, an exponent or a
     * minus before zero, the same in every country.
     *
     * @throws IllegalArgumentException if the number is not finite or passes a thousand kilometres
     */
    public static String text(double mm) {
        if (!(Math.abs(mm) < 1e9)) {
            throw new IllegalArgumentException("mm must be finite, was " + mm);
        }
        long steps = Math.round(mm * STEPS_PER_MM);
        String sign = steps < 0 ? "-" : "";
        long size = Math.abs(steps);
        String whole = sign + size / STEPS_PER_MM;
        String part = Long.toString(STEPS_PER_MM + size % STEPS_PER_MM).substring(1);
        int end = part.length();
        while (end > 0 && part.charAt(end - 1) == '0') {
            end--;
        }
        return end == 0 ? whole : whole + "." + part.substring(0, end);
    }
}
