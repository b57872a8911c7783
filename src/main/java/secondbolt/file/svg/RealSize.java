package secondbolt.file.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import secondbolt.measure.Length;

/**
 * How large a drawing is: from its own units to millimetres.
 *
 * <p>Source: CSS Values and Units Module Level 3, section 6.2: 1 in = 25.4 mm = 96 px = 72 pt = 6
 * pc; SVG 1.1 (Second Edition), sections 7.7 and 7.8 for viewBox and preserveAspectRatio.
 */
final class RealSize {
    private static final String REMEDY =
            "a real size, such as width=\"30cm\" height=\"40cm\" (mm, cm, in, pt, pc or px)";

    private static final Pattern SIZE =
            Pattern.compile("\\s*+([0-9.eE+-]++)\\s*+([A-Za-z%]*+)\\s*+");

    /** Across and along may differ by so much of their scale: 0.1 mm on half a metre. */
    private static final double SAME_SCALE = 2e-4;

    private static final double INCH_MM = Length.ofInches(1, 1).millimetres();

    private static final Map<String, Double> UNITS_MM =
            Map.of(
                    "mm",
                    1.0,
                    "cm",
                    10.0,
                    "in",
                    INCH_MM,
                    "pt",
                    INCH_MM / 72,
                    "pc",
                    INCH_MM / 6,
                    "px",
                    INCH_MM / 96);

    private RealSize() {}

    /**
     * From the units of the drawing to millimetres.
     *
     * @param viewBox its value, if there is one; without it a unit is a px
     */
    static Affine of(Optional<String> width, Optional<String> height, Optional<String> viewBox)
            throws Slip {
        double acrossMm = sizeMm(width, "width");
        double alongMm = sizeMm(height, "height");
        double px = INCH_MM / 96;
        return viewBox.isEmpty()
                ? new Affine(px, 0, 0, px, 0, 0)
                : scaled(acrossMm, alongMm, viewBox.get());
    }

    private static double sizeMm(Optional<String> size, String name) throws Slip {
        if (size.isEmpty()) {
            throw new Slip(0, "a drawing without a real size: no " + name, REMEDY);
        }
        Matcher matcher = SIZE.matcher(size.get());
        Double unit = matcher.matches() ? UNITS_MM.get(matcher.group(2)) : null;
        if (unit == null) {
            throw new Slip(
                    0, "a drawing without a real size: " + name + " `" + size.get() + "`", REMEDY);
        }
        double mm = new Cursor(matcher.group(1)).number() * unit;
        if (!(mm > 0)) {
            throw new Slip(0, "a drawing of no size: " + name + " `" + size.get() + "`", REMEDY);
        }
        if (mm > Bounds.FARTHEST_MM) {
            throw new Slip(
                    0, "a drawing of more than 5 m: " + name + " `" + size.get() + "`", REMEDY);
        }
        return mm;
    }

    private static Affine scaled(double acrossMm, double alongMm, String viewBox) throws Slip {
        Cursor cursor = new Cursor(viewBox);
        cursor.passBlanks();
        List<Double> box = new ArrayList<>();
        while (box.size() < 4) {
            box.add(cursor.number());
        }
        if (!cursor.isAtEnd() || !(box.get(2) > 0) || !(box.get(3) > 0)) {
            throw new Slip(
                    0,
                    "the viewBox `" + viewBox + "`",
                    "left, top, width and height, the last two above zero");
        }
        double across = acrossMm / box.get(2);
        double along = alongMm / box.get(3);
        if (Math.abs(across - along) > SAME_SCALE * Math.max(across, along)) {
            throw new Slip(
                    0,
                    "a drawing scaled differently across and along: its viewBox is "
                            + viewBox
                            + ", its size another shape",
                    "width and height in the same proportion as the viewBox");
        }
        double scale = Math.min(across, along);
        return new Affine(scale, 0, 0, scale, -scale * box.get(0), -scale * box.get(1));
    }
}
