package secondbolt.hem.guide;

import secondbolt.draw.Align;
import secondbolt.draw.Drawing;
import secondbolt.draw.Lettering;
import secondbolt.draw.Pen;
import secondbolt.draw.Sketch;
import secondbolt.hem.turned.HemLevel;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.shape.Point;
import secondbolt.worksheet.Convention;

/**
 * Draws the strip that is stood on the floor beside the worn garment: its cut lower edge is the
 * floor, a heavy line the fold, a dashed one where the allowance is trimmed.
 */
public final class LevelDrawing {
    private static final double WIDE_MM = 75;
    private static final double ABOVE_MM = 34;
    private static final double BELOW_MM = 8;

    /** A tick keeps so far from the fold, the trim line and the floor with their words. */
    private static final double CLEAR_MM = 14;

    private static final double TICK_MM = 8;
    private static final Lettering TITLE = Lettering.bold(5.6);
    private static final Lettering LINE = Lettering.bold(5);
    private static final Lettering WORDS = Lettering.plain(4.4);

    /** How far apart the ticks at the sides are, as on a ruler. */
    private static final Convention TICK_EVERY =
            Convention.common(Length.ofInches(2, 1), Length.ofMillimetres(50));

    private final String name;
    private final HemLevel level;
    private final Tape tape;
    private final Sketch sketch = new Sketch();
    private final double foldMm;

    private LevelDrawing(String name, HemLevel level, Tape tape) {
        this.name = name;
        this.level = level;
        this.tape = tape;
        this.foldMm = level.fold().millimetres();
    }

    /**
     * The strip of a hem.
     *
     * @param name the maker's name for it
     */
    public static Drawing of(String name, HemLevel level, Tape tape) {
        return new LevelDrawing(name, level, tape).draw();
    }

    /** Heights grow upward, so the floor lies lowest on the drawing. */
    private Point at(double acrossMm, double heightMm) {
        return new Point(acrossMm, foldMm + ABOVE_MM - heightMm);
    }

    private Drawing draw() {
        double topMm = foldMm + ABOVE_MM;
        sketch.line(at(0, 0), at(WIDE_MM, 0), Pen.CUT);
        sketch.line(at(0, 0), at(0, topMm), Pen.CUT);
        sketch.line(at(WIDE_MM, 0), at(WIDE_MM, topMm), Pen.CUT);
        sketch.line(at(0, topMm), at(WIDE_MM, topMm), Pen.CUT);
        write(name, topMm - 8, TITLE);
        write("stand it on the floor", topMm - 15, WORDS);
        sketch.line(at(0, foldMm), at(WIDE_MM, foldMm), Pen.BOLD);
        write("fold " + tape.printBoth(level.fold()), foldMm + 2.4, LINE);
        level.trim()
                .ifPresent(
                        trim -> {
                            double mm = trim.millimetres();
                            sketch.line(at(0, mm), at(WIDE_MM, mm), Pen.DASHED);
                            write("trim here " + tape.printBoth(trim), mm - 5.4, WORDS);
                        });
        ticks();
        double floorWordsMm = lowestMm() >= CLEAR_MM + 4 ? 3 : -BELOW_MM + 2;
        write("floor: cut along this edge", floorWordsMm, WORDS);
        Box frame = new Box(-1, -1, WIDE_MM + 2, topMm + BELOW_MM + 1);
        return sketch.drawing("Level strip, " + name, frame);
    }

    private double lowestMm() {
        return level.trim().map(Length::millimetres).orElse(foldMm);
    }

    private void write(String text, double heightMm, Lettering lettering) {
        double room = WIDE_MM - 6;
        double share = Math.min(1, room / lettering.widthMm(text));
        Lettering fitting = new Lettering(lettering.sizeMm() * share, lettering.face(), 0);
        sketch.label(text, at(WIDE_MM / 2, heightMm), fitting, Align.MIDDLE);
    }

    /** Short ticks at both sides, so that a strip that was glued askew shows. */
    private void ticks() {
        Length step = TICK_EVERY.on(tape);
        for (int i = 1; step.times(i).millimetres() < lowestMm() - CLEAR_MM; i++) {
            double mm = step.times(i).millimetres();
            sketch.line(at(0, mm), at(TICK_MM, mm), Pen.PLAIN);
            sketch.line(at(WIDE_MM - TICK_MM, mm), at(WIDE_MM, mm), Pen.PLAIN);
            if (mm > CLEAR_MM) {
                write(tape.print(step.times(i)), mm - 1.4, WORDS);
            }
        }
    }
}
