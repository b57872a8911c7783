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
        StringBuilder out = new StringBuilder();
        append(out, mm);
        return out.toString();
    }

    /** The same, written behind what stands there. */
    static void append(StringBuilder out, double mm) {
        if (!(Math.abs(mm) < 1e9)) {
            throw new IllegalArgumentException("mm must be finite, was " + mm);
        }
        long steps = Math.round(mm * STEPS_PER_MM);
        if (steps < 0) {
            out.append('-');
        }
        long size = Math.abs(steps);
        out.append(size / STEPS_PER_MM);
        int rest = (int) (size % STEPS_PER_MM);
        if (rest > 0) {
            out.append('.');
        }
        for (int step = STEPS_PER_MM / 10; rest > 0; step /= 10) {
            out.append((char) ('0' + rest / step));
            rest %= step;
        }
    }
}
