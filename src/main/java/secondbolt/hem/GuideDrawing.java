package secondbolt.hem;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import secondbolt.draw.Align;
import secondbolt.draw.Drawing;
import secondbolt.draw.Lettering;
import secondbolt.draw.LineBreaks;
import secondbolt.draw.Pen;
import secondbolt.draw.Shade;
import secondbolt.draw.Sketch;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.shape.Path;
import secondbolt.shape.Point;

/**
 * Draws the cards a hem is pressed over, one above the other. The heavy lower edge of each is the
 * fold; a line inside shows where the turned edge must lie. Words stand above all lines, each tied
 * to its line by a leader that passes left of the words below it.
 */
final class GuideDrawing {
    /** What a page of A4 and of Letter has room for, one below the other. */
    static final double HIGH_MM = 240;

    private static final double ROW_MM = 7;
    private static final double BETWEEN_MM = 8;
    private static final double ABOVE_LINES_MM = 4;
    private static final double TOP_MM = 4;
    private static final double INDENT_MM = 5;
    private static final double LEADER_MM = 7;
    private static final double DOT_MM = 0.7;

    private static final Lettering TITLE = Lettering.bold(5.6);
    private static final Lettering WORDS = Lettering.plain(4.6);
    private static final double LEAST_LETTERS_MM = 2.4;

    private final HemResult result;
    private final Tape tape;
    private final Sketch sketch = new Sketch();
    private double downMm;
    private double wideMm;

    private GuideDrawing(HemResult result, Tape tape) {
        this.result = result;
        this.tape = tape;
    }

    /** The cards, as many to a drawing as a page is high. */
    static List<Drawing> of(HemResult result, Tape tape) {
        List<Drawing> drawings = new ArrayList<>();
        List<PressingCard> left = PressingCard.of(result);
        int next = 0;
        while (next < left.size()) {
            GuideDrawing drawing = new GuideDrawing(result, tape);
            do {
                drawing.card(left.get(next));
                next++;
            } while (next < left.size()
                    && drawing.downMm + BETWEEN_MM + drawing.highMm(left.get(next)) <= HIGH_MM);
            drawings.add(drawing.drawing());
        }
        return drawings;
    }

    private Drawing drawing() {
        Box frame = new Box(-1, -1, wideMm + 2, downMm + 2);
        return sketch.drawing("Pressing cards, " + result.name(), frame);
    }

    /**
     * A row of words.
     *
     * @param text what it says
     * @param line the line it is tied to
     */
    private record Row(String text, List<Point> line) {}

    private List<Row> rows(PressingCard card) {
        List<Row> rows = new ArrayList<>();
        List<Length> depths = result.pressing();
        for (int i = depths.size() - 1; i >= 0; i--) {
            rows.add(new Row(words(i), card.inside(depths.get(i))));
        }
        rows.add(new Row("fold: this heavy edge", card.inside(Length.ZERO)));
        return rows;
    }

    private String words(int number) {
        Length depth = result.pressing().get(number);
        String what =
                switch (result.hem().turned()) {
                    case ONCE, BLIND -> "raw edge on this line";
                    case TWICE ->
                            number == 0
                                    ? "1st, raw edge on this line"
                                    : "2nd, folded edge on this line";
                    case NARROW -> "1st and 2nd, edge on this line";
                    case FACED -> "inner edge of the facing on this line";
                };
        return print(depth) + ": " + what;
    }

    private String print(Length length) {
        boolean small = length.isShorterThan(Length.ofMillimetres(10));
        return small ? tape.printSmallBoth(length) : tape.printBoth(length);
    }

    private List<String> headings(PressingCard card) {
        List<String> headings = new ArrayList<>();
        headings.add(
                result.name()
                        + ": "
                        + card.edges().stream()
                                .map(e -> e.edge().toString())
                                .distinct()
                                .collect(Collectors.joining(", ")));
        headings.add("on the wrong side of the cloth, fold down");
        switch (card.kind()) {
            case STRAIGHT -> headings.add("slide it along");
            case ARC ->
                    headings.add(
                            "slide it along: the curve is the same all round, radius "
                                    + tape.printBoth(card.radius().orElseThrow()));
            case CURVE ->
                    headings.add(
                            "left end " + card.ends().get(0) + ", right end " + card.ends().get(1));
        }
        return headings;
    }

    private int rowCount(PressingCard card) {
        return headings(card).size() + result.pressing().size() + 1;
    }

    /** The topmost point of all lines, in the card's own millimetres, and the lowest. */
    private double[] reachMm(PressingCard card) {
        double top = Double.POSITIVE_INFINITY;
        double bottom = Double.NEGATIVE_INFINITY;
        for (List<Point> line : List.of(card.inside(Length.ZERO), card.inside(side()))) {
            for (Point point : line) {
                top = Math.min(top, point.yMm());
                bottom = Math.max(bottom, point.yMm());
            }
        }
        return new double[] {top, bottom};
    }

