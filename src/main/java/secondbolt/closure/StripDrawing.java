package secondbolt.closure;

import java.util.List;
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
 * Draws the strips that are laid on both sides, one beside the other as worn and seen from outside,
 * as {@link Sides} says: each finished edge toward the other side.
 *
 * <p>Zero along is the finished top edge. The finished edges are the strips' outer cut lines, so
 * that paper edge and cloth edge lie together.
 */
final class StripDrawing {
    private static final double TOP_MM = 24;

    /** From a line's letters to those of the next, and from an edge to the letters beside it. */
    private static final double LINE_MM = 4.5;

    private static final double BETWEEN_MM = 10;
    private static final double BAR_MM = 2;

    /** Room beside the hole for number and distance. */
    private static final double LETTERS_MM = 31;

    private static final double LETTERS_HIGH_MM = 8.5;
    private static final double LETTERS_UP_MM = 3;
    private static final double LETTERS_DOWN_MM = 5;
    private static final double LEAST_GAP_FOR_WORDS_MM = 75;
    private static final double LEAST_EXTENSION_FOR_WORDS_MM = 6;

    /** A hole that the machine cannot stitch there. */
    private static final Pen BY_HAND = new Pen(0.7, List.of(1.5, 1.0));

    private static final Pen BULK = new Pen(0.25, List.of(0.8, 0.8));

    private static final Lettering NUMBER = Lettering.bold(6);
    private static final Lettering DISTANCE = Lettering.plain(4);
    private static final Lettering OTHER = Lettering.plain(3.2);
    private static final Lettering NOTE = Lettering.plain(3.2);
    private static final Lettering HEADING = Lettering.bold(4.4);

    private final ClosureResult result;
    private final Tape tape;
    private final Sketch sketch = new Sketch();
    private final double lengthMm;
    private final double extensionMm;
    private final double rowOutMm;

    /** From the finished edge to the letters beside the marks. */
    private final double besideMm;

    private final double widthMm;

    private StripDrawing(ClosureResult result, Tape tape) {
        this.result = result;
        this.tape = tape;
        this.lengthMm = result.length().millimetres();
        this.extensionMm = result.closure().extension().millimetres();
        this.rowOutMm = result.closure().overlap().rowOut().millimetres();
        this.besideMm = extensionMm + besideCentreMm() + 2;
        this.widthMm = besideMm - 2 + LETTERS_MM;
    }

    /** Both strips of a closure. */
    static Drawing of(ClosureResult result, Tape tape) {
        return new StripDrawing(result, tape).draw();
    }

    private Drawing draw() {
        Sides sides = new Sides(result.closure().overlap());
        boolean overLeft = sides.overStandsLeft();
        strip(new Side(overLeft ? sides.over() : sides.under(), widthMm, -1, overLeft));
        strip(
                new Side(
                        overLeft ? sides.under() : sides.over(),
                        widthMm + BETWEEN_MM,
                        1,
                        !overLeft));
        double highMm = TOP_MM + bottomNoteMm() + LINE_MM + 3;
        Box frame = new Box(0, -TOP_MM, 2 * widthMm + BETWEEN_MM, highMm);
        return sketch.drawing("Strips, " + result.name(), frame);
    }

    /** How far marks reach inward from the centre line. */
    private double besideCentreMm() {
        double inward = buttonRadiusMm() + rowOutMm;
        for (ClosureResult.Mark mark : result.marks()) {
            double hole = mark.isUpright() ? BAR_MM : mark.end().millimetres() - rowOutMm + BAR_MM;
            inward = hasHoles() ? Math.max(inward, hole) : inward;
        }
        return inward;
    }

    /**
     * One of the two sides.
     *
     * @param name from the wearer's side
     * @param edgeMm where its finished edge stands on the drawing
     * @param inward 1 if the cloth lies to the right of its edge, -1 if to the left
     * @param isOver whether it lies over
     */
    private record Side(String name, double edgeMm, int inward, boolean isOver) {
        /** A place so far inside the finished edge. */
        double at(double insideMm) {
            return edgeMm + inward * insideMm;
        }

