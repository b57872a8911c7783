package secondbolt.closure.strip;

import java.util.List;
import secondbolt.closure.row.ClosureResult;
import secondbolt.closure.row.FastenerMark;
import secondbolt.draw.Lettering;
import secondbolt.draw.Pen;
import secondbolt.draw.Sketch;
import secondbolt.measure.Tape;
import secondbolt.shape.Path;
import secondbolt.shape.Point;

/** Draws holes and crosses on the strips of a closure. */
final class StripMarks {
    /** A hole that the machine cannot stitch there. */
    private static final Pen BY_HAND = new Pen(0.7, List.of(1.5, 1.0));

    private static final Lettering NUMBER = Lettering.bold(6);
    private static final Lettering DISTANCE = Lettering.plain(4);
    private static final Lettering OTHER = Lettering.plain(3.2);
    private static final Lettering NOTE = Lettering.plain(3.2);

    private final ClosureResult result;
    private final StripSize size;
    private final Sketch sketch;
    private final Tape tape;
    private final double radiusMm;

    /**
     * Draws on a sketch.
     *
     * @param sketch drawn on
     */
    StripMarks(ClosureResult result, StripSize size, Sketch sketch) {
        this.result = result;
        this.size = size;
        this.sketch = sketch;
        this.tape = result.tape();
        this.radiusMm = StripSize.buttonRadiusMm(result);
    }

    /** The mark of one fastener. */
    void mark(StripSide side, FastenerMark mark) {
        double downMm = mark.fromTop().millimetres();
        // Worn, the row that works lies toward the edge of the side above; below it is as far in.
        double out = side.isOver() ? size.rowOutMm() : -size.rowOutMm();
        Point centre = new Point(side.at(size.extensionMm() - out), downMm);
        boolean isHole = side.isOver() && result.closure().fastening().hasHoles();
        if (isHole) {
            hole(side, mark);
        } else {
            sketch.line(Path.circle(centre, radiusMm), Pen.FINE);
        }
        cross(centre);
        if (size.rowOutMm() > 0 && side.isOver()) {
            Point shown = new Point(side.at(size.extensionMm() + size.rowOutMm()), downMm);
            sketch.line(Path.circle(shown, radiusMm), Pen.FINE);
            cross(shown);
        }
    }

    private void cross(Point centre) {
        double armMm = 2.5;
        sketch.line(centre.moved(-armMm, 0), centre.moved(armMm, 0), Pen.PLAIN);
        sketch.line(centre.moved(0, -armMm), centre.moved(0, armMm), Pen.PLAIN);
    }

    private void hole(StripSide side, FastenerMark mark) {
        Point start = holePoint(side, mark, mark.start().millimetres());
        Point end = holePoint(side, mark, mark.end().millimetres());
        sketch.line(start, end, mark.byHand() ? BY_HAND : Pen.BOLD);
        for (Point bar : new Point[] {start, end}) {
            double acrossMm = mark.isUpright() ? StripSize.BAR_MM : 0;
            double alongMm = StripSize.BAR_MM - acrossMm;
            sketch.line(bar.moved(-acrossMm, -alongMm), bar.moved(acrossMm, alongMm), Pen.PLAIN);
        }
    }

    private Point holePoint(StripSide side, FastenerMark mark, double alongHoleMm) {
        double rowMm = size.extensionMm() - size.rowOutMm();
        return mark.isUpright()
                ? new Point(side.at(rowMm), alongHoleMm)
                : new Point(side.at(rowMm + alongHoleMm), mark.fromTop().millimetres());
    }

    /** Its number and distance, and what is said of it, beside it. */
    void letters(StripSide side, FastenerMark mark) {
        double baseMm = mark.fromTop().millimetres() + 1.4;
        sketch.label(
                Integer.toString(mark.number()),
                new Point(side.at(size.besideMm()), baseMm + 0.7),
                NUMBER,
                side.align());
        double distanceMm = size.besideMm() + 8;
        sketch.label(
                tape.print(mark.fromTop()),
                new Point(side.at(distanceMm), baseMm - 0.6),
                DISTANCE,
                side.align());
        sketch.label(
                tape.other().print(mark.fromTop()),
                new Point(side.at(distanceMm), baseMm + 3.4),
                OTHER,
                side.align());
        String words = words(side, mark);
        if (!words.isEmpty()) {
            sketch.label(
                    words, new Point(side.at(size.besideMm()), baseMm + 7.4), NOTE, side.align());
        }
    }

    private static String words(StripSide side, FastenerMark mark) {
        boolean byHand = side.isOver() && mark.byHand();
        return mark.why().orElse("")
                + (byHand && mark.why().isPresent() ? ", " : "")
                + (byHand ? "work by hand" : "");
    }
}
