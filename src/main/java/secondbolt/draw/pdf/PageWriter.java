package secondbolt.draw.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;
import secondbolt.draw.Align;
import secondbolt.draw.Drawing;
import secondbolt.draw.Lettering;
import secondbolt.draw.Mark;
import secondbolt.draw.Pen;
import secondbolt.draw.paper.Page;
import secondbolt.measure.Length;
import secondbolt.shape.Path;
import secondbolt.shape.Point;

/**
 * Writes one page. Here, and nowhere else, millimetres downwards become points upwards.
 *
 * <p>Every coordinate is worked out in doubles and rounded once, to the five decimals of a point
 * that the library writes: 3.5 millionths of a millimetre.
 */
final class PageWriter implements Mark.Visitor<Void>, Path.Visitor<Void> {
    /** A point is a 72nd of an inch. Source: ISO 32000-1, 8.3.2.3. */
    static final double POINTS_PER_MM = 72 / Length.ofInches(1, 1).millimetres();

    private final PDPageContentStream out;
    private final PdfFonts fonts;
    private final double pointsAcross;
    private final double pointsAlong;
    private final double heightPoints;
    private final Point origin;

    PageWriter(PDPageContentStream out, PdfFonts fonts, Page page) {
        this(
                out,
                fonts,
                page.scaleAcross() * POINTS_PER_MM,
                page.scaleAlong() * POINTS_PER_MM,
                page.heightMm() * POINTS_PER_MM,
                Point.ORIGIN);
    }

    private PageWriter(
            PDPageContentStream out,
            PdfFonts fonts,
            double pointsAcross,
            double pointsAlong,
            double heightPoints,
            Point origin) {
        this.out = out;
        this.fonts = fonts;
        this.pointsAcross = pointsAcross;
        this.pointsAlong = pointsAlong;
        this.heightPoints = heightPoints;
        this.origin = origin;
    }

    void write(Drawing drawing) {
        drawing.marks().forEach(mark -> mark.accept(this));
    }

    @Override
    public Void line(Mark.Line line) {
        return written(
                () -> {
                    pen(line.pen());
                    path(line.path());
                    out.stroke();
                });
    }

    private void pen(Pen pen) throws IOException {
        // A corrected page has two scales, a pen one: their mean is out by a hair's breadth.
        double points = (pointsAcross + pointsAlong) / 2;
        List<Double> dashes = pen.dashesMm();
        float[] pattern = new float[dashes.size()];
        for (int i = 0; i < pattern.length; i++) {
            pattern[i] = (float) (dashes.get(i) * points);
        }
        out.setLineWidth((float) (pen.widthMm() * points));
        out.setLineDashPattern(pattern, 0);
    }

    @Override
    public Void fill(Mark.Fill fill) {
        return written(
                () -> {
                    out.setNonStrokingColor((float) fill.shade().lightness());
                    path(fill.path());
                    out.fill();
                });
    }

    @Override
    public Void label(Mark.Label label) {
        return written(
                () -> {
                    PdfFonts.Line set = fonts.set(label.text(), label.lettering().face());
                    out.setNonStrokingColor(0f);
                    out.beginText();
                    out.setTextMatrix(textMatrix(label, set.widthInSizes()));
                    for (Faces.Run run : set.runs()) {
                        out.setFont(fonts.font(run.font()), 1);
                        out.showText(run.letters());
                    }
                    out.endText();
                });
    }

    /** Text space is one type size to the unit, so that the type is scaled like the drawing. */
    private Matrix textMatrix(Mark.Label label, double widthInSizes) {
        Lettering lettering = label.lettering();
        double turn = Math.toRadians(lettering.turnDegrees());
        double right = Math.cos(turn) * lettering.sizeMm();
        double down = Math.sin(turn) * lettering.sizeMm();
        double back = share(label.align()) * widthInSizes;
        Point start = label.at().moved(-right * back, -down * back);
        return new Matrix(
                (float) (right * pointsAcross),
                (float) (-down * pointsAlong),
                (float) (down * pointsAcross),
                (float) (right * pointsAlong),
                x(start),
                y(start));
    }

    private static double share(Align align) {
        return switch (align) {
            case START -> 0;
            case MIDDLE -> 0.5;
            case END -> 1;
        };
    }

    @Override
    public Void window(Mark.Window window) {
        double across = window.at().xMm() - window.view().leftMm();
        double along = window.at().yMm() - window.view().topMm();
        PageWriter inside =
                new PageWriter(
                        out,
                        fonts,
                        pointsAcross,
                        pointsAlong,
                        heightPoints,
                        origin.moved(across, along));
        return written(
                () -> {
                    out.saveGraphicsState();
                    inside.path(Path.of(window.view()));
                    out.clip();
                    inside.write(window.drawing());
                    out.restoreGraphicsState();
                });
    }

    private void path(Path path) {
        path.steps().forEach(step -> step.accept(this));
    }

    @Override
    public Void move(Path.Move move) {
        return written(() -> out.moveTo(x(move.to()), y(move.to())));
    }

    @Override
    public Void straight(Path.Straight straight) {
        return written(() -> out.lineTo(x(straight.to()), y(straight.to())));
    }

    @Override
    public Void curve(Path.Curve curve) {
        Point leave = curve.leave();
        Point arrive = curve.arrive();
        Point to = curve.to();
        return written(() -> out.curveTo(x(leave), y(leave), x(arrive), y(arrive), x(to), y(to)));
    }

    @Override
    public Void close(Path.Close close) {
        return written(out::closePath);
    }

    private float x(Point point) {
        return (float) ((origin.xMm() + point.xMm()) * pointsAcross);
    }

    private float y(Point point) {
        return (float) (heightPoints - (origin.yMm() + point.yMm()) * pointsAlong);
    }

    private interface Writing {
        void write() throws IOException;
    }

    /** The stream writes to memory, which does not fail. */
    private static Void written(Writing writing) {
        try {
            writing.write();
        } catch (IOException e) {
            throw new UncheckedIOException("PDF page", e);
        }
        return null;
    }
}
