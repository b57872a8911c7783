package secondbolt.draw.sheet;

import java.util.List;
import secondbolt.draw.Align;
import secondbolt.draw.Lettering;
import secondbolt.draw.Pen;
import secondbolt.draw.Sketch;
import secondbolt.draw.paper.PrintCorrection;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.shape.Point;

/** The square by which the maker sees whether the printer kept the scale. */
final class TestSquare {
    /** Its side, from the middle of one line to the middle of the other. */
    static final double SIDE_MM = 100;

    /** Its lines reach over the side by half their width. */
    static final double LINE_MM = Pen.PLAIN.widthMm();

    private static final String HOW =
            "Measure the square both ways, from the middle of one line to the middle of the line"
                    + " across from it.";

    private static final String IF_OFF =
            "Not 100 mm? Print again at 100 % (actual size), or write what it measures into"
                    + " local.yaml.";

    private static final String IF_STILL_OFF =
            "Not 100 mm? Take the printer's figures out of local.yaml, print again and measure"
                    + " afresh.";

    private TestSquare() {}

    static List<String> words(PrintCorrection correction) {
        return correction.isNeeded()
                ? List.of(correction.words(), HOW, IF_STILL_OFF)
                : List.of(HOW, IF_OFF);
    }

    static void draw(Sketch sketch, Point leftTop) {
        double in = LINE_MM / 2;
        Point corner = leftTop.moved(in, in);
        Box square = new Box(corner.xMm(), corner.yMm(), SIDE_MM, SIDE_MM);
        sketch.box(square, Pen.PLAIN);
        Point middle = square.middle();
        String inches = Tape.INCH.print(Length.ofMillimetres(100));
        sketch.label("100 mm", middle, Lettering.bold(7), Align.MIDDLE);
        sketch.label(
                "both ways (" + inches + ")", middle.moved(0, 6), Lettering.plain(4), Align.MIDDLE);
    }
}
