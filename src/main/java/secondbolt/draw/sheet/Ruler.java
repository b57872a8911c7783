package secondbolt.draw.sheet;

import java.util.ArrayList;
import java.util.List;
import secondbolt.draw.Align;
import secondbolt.draw.Lettering;
import secondbolt.draw.Pen;
import secondbolt.draw.Sketch;
import secondbolt.measure.Length;
import secondbolt.shape.Path;
import secondbolt.shape.Point;

/** One line with centimetres above it and inches below it, both from the same end. */
final class Ruler {
    static final double HEIGHT_MM = 16;

    private static final double LINE_AT_MM = 8;
    private static final double INCH_MM = Length.ofInches(1, 1).millimetres();
    private static final int PARTS_OF_AN_INCH = 16;
    private static final Lettering NUMBER = Lettering.plain(3);

    /** For the last number and the unit after it. */
    private static final double END_ROOM_MM = 7;

    private Ruler() {}

    static void draw(Sketch sketch, Point leftTop, double widthMm) {
        Point start = leftTop.moved(1, LINE_AT_MM);
        double room = widthMm - END_ROOM_MM - 1;
        int centimetres = (int) (room / 10);
        int inches = (int) (room / INCH_MM);
        double length = Math.max(centimetres * 10, inches * INCH_MM);
        List<Path.Step> steps = new ArrayList<>(Path.line(start, start.moved(length, 0)).steps());
        for (int i = 0; i <= centimetres * 10; i++) {
            steps.addAll(tick(start.moved(i, 0), -millimetreTick(i)));
        }
        for (int i = 0; i <= inches * PARTS_OF_AN_INCH; i++) {
            steps.addAll(tick(start.moved(i * INCH_MM / PARTS_OF_AN_INCH, 0), inchTick(i)));
        }
        sketch.line(new Path(steps), Pen.FINE);
        numbers(sketch, start.moved(0, -4.6), centimetres, 10, "cm");
        numbers(sketch, start.moved(0, 6.8), inches, INCH_MM, "in");
    }

    private static List<Path.Step> tick(Point foot, double downMm) {
        return Path.line(foot, foot.moved(0, downMm)).steps();
    }

    private static double millimetreTick(int millimetre) {
        if (millimetre % 10 == 0) {
            return 4;
        }
        return millimetre % 5 == 0 ? 3 : 2;
    }

    private static double inchTick(int sixteenth) {
        if (sixteenth % 16 == 0) {
            return 4;
        }
        if (sixteenth % 8 == 0) {
            return 3.4;
        }
        if (sixteenth % 4 == 0) {
            return 2.8;
        }
        return sixteenth % 2 == 0 ? 2.2 : 1.6;
    }

    private static void numbers(Sketch sketch, Point first, int count, double stepMm, String unit) {
        for (int i = 0; i <= count; i++) {
            Point at = first.moved(i * stepMm, 0);
            sketch.label(Integer.toString(i), at, NUMBER, Align.MIDDLE);
        }
        sketch.label(unit, first.moved(count * stepMm + 2.4, 0), NUMBER);
    }
}
