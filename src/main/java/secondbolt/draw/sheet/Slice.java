package secondbolt.draw.sheet;

import java.util.ArrayList;
import java.util.List;
import secondbolt.draw.Align;
import secondbolt.draw.Lettering;
import secondbolt.draw.LineBreaks;
import secondbolt.draw.Mark;
import secondbolt.draw.Sketch;
import secondbolt.shape.Point;

/**
 * A strip of a lead sheet, as wide as the sheet, that is never cut by the end of a page.
 *
 * @param heightMm how much it takes along
 * @param keepsNext whether the next one should stand on the same page
 * @param painter draws it
 */
record Slice(double heightMm, boolean keepsNext, Painter painter) {
    /** Letters stand so high over their base line, as a share of their size. */
    static final double ASCENT = 0.75;

    private static final double LINE_STEP = 1.3;

    /** Draws a slice whose left top corner lies at a point. */
    interface Painter {
        void paint(Sketch sketch, Point leftTop);
    }

    static Slice gap(double heightMm) {
        return new Slice(heightMm, false, (sketch, leftTop) -> {});
    }

    Slice keepingNext() {
        return new Slice(heightMm, true, painter);
    }

    /** One line of text. */
    static Slice line(String text, Lettering lettering, double indentMm) {
        double size = lettering.sizeMm();
        return new Slice(
                size * LINE_STEP,
                false,
                (sketch, leftTop) ->
                        sketch.add(
                                new Mark.Label(
                                        text,
                                        leftTop.moved(indentMm, size),
                                        lettering,
                                        Align.START)));
    }

    /** Text broken into lines; all but the last keep the next. */
    static List<Slice> paragraph(
            String text, Lettering lettering, double indentMm, double widthMm) {
        List<Slice> slices = new ArrayList<>();
        for (String line : LineBreaks.lines(text, lettering, widthMm - indentMm)) {
            slices.add(line(line, lettering, indentMm).keepingNext());
        }
        int last = slices.size() - 1;
        Slice end = slices.get(last);
        slices.set(last, new Slice(end.heightMm(), false, end.painter()));
        return slices;
    }

    /** This with something drawn as well. */
    Slice and(Painter more) {
        return new Slice(
                heightMm,
                keepsNext,
                (sketch, leftTop) -> {
                    painter.paint(sketch, leftTop);
                    more.paint(sketch, leftTop);
                });
    }

    /** Slices one below the other as a single one. */
    static Slice stacked(List<Slice> slices) {
        double height = slices.stream().mapToDouble(Slice::heightMm).sum();
        return new Slice(
                height,
                false,
                (sketch, leftTop) -> {
                    double down = 0;
                    for (Slice slice : slices) {
                        slice.painter().paint(sketch, leftTop.moved(0, down));
                        down += slice.heightMm();
                    }
                });
    }
}