        /** Text that begins at its point on the right front must end there on the left one. */
        Align align() {
            return inward > 0 ? Align.START : Align.END;
        }
    }

    private void strip(Side side) {
        heading(side);
        lines(side);
        result.layout().bulks().forEach(bulk -> bulk(side, bulk));
        for (ClosureResult.Mark mark : result.marks()) {
            mark(side, mark);
            if ((mark.number() - 1) % lettersEvery() == 0) {
                letters(side, mark);
            }
        }
    }

    /** Where buttons sit closer than their letters are high, only every so many get letters. */
    private int lettersEvery() {
        return result.gap()
                .map(gap -> (int) Math.ceil(LETTERS_HIGH_MM / gap.millimetres()))
                .orElse(1);
    }

    private void heading(Side side) {
        double middleMm = side.at(widthMm / 2);
        sketch.label(
                side.isOver() ? Sides.overHeading(kind()) : Sides.underHeading(kind()),
                new Point(middleMm, -TOP_MM + 6),
                HEADING,
                Align.MIDDLE);
        sketch.label(side.name(), new Point(middleMm, -TOP_MM + 11), NOTE, Align.MIDDLE);
        sketch.label(
                "seen from outside, as worn",
                new Point(middleMm, -TOP_MM + 15.5),
                NOTE,
                Align.MIDDLE);
        sketch.label("finished top edge", new Point(middleMm, topNoteMm()), NOTE, Align.MIDDLE);
        sketch.label(
                "finished bottom edge", new Point(middleMm, bottomNoteMm()), NOTE, Align.MIDDLE);
        sketch.label(
                tape.printBoth(result.length()),
                new Point(middleMm, bottomNoteMm() + LINE_MM),
                NOTE,
                Align.MIDDLE);
    }

    /** Close above the top edge, or above the letters of a first button that is closer still. */
    private double topNoteMm() {
        double lettersMm = result.marks().get(0).fromTop().millimetres() - LETTERS_UP_MM;
        return Math.max(-4, Math.min(-2, lettersMm));
    }

    private double bottomNoteMm() {
        int last = result.marks().size() - 1;
        double lettersMm = result.marks().get(last).fromTop().millimetres() + LETTERS_DOWN_MM;
        return Math.max(lengthMm, lettersMm) + LINE_MM;
    }

    private void lines(Side side) {
        Point topEdge = new Point(side.at(0), 0);
        Point topInner = new Point(side.at(widthMm), 0);
        Point bottomEdge = new Point(side.at(0), lengthMm);
        Point bottomInner = new Point(side.at(widthMm), lengthMm);
        sketch.line(topEdge, bottomEdge, Pen.CUT);
        sketch.line(topEdge, topInner, Pen.CUT);
        sketch.line(bottomEdge, bottomInner, Pen.CUT);
        sketch.line(topInner, bottomInner, Pen.FINE);
        double centreMm = side.at(extensionMm);
        if (extensionMm > 0) {
            sketch.line(new Point(centreMm, 0), new Point(centreMm, lengthMm), Pen.CENTRE);
        }
        edgeWords(side);
    }

    /** Says along the lines what they are, where the gaps between the buttons leave room. */
    private void edgeWords(Side side) {
        if (result.gap().isEmpty() || result.gap().get().millimetres() < LEAST_GAP_FOR_WORDS_MM) {
            return;
        }
        double half = result.gap().get().millimetres() / 2;
        Lettering turned = NOTE.turned(side.inward() > 0 ? 90 : -90);
        for (ClosureResult.Mark mark : result.marks().subList(1, result.marks().size())) {
            double alongMm = mark.fromTop().millimetres() - half;
            Point inside = new Point(side.at(2), alongMm);
            sketch.label("this edge on the finished edge", inside, turned, Align.MIDDLE);
            if (extensionMm > LEAST_EXTENSION_FOR_WORDS_MM) {
                Point beside = new Point(side.at(extensionMm + 2), alongMm);
                sketch.label("centre line", beside, turned, Align.MIDDLE);
            }
        }
    }

