package secondbolt.draw;

import java.util.List;

/**
 * How a line looks: black, so wide, whole or dashed.
 *
 * @param widthMm its width, above zero
 * @param dashesMm dash, gap, dash, gap …; empty for a whole line
 */
public record Pen(double widthMm, List<Double> dashesMm) {
    /** The line to cut on. */
    public static final Pen CUT = new Pen(0.5, List.of());

    /** A buttonhole, and what must be found at arm's length. */
    public static final Pen BOLD = new Pen(0.7, List.of());

    /** An outline. */
    public static final Pen PLAIN = new Pen(0.25, List.of());

    /** Rulers and marks that are measured on. */
    public static final Pen FINE = new Pen(0.15, List.of());

    /** A centre line. */
    public static final Pen CENTRE = new Pen(0.2, List.of(8.0, 1.5, 1.5, 1.5));

    /** A fold, a sewing line, or what lies underneath. */
    public static final Pen DASHED = new Pen(0.2, List.of(3.0, 2.0));

    /** Checks the width and copies the dashes. */
    public Pen {
        if (!(widthMm > 0)) {
            throw new IllegalArgumentException("widthMm must be above 0, was " + widthMm);
        }
        dashesMm = List.copyOf(dashesMm);
    }
}
