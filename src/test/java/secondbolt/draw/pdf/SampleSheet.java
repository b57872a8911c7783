package secondbolt.draw.pdf;

import java.util.List;
import secondbolt.draw.Align;
import secondbolt.draw.Drawing;
import secondbolt.draw.Lettering;
import secondbolt.draw.Pen;
import secondbolt.draw.Shade;
import secondbolt.draw.SheetCode;
import secondbolt.draw.Sketch;
import secondbolt.draw.paper.Page;
import secondbolt.draw.paper.Paper;
import secondbolt.draw.paper.PrintCorrection;
import secondbolt.draw.sheet.SheetPages;
import secondbolt.draw.sheet.SheetText;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.shape.Path;
import secondbolt.shape.Point;

/** A front band with buttonholes and words in many scripts, for tests that look at paper. */
final class SampleSheet {
    private SampleSheet() {}

    static Drawing band(double widthMm, double heightMm) {
        Sketch sketch = new Sketch();
        Box frame = new Box(0, 0, widthMm, heightMm);
        sketch.box(frame, Pen.CUT);
        Point middle = frame.middle();
        sketch.line(new Point(middle.xMm(), 0), new Point(middle.xMm(), heightMm), Pen.CENTRE);
        List<String> words =
                List.of(
                        "½ ⅝ ³⁄₁₆ 10.75 cm",
                        "Ελληνικά πατιλέτα",
                        "Застёжка переда",
                        "קו אמצע (3 ס״מ)",
                        "خط الوسط لا 12",
                        "前中心線 왼쪽 きぬ");
        for (int i = 0; i < words.size(); i++) {
            double y = 40 + i * 95;
            if (y < heightMm) {
                hole(sketch, new Point(middle.xMm(), y));
                sketch.label(words.get(i), new Point(4, y + 12), Lettering.plain(5));
                sketch.label(words.get(i), new Point(4, y + 20), Lettering.bold(5));
            }
        }
        sketch.fill(Path.circle(new Point(20, 20), 6), Shade.TINT);
        sketch.label("turned", new Point(100, 60), Lettering.bold(6).turned(90), Align.MIDDLE);
        return sketch.drawing("Front band", frame);
    }

    private static void hole(Sketch sketch, Point centre) {
        sketch.line(centre.moved(0, -8), centre.moved(0, 8), Pen.BOLD);
        sketch.line(centre.moved(-3, -8), centre.moved(3, -8), Pen.PLAIN);
        sketch.line(centre.moved(-3, 8), centre.moved(3, 8), Pen.PLAIN);
    }

    static SheetText text(Drawing drawing, Tape tape) {
        return new SheetText(
                "Porch shirt from a worn linen sheet",
                "Front band, buttonhole side",
                SheetCode.of(drawing),
                List.of(
                        "Press the band flat and lay it face up on the ironing board.",
                        "Lay the sheet on the band so that the upper ends meet, and pin it along"
                                + " the centre line every 5 cm, outside the buttonholes.",
                        "Mark both ends of each buttonhole through the paper with a chalk point."),
                List.of(
                        "DO NOT CUT before the test square measures 100 mm both ways.",
                        "The last hole lies 9 mm above the hem fold: less than the button's"
                                + " radius."),
                List.of(
                        List.of("Button", "From the top", "Hole starts", "Hole ends"),
                        List.of("1", "4 cm (1 9/16 in)", "3.2 cm (1 1/4 in)", "4.8 cm (1 7/8 in)"),
                        List.of("2", "13.5 cm (5 5/16 in)", "12.7 cm (5 in)", "14.3 cm (5 5/8 in)"),
                        List.of("3", "23 cm (9 1/16 in)", "22.2 cm", "23.8 cm"),
                        List.of("4", "32.5 cm (12 13/16 in)", "31.7 cm", "33.3 cm")),
                tape);
    }

    static List<Page> pages(Drawing drawing, Paper paper, PrintCorrection correction, Tape tape) {
        return SheetPages.of(drawing, text(drawing, tape), paper, correction);
    }
}
