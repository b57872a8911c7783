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

    /** Thousandths of the size, and two in a hundred more for what is rounded on the way. */
    private static final double SIZE_PER_UNIT = 1.02 / 1000;

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
        return text.codePoints().mapToDouble(c -> LetterWidths.of(c, face)).sum()
                * SIZE_PER_UNIT
                * sizeMm;
    }
}
