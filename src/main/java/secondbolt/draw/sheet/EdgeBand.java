package secondbolt.draw.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import secondbolt.draw.Align;
import secondbolt.draw.Lettering;
import secondbolt.draw.LineBreaks;
import secondbolt.draw.Pen;
import secondbolt.draw.Sketch;
import secondbolt.draw.paper.PageArea;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.shape.Path;
import secondbolt.shape.Point;

/** What stands in the band between the drawing and the safe edge, where it covers nothing. */
final class EdgeBand {
    private static final Lettering WORDS = Lettering.plain(2.5);
    private static final double EDGE_GAP_MM = 0.4;
    private static final double ASCENT_MM = 1.9;
    private static final double DESCENT_MM = 0.7;
    private static final double BAR_GAP_MM = 0.8;
    private static final double TICK_MM = 0.9;
    private static final double LONG_TICK_MM = 1.6;
    private static final double WORDS_GAP_MM = 2;
    private static final double QUARTER_INCH_MM = Length.ofInches(1, 4).millimetres();
    private static final String BETWEEN = " · ";

    private final Sketch sketch;
    private final Box safe;
    private final Box live;
    private final boolean isCorrected;

    EdgeBand(Sketch sketch, PageArea area) {
        this.sketch = sketch;
        this.safe = area.safe();
        this.live = area.live();
        this.isCorrected = area.isCorrected();
    }

    /**
     * Above: what sheet this is. The titles give way; the place, the code, and whether it is drawn
     * for a printer that is off never.
     */
    void heading(SheetText text, String place) {
        String rest =
                place
                        + BETWEEN
                        + "code "
                        + text.code()
                        + (isCorrected ? BETWEEN + "corrected" : "");
        double room = live.widthMm() - WORDS.widthMm(BETWEEN + rest);
        String titles = text.projectTitle() + BETWEEN + text.sheetTitle();
        if (WORDS.widthMm(titles) > room) {
            double half = (room - WORDS.widthMm(BETWEEN)) / 2;
            double sheet = Math.min(half, WORDS.widthMm(text.sheetTitle()));
            titles =
                    LineBreaks.shortened(
                                    text.projectTitle(),
                                    WORDS,
                                    room - WORDS.widthMm(BETWEEN) - sheet)
                            + BETWEEN
                            + LineBreaks.shortened(text.sheetTitle(), WORDS, sheet);
        }
        Point at = new Point(live.leftMm(), safe.topMm() + EDGE_GAP_MM + ASCENT_MM);
        sketch.label(titles + BETWEEN + rest, at, WORDS);
    }

    /** Below and on the left: bars to hold a tape to. */
    void bars(Tape tape) {
        Bar across = bar(tape, live.widthMm());
        double lineY = live.bottomMm() + BAR_GAP_MM;
        sketch.line(across.path(new Point(live.leftMm(), lineY), 1, 0), Pen.FINE);
        double baseY = Math.min(lineY + ASCENT_MM, safe.bottomMm() - DESCENT_MM);
        double endX = live.leftMm() + across.lengthMm() + WORDS_GAP_MM;
        sketch.label(across.words(), new Point(endX, baseY), WORDS);

        Bar along = bar(tape, live.heightMm());
        double lineX = live.leftMm() - BAR_GAP_MM;
        sketch.line(along.path(new Point(lineX, live.topMm()), 0, 1), Pen.FINE);
        double baseX = Math.max(lineX - ASCENT_MM, safe.leftMm() + DESCENT_MM);
        double endY = live.topMm() + along.lengthMm() + WORDS_GAP_MM;
        sketch.label(along.words(), new Point(baseX, endY), WORDS.turned(90));
    }

    /** On the right: how to join, for who has the tile in hand and not the lead sheet. */
    void joining(String words) {
        double x = Math.min(live.rightMm() + EDGE_GAP_MM + DESCENT_MM, safe.rightMm() - ASCENT_MM);
        String fitted = LineBreaks.shortened(words, WORDS, live.heightMm());
        Point at = new Point(x, live.middle().yMm());
        sketch.label(fitted, at, WORDS.turned(90), Align.MIDDLE);
    }

    private static Bar bar(Tape tape, double roomMm) {
        return choice(tape).stream()
                .filter(bar -> bar.neededMm() <= roomMm)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no bar fits " + roomMm));
    }

    /** Longest first. */
    private static List<Bar> choice(Tape tape) {
        return switch (tape) {
            case CENTIMETRE ->
                    IntStream.of(20, 15, 10, 5)
                            .mapToObj(cm -> new Bar(10, cm, 5, "this bar: " + cm + " cm"))
                            .toList();
            case INCH ->
                    IntStream.of(8, 6, 4, 2)
                            .mapToObj(
                                    in ->
                                            new Bar(
                                                    QUARTER_INCH_MM,
                                                    in * 4,
                                                    4,
                                                    "this bar: " + in + " in"))
                            .toList();
        };
    }

    /** A line with ticks, and its length in words. */
    private record Bar(double tickMm, int ticks, int longEvery, String words) {
        double lengthMm() {
            return tickMm * ticks;
        }

        double neededMm() {
            return lengthMm() + WORDS_GAP_MM + WORDS.widthMm(words);
        }

        /** From a point across (1, 0) with ticks down, or along (0, 1) with ticks to the left. */
        Path path(Point start, int across, int along) {
            Point end = start.moved(lengthMm() * across, lengthMm() * along);
            List<Path.Step> steps = new ArrayList<>(Path.line(start, end).steps());
            for (int i = 0; i <= ticks; i++) {
                double reach = i % longEvery == 0 ? LONG_TICK_MM : TICK_MM;
                Point foot = start.moved(tickMm * i * across, tickMm * i * along);
                Point tip = foot.moved(-reach * along, reach * across);
                steps.addAll(Path.line(foot, tip).steps());
            }
            return new Path(steps);
        }
    }
}