    private Length side() {
        Length deepest = result.pressing().get(result.pressing().size() - 1);
        return deepest.plus(HemEdge.mm(PressingCard.PAST_MM));
    }

    private double highMm(PressingCard card) {
        double[] reach = reachMm(card);
        return reach[1] - reach[0] + ABOVE_LINES_MM + rowCount(card) * ROW_MM + TOP_MM;
    }

    private void card(PressingCard card) {
        double topMm = downMm == 0 ? 0 : downMm + BETWEEN_MM;
        double[] reach = reachMm(card);
        double high = highMm(card);
        List<Point> side = card.inside(side());
        double leftMm = Math.min(card.fold().start().xMm(), side.get(0).xMm());
        // From the card's own millimetres onto the sheet.
        double acrossMm = -leftMm;
        double alongMm = topMm + high - reach[1];
        outline(card, side, acrossMm, alongMm, topMm);
        for (Length depth : result.pressing()) {
            sketch.line(Path.through(moved(card.inside(depth), acrossMm, alongMm)), Pen.PLAIN);
        }
        write(card, acrossMm, alongMm, topMm);
        downMm = topMm + high;
        double rightMm =
                Math.max(card.fold().end().xMm(), side.get(side.size() - 1).xMm()) + acrossMm;
        wideMm = Math.max(wideMm, rightMm);
    }

    private void outline(
            PressingCard card, List<Point> side, double acrossMm, double alongMm, double topMm) {
        Path fold = card.fold().path().moved(p -> p.moved(acrossMm, alongMm));
        sketch.line(fold, Pen.CUT);
        Point left = card.fold().start().moved(acrossMm, alongMm);
        Point right = card.fold().end().moved(acrossMm, alongMm);
        Point leftSide = side.get(0).moved(acrossMm, alongMm);
        Point rightSide = side.get(side.size() - 1).moved(acrossMm, alongMm);
        sketch.line(
                Path.through(
                        List.of(
                                left,
                                leftSide,
                                new Point(leftSide.xMm(), topMm),
                                new Point(rightSide.xMm(), topMm),
                                rightSide,
                                right)),
                Pen.CUT);
    }

    private static List<Point> moved(List<Point> points, double acrossMm, double alongMm) {
        return points.stream().map(p -> p.moved(acrossMm, alongMm)).toList();
    }

    private void write(PressingCard card, double acrossMm, double alongMm, double topMm) {
        List<Point> side = card.inside(side());
        // Within fold and side alike, so that each leader meets its line.
        Point first = card.fold().start();
        Point last = card.fold().end();
        double leftMm = Math.max(side.get(0).xMm(), first.xMm()) + acrossMm + INDENT_MM;
        double rightMm =
                Math.min(
                        Math.min(side.get(side.size() - 1).xMm(), last.xMm()) + acrossMm - 2,
                        leftMm + PressingCard.WIDE_MM - 2 * INDENT_MM);
        double baseMm = topMm + TOP_MM + 4;
        List<String> headings = headings(card);
        for (int i = 0; i < headings.size(); i++) {
            Lettering lettering = i == 0 ? TITLE : WORDS;
            label(headings.get(i), new Point(leftMm, baseMm), lettering, rightMm);
            baseMm += ROW_MM;
        }
        for (Row row : rows(card)) {
            List<Point> line = moved(row.line(), acrossMm, alongMm);
            Point from = new Point(leftMm, baseMm - 1.4);
            Point to = new Point(leftMm, alongAtMm(line, leftMm));
            sketch.line(from, from.moved(LEADER_MM / 2, 0), Pen.FINE);
            sketch.line(from, to, Pen.FINE);
            sketch.fill(Path.circle(to, DOT_MM), Shade.BLACK);
            label(row.text(), new Point(leftMm + LEADER_MM - 2, baseMm), WORDS, rightMm);
            leftMm += LEADER_MM;
            baseMm += ROW_MM;
        }
    }

    /** Smaller where it would not fit, and shortened where that were too small to read. */
    private void label(String text, Point at, Lettering lettering, double rightMm) {
        double room = Math.max(1, rightMm - at.xMm());
        double share = Math.min(1, room / lettering.widthMm(text));
        Lettering fitting =
                new Lettering(
                        Math.max(LEAST_LETTERS_MM, lettering.sizeMm() * share),
                        lettering.face(),
                        0);
        sketch.label(LineBreaks.shortened(text, fitting, room), at, fitting, Align.START);
    }

    private static double alongAtMm(List<Point> line, double acrossMm) {
        for (int i = 1; i < line.size(); i++) {
            Point a = line.get(i - 1);
            Point b = line.get(i);
            if (a.xMm() <= acrossMm && acrossMm <= b.xMm()) {
                double share = (acrossMm - a.xMm()) / Math.max(1e-9, b.xMm() - a.xMm());
                return a.yMm() + share * (b.yMm() - a.yMm());
            }
        }
        return line.get(acrossMm < line.get(0).xMm() ? 0 : line.size() - 1).yMm();
    }
}
