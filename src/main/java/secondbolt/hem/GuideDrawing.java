package secondbolt.hem;

import java.util.ArrayList;
import java.util.List;
import secondbolt.draw.Align;
import secondbolt.draw.Drawing;
import secondbolt.draw.Lettering;
import secondbolt.draw.LineBreaks;
import secondbolt.draw.Pen;
import secondbolt.draw.Shade;
import secondbolt.draw.Sketch;
import secondbolt.hem.guide.CardWords;
import secondbolt.hem.guide.PressingCard;
import secondbolt.hem.turned.HemEdge;
import secondbolt.hem.turned.HemResult;
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

    /** Cards of a hem, as many to a drawing as a page is high. */
    static List<Drawing> of(HemResult result, List<PressingCard> cards, Tape tape) {
        List<Drawing> drawings = new ArrayList<>();
        int next = 0;
        while (next < cards.size()) {
            GuideDrawing drawing = new GuideDrawing(result, tape);
            do {
                drawing.card(cards.get(next));
                next++;
            } while (next < cards.size()
                    && drawing.downMm + BETWEEN_MM + drawing.highMm(cards.get(next)) <= HIGH_MM);
            drawings.add(drawing.drawing());
        }
        return drawings;
    }

    private Drawing drawing() {
        Box frame = new Box(-1, -1, wideMm + 2, downMm + 2);
        return sketch.drawing("Pressing cards, " + result.name(), frame);
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
        return reach[1] - reach[0] + ABOVE_LINES_MM + CardWords.lines(result) * ROW_MM + TOP_MM;
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
        CardWords words = CardWords.of(card, result, tape);
        List<String> headings = words.headings();
        for (int i = 0; i < headings.size(); i++) {
            Lettering lettering = i == 0 ? TITLE : WORDS;
            label(headings.get(i), new Point(leftMm, baseMm), lettering, rightMm);
            baseMm += ROW_MM;
        }
        for (CardWords.Row row : words.rows()) {
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
