package secondbolt.closure.strip;

import java.util.List;
import secondbolt.closure.placket.PlacketSpot;
import secondbolt.closure.row.ClosureResult;
import secondbolt.closure.row.FastenerMark;
import secondbolt.draw.Align;
import secondbolt.draw.Drawing;
import secondbolt.draw.Lettering;
import secondbolt.draw.Pen;
import secondbolt.draw.Sketch;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.shape.Path;
import secondbolt.shape.Point;

/**
 * A small picture of the side that lies over, laid on its side with the top edge to the left, for
 * the page: which mark is which, not for measuring. So turned, the finished edge of the wearer's
 * right front comes to lie above, that of the left front below.
 */
public final class PlacketPicture {
    private static final double LONG_MM = 150;
    private static final double HIGH_MM = 16;
    private static final double CENTRE_MM = 7;
    private static final double MARGIN_MM = 8;
    private static final double LEAST_LABEL_GAP_MM = 17;
    private static final double LEAST_NUMBER_GAP_MM = 6;

    /** A seam or other bulk that no hole may lie on. */
    private static final Pen BULK = new Pen(0.25, List.of(0.6, 0.6));

    private static final Lettering NUMBER = Lettering.bold(4);
    private static final Lettering DISTANCE = Lettering.plain(3.4);

    private PlacketPicture() {}

    /** A placket, reduced. */
    public static Drawing of(ClosureResult result) {
        Tape tape = result.tape();
        double scale = LONG_MM / result.length().millimetres();
        Sketch sketch = new Sketch();
        Box placket = new Box(MARGIN_MM, 8, LONG_MM, HIGH_MM);
        sketch.box(placket, Pen.PLAIN);
        int inward = edgeIsAbove(result) ? 1 : -1;
        double edgeMm = inward > 0 ? placket.topMm() : placket.bottomMm();
        Point from = new Point(placket.leftMm(), edgeMm + inward * CENTRE_MM);
        sketch.line(from, from.moved(LONG_MM, 0), Pen.CENTRE);
        for (PlacketSpot bulk : result.plan().bulks()) {
            double alongMm = MARGIN_MM + bulk.at().millimetres() * scale;
            sketch.line(
                    new Point(alongMm, placket.topMm()),
                    new Point(alongMm, placket.bottomMm()),
                    BULK);
        }
        double labelledMm = Double.NEGATIVE_INFINITY;
        double numberedMm = Double.NEGATIVE_INFINITY;
        for (FastenerMark mark : result.marks()) {
            double alongMm = MARGIN_MM + mark.fromTop().millimetres() * scale;
            Point centre = new Point(alongMm, from.yMm());
            hole(sketch, result, mark, centre, scale * inward);
            if (alongMm - numberedMm >= LEAST_NUMBER_GAP_MM) {
                sketch.label(
                        Integer.toString(mark.number()),
                        new Point(alongMm, placket.topMm() - 1.6),
                        NUMBER,
                        Align.MIDDLE);
                numberedMm = alongMm;
            }
            if (alongMm - labelledMm >= LEAST_LABEL_GAP_MM) {
                sketch.label(
                        tape.print(mark.fromTop()),
                        new Point(alongMm, placket.bottomMm() + 5),
                        DISTANCE,
                        Align.MIDDLE);
                labelledMm = alongMm;
            }
        }
        Box frame = new Box(0, 0, LONG_MM + 2 * MARGIN_MM, HIGH_MM + 16);
        return sketch.drawing("The placket of " + result.name() + ", top to the left", frame);
    }

    /** Whether the finished edge lies above in the picture, as that of the right front does. */
    public static boolean edgeIsAbove(ClosureResult result) {
        return new LapSides(result.closure().overlap()).overStandsLeft();
    }

    /** One hole; a level one runs away from the edge, down if the scale is above 0. */
    private static void hole(
            Sketch sketch,
            ClosureResult result,
            FastenerMark mark,
            Point centre,
            double inwardScale) {
        double scale = Math.abs(inwardScale);
        double inward = Math.signum(inwardScale);
        double radiusMm =
                result.closure().fastening().width().map(a -> a.millimetres() / 2).orElse(4.0);
        sketch.line(Path.circle(centre, Math.max(0.8, radiusMm * scale)), Pen.FINE);
        if (!result.closure().fastening().hasHoles()) {
            return;
        }
        double shortMm = mark.start().minus(mark.end()).size().millimetres() * scale;
        double reachMm = Math.min(1, shortMm / 4);
        if (mark.isUpright()) {
            sketch.line(centre.moved(-reachMm, 0), centre.moved(shortMm - reachMm, 0), Pen.BOLD);
        } else {
            sketch.line(
                    centre.moved(0, -inward * reachMm),
                    centre.moved(0, inward * (shortMm - reachMm)),
                    Pen.BOLD);
        }
    }
}
