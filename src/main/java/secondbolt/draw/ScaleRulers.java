package secondbolt.draw;

import java.util.List;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.shape.Point;

/** Rulers along two sides of what is drawn to a scale, and that scale. */
public final class ScaleRulers {
    private static final List<Integer> SCALES =
            List.of(1, 2, 5, 8, 10, 12, 15, 20, 25, 30, 40, 50, 60, 80, 100, 125, 150);
    private static final Lettering SMALL = Lettering.plain(3);
    private static final double RULER_GAP_MM = 3;
    private static final double LONG_TICK_MM = 2.4;
    private static final double SHORT_TICK_MM = 1.2;
    private static final double NUMBER_GAP_MM = 3.2;

    private ScaleRulers() {}

    /** The largest picture that is so wide and so high at most, as a scale in whole numbers. */
    public static int scale(Box box, double widthMm, double heightMm) {
        return SCALES.stream()
                .filter(s -> box.widthMm() / s <= widthMm && box.heightMm() / s <= heightMm)
                .findFirst()
                .orElse(SCALES.get(SCALES.size() - 1));
    }

    /** What a picture with these rulers says of itself. */
    public static String words(Tape tape, int scale) {
        return "Drawn 1 : "
                + scale
                + ", rulers in "
                + (tape == Tape.INCH ? "inches" : tape.symbol());
    }

    /**
     * Draws both rulers, outside the left top corner of a picture.
     *
     * @param sketch takes them
     * @param box of the picture
     * @param scale the picture is drawn 1 : scale
     */
    public static void draw(LabelledSketch sketch, Box box, Tape tape, int scale) {
        Length unit = tape == Tape.INCH ? Length.ofInches(1, 1) : Length.ofMillimetres(10);
        List<Integer> steps =
                tape == Tape.INCH ? List.of(1, 2, 4, 8, 12, 24) : List.of(1, 2, 5, 10, 20, 50);
        double unitMm = unit.millimetres() / scale;
        // A number of three figures needs some 6 mm, and air.
        int numbered = steps.stream().filter(s -> s * unitMm >= 9).findFirst().orElse(50);
        int ticked = steps.stream().filter(s -> s * unitMm >= 1.2).findFirst().orElse(50);
        double edge = -RULER_GAP_MM;
        sketch.marks().line(new Point(0, edge), new Point(box.rightMm(), edge), Pen.FINE);
        sketch.marks().line(new Point(edge, 0), new Point(edge, box.bottomMm()), Pen.FINE);
        for (int i = 0; i * unitMm <= box.rightMm() + 1e-6; i += ticked) {
            tick(sketch, i, new Point(i * unitMm, edge), new Point(0, -1), i % numbered == 0);
        }
        for (int i = 0; i * unitMm <= box.bottomMm() + 1e-6; i += ticked) {
            tick(sketch, i, new Point(edge, i * unitMm), new Point(-1, 0), i % numbered == 0);
        }
    }

    private static void tick(
            LabelledSketch sketch, int number, Point at, Point out, boolean numbered) {
        double longMm = numbered ? LONG_TICK_MM : SHORT_TICK_MM;
        sketch.marks().line(at, at.moved(out.xMm() * longMm, out.yMm() * longMm), Pen.FINE);
        if (numbered) {
            boolean above = out.yMm() < 0;
            sketch.outside(
                    Integer.toString(number),
                    above ? at.moved(0, -NUMBER_GAP_MM) : at.moved(-NUMBER_GAP_MM, 1),
                    SMALL,
                    above ? Align.MIDDLE : Align.END);
        }
    }
}
