package secondbolt.closure.strip;

import java.util.List;
import secondbolt.closure.fastening.Fastening;
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
import secondbolt.shape.Point;

/**
 * Draws the strips that are laid on both sides, one beside the other as worn and seen from outside,
 * as {@link LapSides} says: each finished edge toward the other side.
 *
 * <p>Zero along is the finished top edge. The finished edges are the strips' outer cut lines, so
 * that paper edge and cloth edge lie together.
 */
public final class StripDrawing {
    private static final double TOP_MM = 24;

    /** From a line's letters to those of the next, and from an edge to the letters beside it. */
    private static final double LINE_MM = 4.5;

    private static final double BETWEEN_MM = 10;
    private static final double LETTERS_HIGH_MM = 8.5;
    private static final double LETTERS_UP_MM = 3;
    private static final double LETTERS_DOWN_MM = 5;
    private static final double LEAST_GAP_FOR_WORDS_MM = 75;
    private static final double LEAST_EXTENSION_FOR_WORDS_MM = 6;

    private static final Pen BULK = new Pen(0.25, List.of(0.8, 0.8));

    private static final Lettering NOTE = Lettering.plain(3.2);
    private static final Lettering HEADING = Lettering.bold(4.4);

    private final ClosureResult result;
    private final Tape tape;
    private final Sketch sketch = new Sketch();
    private final StripSize size;
    private final StripMarks marks;

    private StripDrawing(ClosureResult result) {
        this.result = result;
        this.tape = result.tape();
        this.size = StripSize.of(result);
        this.marks = new StripMarks(result, size, sketch);
    }

    /** Both strips of a closure. */
    public static Drawing of(ClosureResult result) {
        return new StripDrawing(result).draw();
    }

    private Drawing draw() {
        LapSides sides = new LapSides(result.closure().overlap());
        boolean overLeft = sides.overStandsLeft();
        strip(new StripSide(overLeft ? sides.over() : sides.under(), size.widthMm(), -1, overLeft));
        strip(
                new StripSide(
                        overLeft ? sides.under() : sides.over(),
                        size.widthMm() + BETWEEN_MM,
                        1,
                        !overLeft));
        double highMm = TOP_MM + bottomNoteMm() + LINE_MM + 3;
        Box frame = new Box(0, -TOP_MM, 2 * size.widthMm() + BETWEEN_MM, highMm);
        return sketch.drawing("Strips, " + result.name(), frame);
    }

    private void strip(StripSide side) {
        heading(side);
        lines(side);
        result.plan().bulks().forEach(bulk -> bulk(side, bulk));
        for (FastenerMark mark : result.marks()) {
            marks.mark(side, mark);
            if ((mark.number() - 1) % lettersEvery() == 0) {
                marks.letters(side, mark);
            }
        }
    }

    /** Where buttons sit closer than their letters are high, only every so many get letters. */
    private int lettersEvery() {
        return result.gap()
                .map(gap -> (int) Math.ceil(LETTERS_HIGH_MM / gap.millimetres()))
                .orElse(1);
    }

    private void heading(StripSide side) {
        double middleMm = side.at(size.widthMm() / 2);
        sketch.label(
                side.isOver() ? LapSides.overHeading(kind()) : LapSides.underHeading(kind()),
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
        return Math.max(size.lengthMm(), lettersMm) + LINE_MM;
    }

    private void lines(StripSide side) {
        Point topEdge = new Point(side.at(0), 0);
        Point topInner = new Point(side.at(size.widthMm()), 0);
        Point bottomEdge = new Point(side.at(0), size.lengthMm());
        Point bottomInner = new Point(side.at(size.widthMm()), size.lengthMm());
        sketch.line(topEdge, bottomEdge, Pen.CUT);
        sketch.line(topEdge, topInner, Pen.CUT);
        sketch.line(bottomEdge, bottomInner, Pen.CUT);
        sketch.line(topInner, bottomInner, Pen.FINE);
        double centreMm = side.at(size.extensionMm());
        if (size.extensionMm() > 0) {
            sketch.line(new Point(centreMm, 0), new Point(centreMm, size.lengthMm()), Pen.CENTRE);
        }
        edgeWords(side);
    }

    /** Says along the lines what they are, where the gaps between the buttons leave room. */
    private void edgeWords(StripSide side) {
        if (result.gap().isEmpty() || result.gap().get().millimetres() < LEAST_GAP_FOR_WORDS_MM) {
            return;
        }
        double half = result.gap().get().millimetres() / 2;
        Lettering turned = NOTE.turned(side.inward() > 0 ? 90 : -90);
        for (FastenerMark mark : result.marks().subList(1, result.marks().size())) {
            double alongMm = mark.fromTop().millimetres() - half;
            Point inside = new Point(side.at(2), alongMm);
            sketch.label("this edge on the finished edge", inside, turned, Align.MIDDLE);
            if (size.extensionMm() > LEAST_EXTENSION_FOR_WORDS_MM) {
                Point beside = new Point(side.at(size.extensionMm() + 2), alongMm);
                sketch.label("centre line", beside, turned, Align.MIDDLE);
            }
        }
    }

    /** What no hole may be stitched on, so that it is seen where it is on the cloth. */
    private void bulk(StripSide side, PlacketSpot bulk) {
        double downMm = bulk.at().millimetres();
        Point from = new Point(side.at(0), downMm);
        sketch.line(from, new Point(side.at(size.besideMm() - 2), downMm), BULK);
        sketch.label(
                bulk.why(), new Point(side.at(size.besideMm()), downMm + 1), NOTE, side.align());
    }

    private Fastening.Kind kind() {
        return result.closure().fastening().kind();
    }
}
