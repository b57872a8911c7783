package secondbolt.draw.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.geom.GeneralPath;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.junit.jupiter.api.Test;
import secondbolt.draw.Drawing;
import secondbolt.draw.Mark;
import secondbolt.draw.Pen;
import secondbolt.draw.Sketch;
import secondbolt.draw.paper.Page;
import secondbolt.shape.Box;
import secondbolt.shape.Path;
import secondbolt.shape.Point;

/** The paths read back from the document, in millimetres of paper from the left top corner. */
class DrawnPathsTest {
    /** Source: ISO 32000-1, 8.3.2.3: a point is a 72nd of an inch; the inch is 25.4 mm. */
    private static final double MM_PER_POINT = 25.4 / 72;

    /** Five decimals of a point, and floats of up to 842. */
    private static final double TOLERANCE_MM = 5e-5;

    private static List<Box> stroked(double scaleAcross, double scaleAlong, Sketch sketch)
            throws IOException {
        Drawing drawing = sketch.drawing("", new Box(0, 0, 210, 297));
        Page page = new Page(210, 297, scaleAcross, scaleAlong, drawing);
        byte[] bytes = PdfSheet.render("paths", "en", List.of(page));
        try (PDDocument document = Loader.loadPDF(bytes)) {
            Reader reader = new Reader(document.getPage(0));
            reader.processPage(document.getPage(0));
            return reader.boxes;
        }
    }

    private static void assertBox(Box expected, Box found) {
        assertEquals(expected.leftMm(), found.leftMm(), TOLERANCE_MM);
        assertEquals(expected.topMm(), found.topMm(), TOLERANCE_MM);
        assertEquals(expected.widthMm(), found.widthMm(), TOLERANCE_MM);
        assertEquals(expected.heightMm(), found.heightMm(), TOLERANCE_MM);
    }

    @Test
    void drawsEveryMillimetreWhereItIs() throws IOException {
        Box square = new Box(10.125, 90, 100, 100);
        Sketch sketch = new Sketch().box(square, Pen.PLAIN);
        assertBox(square, stroked(1, 1, sketch).get(0));
    }

    /** 100 ÷ 99.4 = 100.603622 mm, worked by hand. */
    @Test
    void drawsACorrectedPageLargerInEachDirection() throws IOException {
        Sketch sketch = new Sketch().box(new Box(10, 20, 100, 100), Pen.PLAIN);
        Box found = stroked(100 / 99.4, 1, sketch).get(0);
        assertEquals(100.603622, found.widthMm(), TOLERANCE_MM);
        assertEquals(10.0603622, found.leftMm(), TOLERANCE_MM);
        assertBox(new Box(found.leftMm(), 20, found.widthMm(), 100), found);
    }

    @Test
    void movesAWindowToItsPlace() throws IOException {
        Drawing inner =
                new Sketch()
                        .line(Path.circle(new Point(1500, 900), 12.5), Pen.CUT)
                        .drawing("", new Box(0, 0, 2000, 1000));
        Mark window = new Mark.Window(inner, new Box(1400, 800, 150, 150), new Point(20, 30));
        Box found = stroked(1, 1, new Sketch().add(window)).get(0);
        assertBox(new Box(107.5, 117.5, 25, 25), found);
    }

    /** Gathers the bounds of what is stroked. */
    private static final class Reader extends PDFGraphicsStreamEngine {
        private final List<Box> boxes = new ArrayList<>();
        private final GeneralPath path = new GeneralPath();
        private final double heightPoints;

        Reader(PDPage page) {
            super(page);
            heightPoints = 297 / MM_PER_POINT;
        }

        private void finish() {
            path.reset();
        }

        @Override
        public void strokePath() {
            Rectangle2D r = path.getBounds2D();
            boxes.add(
                    new Box(
                            r.getMinX() * MM_PER_POINT,
                            (heightPoints - r.getMaxY()) * MM_PER_POINT,
                            r.getWidth() * MM_PER_POINT,
                            r.getHeight() * MM_PER_POINT));
            finish();
        }

        @Override
        public void moveTo(float x, float y) {
            path.moveTo(x, y);
        }

        @Override
        public void lineTo(float x, float y) {
            path.lineTo(x, y);
        }

        @Override
        public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
            path.curveTo(x1, y1, x2, y2, x3, y3);
        }

        @Override
        public Point2D getCurrentPoint() {
            return path.getCurrentPoint();
        }

        @Override
        public void closePath() {
            path.closePath();
        }

        @Override
        public void endPath() {
            finish();
        }

        @Override
        public void fillPath(int windingRule) {
            finish();
        }

        @Override
        public void fillAndStrokePath(int windingRule) {
            strokePath();
        }

        @Override
        public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
            throw new IllegalStateException("no rectangles are written");
        }

        @Override
        public void drawImage(PDImage image) {
            throw new IllegalStateException("no pictures are written");
        }

        @Override
        public void clip(int windingRule) {
            // The window's edge; what it hides is still read.
        }

        @Override
        public void shadingFill(COSName name) {
            throw new IllegalStateException("no shadings are written");
        }
    }
}
