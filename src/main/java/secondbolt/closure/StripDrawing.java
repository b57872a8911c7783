package secondbolt.closure;

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
 * Draws the strips that are laid on both fronts, side by side as worn and seen from outside: the
 * wearer's right front stands on the left, its finished edge toward the other front.
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

    private static final Lettering NUMBER = Lettering.bold(6);
    private static final Lettering DISTANCE = Lettering.plain(4);
    private static final Lettering OTHER = Lettering.plain(3.2);
    private static final Lettering NOTE = Lettering.plain(3.2);
    private static final Lettering SIDE = Lettering.bold(4.4);

    private final ClosureResult result;
    private final Tape tape;
    private final Sketch sketch = new Sketch();
    private final double lengthMm;
    private final double extensionMm;
    private final double holeInwardMm;
    private final double widthMm;

    private StripDrawing(ClosureResult result, Tape tape) {
        this.result = result;
        this.tape = tape;
        this.lengthMm = result.length().millimetres();
        this.extensionMm = result.closure().extension().millimetres();
        this.holeInwardMm =
                isUpright() ? BAR_MM : result.marks().get(0).end().millimetres() + BAR_MM;
        this.widthMm = extensionMm + Math.max(holeInwardMm, buttonRadiusMm()) + LETTERS_MM;
    }

    /** Both strips of a closure. */
    static Drawing of(ClosureResult result, Tape tape) {
        return new StripDrawing(result, tape).draw();
    }

    private Drawing draw() {
        boolean rightHasHoles = result.closure().laps() == Closure.Laps.RIGHT_OVER_LEFT;
        double firstEdgeMm = widthMm;
        double secondEdgeMm = widthMm + BETWEEN_MM;
        strip(new Front("wearer's right front", firstEdgeMm, -1, rightHasHoles));
        strip(new Front("wearer's left front", secondEdgeMm, 1, !rightHasHoles));
        double highMm = TOP_MM + bottomNoteMm() + LINE_MM + 3;
        Box frame = new Box(0, -TOP_MM, 2 * widthMm + BETWEEN_MM, highMm);
        return sketch.drawing("Buttonhole strips, " + result.name(), frame);
    }

    /**
     * One of the two fronts.
     *
     * @param name from the wearer's side
     * @param edgeMm where its finished edge stands on the drawing
     * @param inward 1 if the cloth lies to the right of its edge, -1 if to the left
     * @param hasHoles whether it lies over
     */
    private record Front(String name, double edgeMm, int inward, boolean hasHoles) {
        /** A place so far inside the finished edge. */
        double at(double insideMm) {
            return edgeMm + inward * insideMm;
        }

        /** Text that begins at its point on the right front must end there on the left one. */
        Align align() {
            return inward > 0 ? Align.START : Align.END;
        }
    }

    private void strip(Front front) {
        heading(front);
        lines(front);
        for (ClosureResult.ButtonMark mark : result.marks()) {
            mark(front, mark);
            if ((mark.number() - 1) % lettersEvery() == 0) {
                letters(front, mark);
            }
        }
    }

    /** Where buttons sit closer than their letters are high, only every so many get letters. */
    private int lettersEvery() {
        return result.gap()
                .map(gap -> (int) Math.ceil(LETTERS_HIGH_MM / gap.millimetres()))
                .orElse(1);
    }

    private void heading(Front front) {
        double middleMm = front.at(widthMm / 2);
        sketch.label(
                front.hasHoles() ? "HOLES" : "BUTTONS",
                new Point(middleMm, -TOP_MM + 6),
                SIDE,
                Align.MIDDLE);
        sketch.label(front.name(), new Point(middleMm, -TOP_MM + 11), NOTE, Align.MIDDLE);
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

    private void lines(Front front) {
        Point topEdge = new Point(front.at(0), 0);
        Point topInner = new Point(front.at(widthMm), 0);
        Point bottomEdge = new Point(front.at(0), lengthMm);
        Point bottomInner = new Point(front.at(widthMm), lengthMm);
        sketch.line(topEdge, bottomEdge, Pen.CUT);
        sketch.line(topEdge, topInner, Pen.CUT);
        sketch.line(bottomEdge, bottomInner, Pen.CUT);
        sketch.line(topInner, bottomInner, Pen.FINE);
        double centreMm = front.at(extensionMm);
        if (extensionMm > 0) {
            sketch.line(new Point(centreMm, 0), new Point(centreMm, lengthMm), Pen.CENTRE);
        }
        edgeWords(front);
    }

    /** Says along the lines what they are, where the gaps between the buttons leave room. */
    private void edgeWords(Front front) {
        if (result.gap().isEmpty() || result.gap().get().millimetres() < LEAST_GAP_FOR_WORDS_MM) {
            return;
        }
        double half = result.gap().get().millimetres() / 2;
        Lettering turned = NOTE.turned(front.inward() > 0 ? 90 : -90);
        for (ClosureResult.ButtonMark mark : result.marks().subList(1, result.marks().size())) {
            double alongMm = mark.fromTop().millimetres() - half;
            Point inside = new Point(front.at(2), alongMm);
            sketch.label("this edge on the finished edge", inside, turned, Align.MIDDLE);
            if (extensionMm > LEAST_EXTENSION_FOR_WORDS_MM) {
                Point beside = new Point(front.at(extensionMm + 2), alongMm);
                sketch.label("centre line", beside, turned, Align.MIDDLE);
            }
        }
    }

    private void mark(Front front, ClosureResult.ButtonMark mark) {
        Point centre = new Point(front.at(extensionMm), mark.fromTop().millimetres());
        if (front.hasHoles()) {
            hole(front, mark);
        } else {
            sketch.line(Path.circle(centre, buttonRadiusMm()), Pen.FINE);
        }
        cross(centre);
    }

    private void cross(Point centre) {
        double armMm = 2.5;
        sketch.line(centre.moved(-armMm, 0), centre.moved(armMm, 0), Pen.PLAIN);
        sketch.line(centre.moved(0, -armMm), centre.moved(0, armMm), Pen.PLAIN);
    }

    private void hole(Front front, ClosureResult.ButtonMark mark) {
        Point start = holePoint(front, mark, mark.start().millimetres());
        Point end = holePoint(front, mark, mark.end().millimetres());
        sketch.line(start, end, Pen.BOLD);
        for (Point bar : new Point[] {start, end}) {
            double acrossMm = isUpright() ? BAR_MM : 0;
            double alongMm = BAR_MM - acrossMm;
            sketch.line(bar.moved(-acrossMm, -alongMm), bar.moved(acrossMm, alongMm), Pen.PLAIN);
        }
    }

    private Point holePoint(Front front, ClosureResult.ButtonMark mark, double alongHoleMm) {
        return isUpright()
                ? new Point(front.at(extensionMm), alongHoleMm)
                : new Point(front.at(extensionMm + alongHoleMm), mark.fromTop().millimetres());
    }

    private void letters(Front front, ClosureResult.ButtonMark mark) {
        double besideMm = extensionMm + Math.max(holeInwardMm, buttonRadiusMm()) + 2;
        double baseMm = mark.fromTop().millimetres() + 1.4;
        sketch.label(
                Integer.toString(mark.number()),
                new Point(front.at(besideMm), baseMm + 0.7),
                NUMBER,
                front.align());
        double distanceMm = besideMm + 8;
        sketch.label(
                tape.print(mark.fromTop()),
                new Point(front.at(distanceMm), baseMm - 0.6),
                DISTANCE,
                front.align());
        sketch.label(
                tape.other().print(mark.fromTop()),
                new Point(front.at(distanceMm), baseMm + 3.4),
                OTHER,
                front.align());
    }

    private double buttonRadiusMm() {
        return result.closure().button().across().map(a -> a.millimetres() / 2).orElse(0.5);
    }

    private boolean isUpright() {
        return result.closure().holes() == Closure.Holes.UPRIGHT;
    }
}
