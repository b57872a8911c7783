package secondbolt.draw.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import secondbolt.draw.Align;
import secondbolt.draw.Lettering;
import secondbolt.draw.Pen;
import secondbolt.draw.Sketch;
import secondbolt.shape.Point;

/** What every sheet begins with: what it is, what must be read first, and what to do. */
final class LeadWords {
    private static final Lettering HEADING = Lettering.bold(4.2);
    private static final Lettering PROJECT = Lettering.plain(4);
    private static final Lettering TITLE = Lettering.bold(7);
    private static final Lettering CODE = Lettering.bold(8);
    private static final Lettering CODE_NAME = Lettering.plain(3);
    private static final Lettering STRONG = Lettering.bold(4.2);
    private static final double CODE_ROOM_MM = 46;
    private static final double NUMBER_ROOM_MM = 7;
    private static final double BOX_PADDING_MM = 2.5;

    /** How closely the words stand. */
    enum Density {
        /** As it reads best. */
        USUAL(3.6, 4),
        /** Where it saves a page. */
        CLOSE(3.2, 2.4);

        private final double sizeMm;
        private final double gapMm;

        Density(double sizeMm, double gapMm) {
            this.sizeMm = sizeMm;
            this.gapMm = gapMm;
        }

        Lettering body() {
            return Lettering.plain(sizeMm);
        }

        double gapMm() {
            return gapMm;
        }
    }

    private final SheetText text;
    private final double widthMm;
    private final Lettering body;
    private final double gapMm;
    private final List<Slice> slices = new ArrayList<>();

    LeadWords(SheetText text, double widthMm, Density density) {
        this.text = text;
        this.widthMm = widthMm;
        this.body = density.body();
        this.gapMm = density.gapMm();
    }

    /** All of it, in slices one below the other. */
    List<Slice> all() {
        slices.clear();
        header();
        warnings();
        instructions();
        return List.copyOf(slices);
    }

    private void header() {
        List<Slice> lines = new ArrayList<>();
        double room = widthMm - CODE_ROOM_MM;
        lines.addAll(Slice.paragraph(text.projectTitle(), PROJECT, 0, room));
        lines.addAll(Slice.paragraph(text.sheetTitle(), TITLE, 0, room));
        Slice first = lines.get(0);
        lines.set(0, first.and(this::code));
        lines.add(Slice.gap(gapMm).and(this::rule));
        addTogether(lines);
    }

    private void code(Sketch sketch, Point leftTop) {
        Point right = leftTop.moved(widthMm, 0);
        sketch.label("code", right.moved(0, CODE_NAME.sizeMm()), CODE_NAME, Align.END);
        sketch.label(text.code().text(), right.moved(0, 11), CODE, Align.END);
    }

    private void rule(Sketch sketch, Point leftTop) {
        Point left = leftTop.moved(0, gapMm / 2);
        sketch.line(left, left.moved(widthMm, 0), Pen.PLAIN);
    }

    private void warnings() {
        for (String warning : text.warnings()) {
            slices.addAll(boxed(warning));
        }
    }

    /** What must be read first, in a box, bold if it forbids something. */
    List<Slice> boxed(String warning) {
        boolean forbids = warning.toUpperCase(Locale.ROOT).contains("DO NOT");
        List<Slice> lines = new ArrayList<>(box(warning, forbids ? STRONG : body));
        lines.add(Slice.gap(gapMm / 2));
        return lines;
    }

    /** The box is drawn line by line, so that even one longer than a page is never cut off. */
    private List<Slice> box(String warning, Lettering lettering) {
        double room = widthMm - BOX_PADDING_MM;
        List<Slice> lines = new ArrayList<>();
        lines.add(Slice.gap(BOX_PADDING_MM / 2));
        lines.addAll(Slice.paragraph(warning, lettering, BOX_PADDING_MM, room));
        lines.add(Slice.gap(BOX_PADDING_MM));
        int last = lines.size() - 1;
        for (int i = 0; i <= last; i++) {
            Slice line = lines.get(i);
            lines.set(i, line.and(side(line.heightMm(), i == 0, i == last)));
        }
        return together(lines);
    }

    private Slice.Painter side(double heightMm, boolean isFirst, boolean isLast) {
        double in = Pen.CUT.widthMm() / 2;
        double over = isFirst || isLast ? in : 0;
        return (sketch, leftTop) -> {
            Point left = leftTop.moved(in, isFirst ? in : 0);
            Point right = left.moved(widthMm - 2 * in, 0);
            double down = heightMm - over;
            if (isFirst) {
                sketch.line(left.moved(-in, 0), right.moved(in, 0), Pen.CUT);
            }
            sketch.line(left, left.moved(0, down), Pen.CUT);
            sketch.line(right, right.moved(0, down), Pen.CUT);
            if (isLast) {
                sketch.line(left.moved(-in, down), right.moved(in, down), Pen.CUT);
            }
        };
    }

    private void instructions() {
        if (text.instructions().isEmpty()) {
            return;
        }
        slices.add(heading("What to do"));
        slices.addAll(numbered(text.instructions()));
        slices.add(Slice.gap(gapMm));
    }

    /** Texts one below the other, each behind its number. */
    List<Slice> numbered(List<String> texts) {
        List<Slice> all = new ArrayList<>();
        for (int i = 0; i < texts.size(); i++) {
            all.addAll(marked((i + 1) + ".", texts.get(i)));
        }
        return all;
    }

    /** A text with a mark before it, such as its number. */
    List<Slice> marked(String mark, String words) {
        List<Slice> lines = Slice.paragraph(words, body, NUMBER_ROOM_MM, widthMm);
        Slice.Painter writesMark =
                (sketch, leftTop) ->
                        sketch.label(mark, leftTop.moved(5, body.sizeMm()), body, Align.END);
        lines.set(0, lines.get(0).and(writesMark));
        return together(lines);
    }

    /** A heading that keeps what follows. */
    static Slice heading(String words) {
        return Slice.stacked(List.of(Slice.line(words, HEADING, 0), Slice.gap(0.6))).keepingNext();
    }

    private void addTogether(List<Slice> lines) {
        slices.addAll(together(lines));
    }

    private static List<Slice> together(List<Slice> lines) {
        List<Slice> all = new ArrayList<>();
        for (Slice line : lines.subList(0, lines.size() - 1)) {
            all.add(line.keepingNext());
        }
        all.add(lines.get(lines.size() - 1));
        return all;
    }
}