    /** What no hole may be stitched on, so that it is seen where it is on the cloth. */
    private void bulk(Side side, Layout.Spot bulk) {
        double downMm = bulk.at().millimetres();
        Point from = new Point(side.at(0), downMm);
        sketch.line(from, new Point(side.at(besideMm - 2), downMm), BULK);
        sketch.label(bulk.why(), new Point(side.at(besideMm), downMm + 1), NOTE, side.align());
    }

    private void mark(Side side, ClosureResult.Mark mark) {
        double downMm = mark.fromTop().millimetres();
        // Worn, the row that works lies toward the edge of the side above; below it is as far in.
        double out = side.isOver() ? rowOutMm : -rowOutMm;
        Point centre = new Point(side.at(extensionMm - out), downMm);
        boolean isHole = side.isOver() && hasHoles();
        if (isHole) {
            hole(side, mark);
        } else {
            sketch.line(Path.circle(centre, buttonRadiusMm()), Pen.FINE);
        }
        cross(centre);
        if (rowOutMm > 0 && side.isOver()) {
            Point shown = new Point(side.at(extensionMm + rowOutMm), downMm);
            sketch.line(Path.circle(shown, buttonRadiusMm()), Pen.FINE);
            cross(shown);
        }
    }

    private void cross(Point centre) {
        double armMm = 2.5;
        sketch.line(centre.moved(-armMm, 0), centre.moved(armMm, 0), Pen.PLAIN);
        sketch.line(centre.moved(0, -armMm), centre.moved(0, armMm), Pen.PLAIN);
    }

    private void hole(Side side, ClosureResult.Mark mark) {
        Point start = holePoint(side, mark, mark.start().millimetres());
        Point end = holePoint(side, mark, mark.end().millimetres());
        sketch.line(start, end, mark.byHand() ? BY_HAND : Pen.BOLD);
        for (Point bar : new Point[] {start, end}) {
            double acrossMm = mark.isUpright() ? BAR_MM : 0;
            double alongMm = BAR_MM - acrossMm;
            sketch.line(bar.moved(-acrossMm, -alongMm), bar.moved(acrossMm, alongMm), Pen.PLAIN);
        }
    }

    private Point holePoint(Side side, ClosureResult.Mark mark, double alongHoleMm) {
        double rowMm = extensionMm - rowOutMm;
        return mark.isUpright()
                ? new Point(side.at(rowMm), alongHoleMm)
                : new Point(side.at(rowMm + alongHoleMm), mark.fromTop().millimetres());
    }

    private void letters(Side side, ClosureResult.Mark mark) {
        double baseMm = mark.fromTop().millimetres() + 1.4;
        sketch.label(
                Integer.toString(mark.number()),
                new Point(side.at(besideMm), baseMm + 0.7),
                NUMBER,
                side.align());
        double distanceMm = besideMm + 8;
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
            sketch.label(words, new Point(side.at(besideMm), baseMm + 7.4), NOTE, side.align());
        }
    }

    private static String words(Side side, ClosureResult.Mark mark) {
        boolean byHand = side.isOver() && mark.byHand();
        return mark.why().orElse("")
                + (byHand && mark.why().isPresent() ? ", " : "")
                + (byHand ? "work by hand" : "");
    }

    private double buttonRadiusMm() {
        return result.closure().fastening().width().map(a -> a.millimetres() / 2).orElse(0.5);
    }

    private boolean hasHoles() {
        return result.closure().fastening().hasHoles();
    }

    private Fastening.Kind kind() {
        return result.closure().fastening().kind();
    }
}
