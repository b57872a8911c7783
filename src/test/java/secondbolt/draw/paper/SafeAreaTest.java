package secondbolt.draw.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import secondbolt.draw.Align;
import secondbolt.draw.Drawing;
import secondbolt.draw.Mark;
import secondbolt.draw.Pen;
import secondbolt.draw.SheetCode;
import secondbolt.draw.Sketch;
import secondbolt.draw.sheet.SheetPages;
import secondbolt.draw.sheet.SheetText;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.shape.Point;

/** Nothing on a sheet lies where a printer does not reach. */
class SafeAreaTest {
    /** Source: a quarter inch, widely quoted by printer makers as a margin that is safe. */
    private static final double QUARTER_INCH_MM = 6.35;

    private static Stream<Paper> papers() {
        Stream<Paper> named = Paper.names().stream().map(name -> Paper.named(name).orElseThrow());
        Stream<Paper> custom = Stream.of(custom(210, 210), custom(148, 210), custom(297, 148));
        return Stream.concat(named, custom);
    }

    private static Paper custom(long across, long along) {
        return Paper.custom(
                Length.ofMillimetres(across), Length.ofMillimetres(along), Tape.CENTIMETRE);
    }

    private static Drawing drawing(double width, double height) {
        Box frame = new Box(0, 0, width, height);
        return new Sketch().box(frame, Pen.CUT).drawing("Band", frame);
    }

    private static SheetText text(Drawing drawing, Tape tape, int size) {
        String sentence = "Press the band flat and lay it face up on the ironing board. ";
        List<List<String>> table = new ArrayList<>();
        for (int row = 0; row < 4 * size; row++) {
            table.add(List.of("Button", "From the top edge", "Hole starts", "Hole ends at"));
        }
        return new SheetText(
                "Porch shirt from a worn linen sheet ".repeat(size),
                "Front band, buttonhole side ".repeat(size),
                SheetCode.of(drawing),
                List.of(sentence.repeat(size), sentence),
                List.of("DO NOT CUT yet. " + sentence.repeat(size * 2)),
                table,
                tape);
    }

    @ParameterizedTest
    @MethodSource("papers")
    void keepsEverythingInsideOnAnyPaperAndPrinter(Paper paper) {
        for (double across : new double[] {80, 95, 99.4, 100, 105, 125}) {
            PrintCorrection correction =
                    new PrintCorrection(
                            Length.ofComputedMillimetres(across),
                            Length.ofComputedMillimetres(200 - across < 80 ? 80 : 200 - across));
            for (Tape tape : Tape.values()) {
                Drawing drawing = drawing(500, 700);
                for (int size : new int[] {1, 8}) {
                    SheetPages.of(drawing, text(drawing, tape, size), paper, correction)
                            .forEach(SafeAreaTest::assertSafe);
                }
            }
        }
    }

    private static void assertSafe(Page page) {
        Extent extent = new Extent();
        for (Mark mark : page.drawing().marks()) {
            Box box = mark.accept(extent);
            String where = mark + " on " + page.widthMm() + " by " + page.heightMm();
            double left = box.leftMm() * page.scaleAcross();
            double right = page.widthMm() - box.rightMm() * page.scaleAcross();
            double top = box.topMm() * page.scaleAlong();
            double bottom = page.heightMm() - box.bottomMm() * page.scaleAlong();
            double least = Math.min(Math.min(left, right), Math.min(top, bottom));
            assertTrue(least >= QUARTER_INCH_MM - 1e-6, () -> least + " " + where);
        }
    }

    @ParameterizedTest
    @MethodSource("papers")
    void letsNoWordsRunIntoOthers(Paper paper) {
        for (int size : new int[] {1, 4}) {
            Drawing drawing = drawing(500, 700);
            SheetText text = text(drawing, Tape.CENTIMETRE, size);
            for (Page page : SheetPages.of(drawing, text, paper, PrintCorrection.NONE)) {
                List<Mark.Label> labels = labels(page);
                for (int i = 0; i < labels.size(); i++) {
                    for (int k = 0; k < i; k++) {
                        assertApart(labels.get(i), labels.get(k));
                    }
                }
            }
        }
    }

    private static List<Mark.Label> labels(Page page) {
        List<Mark.Label> labels = new ArrayList<>();
        for (Mark mark : page.drawing().marks()) {
            if (mark instanceof Mark.Label label) {
                labels.add(label);
            }
        }
        return labels;
    }

    private static void assertApart(Mark.Label one, Mark.Label other) {
        Extent extent = new Extent();
        // The layout's own measure of width is a little too wide; capitals and tails are not.
        Box a = one.accept(extent).grown(-0.1);
        Box b = other.accept(extent).grown(-0.1);
        assertTrue(!a.overlaps(b), () -> one + " " + other);
    }

    @Test
    void givesOneSheetNoJoinsAndSaysSo() {
        Drawing drawing = drawing(150, 200);
        List<Page> pages =
                SheetPages.of(
                        drawing, text(drawing, Tape.CENTIMETRE, 1), Paper.A4, PrintCorrection.NONE);
        Page tile = pages.get(pages.size() - 1);
        // The drawing, the heading, and two bars with their words.
        assertEquals(6, tile.drawing().marks().size());
    }

    @Test
    void refusesACorrectionThatCannotBe() {
        Drawing drawing = drawing(150, 200);
        PrintCorrection wrong =
                new PrintCorrection(Length.ofMillimetres(10), Length.ofMillimetres(10));
        assertThrows(
                IllegalArgumentException.class,
                () -> SheetPages.of(drawing, text(drawing, Tape.INCH, 1), Paper.A4, wrong));
    }

    /** Where a mark reaches; for labels by the letters' height of the font, 0.75 up, 0.25 down. */
    private static final class Extent implements Mark.Visitor<Box> {
        @Override
        public Box line(Mark.Line line) {
            return line.accept(MarkBox.OF);
        }

        @Override
        public Box fill(Mark.Fill fill) {
            return fill.accept(MarkBox.OF);
        }

        @Override
        public Box window(Mark.Window window) {
            return window.accept(MarkBox.OF);
        }

        @Override
        public Box label(Mark.Label label) {
            double size = label.lettering().sizeMm();
            double width = label.lettering().widthMm(label.text());
            double start =
                    label.align() == Align.START
                            ? 0
                            : label.align() == Align.END ? -width : -width / 2;
            Point at = label.at();
            if (label.lettering().turnDegrees() == 90) {
                return Box.between(
                        at.moved(-0.25 * size, start), at.moved(0.75 * size, start + width));
            }
            return Box.between(at.moved(start, -0.75 * size), at.moved(start + width, 0.25 * size));
        }
    }
}
