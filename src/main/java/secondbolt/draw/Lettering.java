package secondbolt.draw;

/**
 * The size, face and turn of a label.
 *
 * @param sizeMm the height of the type's body, above zero; figures stand about two thirds of it
 * @param face its weight
 * @param turnDegrees clockwise as seen on the drawing
 */
public record Lettering(double sizeMm, Face face, double turnDegrees) {
    /** The weights there are. */
    public enum Face {
        /** For running text. */
        REGULAR,
        /** For titles and numbers. */
        BOLD
    }

    /** A share of the size that the width of no common letter's average passes. */
    private static final double AVERAGE_LETTER = 0.54;

    private static final double WIDE_LETTER = 1.0;

    /** Scripts from the Hangul and Han blocks on are as wide as they are high. */
    private static final int FIRST_WIDE_CODE_POINT = 0x1100;

    /** Checks the size. */
    public Lettering {
        if (!(sizeMm > 0)) {
            throw new IllegalArgumentException("sizeMm must be above 0, was " + sizeMm);
        }
    }

    /** Upright text of this size. */
    public static Lettering plain(double sizeMm) {
        return new Lettering(sizeMm, Face.REGULAR, 0);
    }

    /** Upright bold text of this size. */
    public static Lettering bold(double sizeMm) {
        return new Lettering(sizeMm, Face.BOLD, 0);
    }

    /** The same, turned clockwise. */
    public Lettering turned(double degrees) {
        return new Lettering(sizeMm, face, degrees);
    }

    /**
     * About how wide a text comes out, rather too wide than too narrow, so that labels laid out by
     * it do not run into each other. The renderers know the exact widths.
     */
    public double widthMm(String text) {
        return text.codePoints().mapToDouble(c -> isWide(c) ? WIDE_LETTER : AVERAGE_LETTER).sum()
                * sizeMm;
    }

    private static boolean isWide(int codePoint) {
        return codePoint >= FIRST_WIDE_CODE_POINT && !(codePoint >= 0x1E00 && codePoint < 0x2E80);
    }
}
