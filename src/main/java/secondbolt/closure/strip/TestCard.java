package secondbolt.closure.strip;

import java.util.List;
import secondbolt.closure.row.ClosureResult;
import secondbolt.draw.Align;
import secondbolt.draw.Drawing;
import secondbolt.draw.Lettering;
import secondbolt.draw.Pen;
import secondbolt.draw.Sketch;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.shape.Point;
import secondbolt.worksheet.Convention;

/** Draws three holes to try on a scrap: as worked out, a little shorter and a little longer. */
public final class TestCard {
    private static final double CARD_MM = 172;
    private static final double ROW_MM = 24;
    private static final double HEAD_MM = 14;
    private static final double BAR_MM = 2;
    private static final double TICK_MM = 4;
    private static final Lettering HEADING = Lettering.bold(4.4);
    private static final Lettering LENGTH = Lettering.bold(5);
    private static final Lettering WORDS = Lettering.plain(3.4);

    /** How much shorter and longer the others are. */
    private static final Convention DIFFERENCE =
            Convention.common(Length.ofInches(1, 16), Length.ofMillimetres(2));

    private TestCard() {}

    /** The holes to try, the shortest first. */
    public static List<Length> holes(Length hole, Tape tape) {
        Length more = DIFFERENCE.on(tape);
        Length shorter = hole.isLongerThan(more) ? hole.minus(more) : hole;
        return List.of(shorter, hole, hole.plus(more));
    }

    /** The card of a closure with holes. */
    public static Drawing of(ClosureResult result) {
        Tape tape = result.tape();
        Sketch sketch = new Sketch();
        Box card = new Box(0, 0, CARD_MM, HEAD_MM + 3 * ROW_MM + 2);
        sketch.box(card, Pen.CUT);
        sketch.label(
                "TEST CARD: lay it on a scrap of the same layers and interfacing",
                new Point(6, 9),
                HEADING);
        double middleMm = HEAD_MM + ROW_MM / 2;
        List<Length> holes = holes(result.hole(), tape);
        for (int i = 0; i < holes.size(); i++) {
            row(sketch, holes.get(i), i, middleMm, tape);
            middleMm += ROW_MM;
        }
        return sketch.drawing("Test card, " + result.name(), card.grown(1));
    }

    private static void row(Sketch sketch, Length hole, int number, double middleMm, Tape tape) {
        double longMm = hole.millimetres();
        double leftMm = 8;
        Point start = new Point(leftMm, middleMm);
        Point end = start.moved(longMm, 0);
        sketch.line(start, end, Pen.BOLD);
        for (Point bar : List.of(start, end)) {
            sketch.line(bar.moved(0, -BAR_MM), bar.moved(0, BAR_MM), Pen.PLAIN);
        }
        double wordsMm = Math.max(leftMm + longMm + 8, 62);
        String name = List.of("shorter", "as worked out", "longer").get(number);
        sketch.label(tape.printSmallBoth(hole), new Point(wordsMm, middleMm - 1), LENGTH);
        sketch.label(name, new Point(wordsMm, middleMm + 5), WORDS);
        double tickMm = CARD_MM - 50;
        for (String words : List.of("too tight", "right", "too loose")) {
            sketch.box(new Box(tickMm, middleMm - TICK_MM / 2, TICK_MM, TICK_MM), Pen.FINE);
            sketch.label(
                    words,
                    new Point(tickMm + TICK_MM / 2, middleMm + TICK_MM + 2.4),
                    Lettering.plain(2.8),
                    Align.MIDDLE);
            tickMm += 17;
        }
    }
}
