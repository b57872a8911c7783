package secondbolt.draw.sheet;

import java.util.List;
import secondbolt.draw.Drawing;
import secondbolt.draw.Mark;
import secondbolt.draw.Pen;
import secondbolt.draw.Sketch;
import secondbolt.shape.Point;

/** Draws the cutting lines of a drawing small, for a map. */
final class ScaledDown implements Mark.Visitor<Boolean> {
    private static final Pen LINE = new Pen(0.3, List.of());

    private final Sketch sketch;
    private final double scale;
    private final Point origin;

    private ScaledDown(Sketch sketch, double scale, Point origin) {
        this.sketch = sketch;
        this.scale = scale;
        this.origin = origin;
    }

    /**
     * Draws them.
     *
     * @param origin where the drawing's own origin comes to lie
     * @return whether there was one
     */
    static boolean cuttingLines(Drawing drawing, Sketch sketch, double scale, Point origin) {
        return new ScaledDown(sketch, scale, origin).all(drawing);
    }

    private boolean all(Drawing drawing) {
        boolean any = false;
        for (Mark mark : drawing.marks()) {
            any |= mark.accept(this);
        }
        return any;
    }

    @Override
    public Boolean line(Mark.Line line) {
        if (!line.pen().equals(Pen.CUT)) {
            return false;
        }
        sketch.line(line.path().moved(p -> origin.moved(p.xMm() * scale, p.yMm() * scale)), LINE);
        return true;
    }

    @Override
    public Boolean fill(Mark.Fill fill) {
        return false;
    }

    @Override
    public Boolean label(Mark.Label label) {
        return false;
    }

    @Override
    public Boolean window(Mark.Window window) {
        Point inner =
                origin.moved(
                        (window.at().xMm() - window.view().leftMm()) * scale,
                        (window.at().yMm() - window.view().topMm()) * scale);
        return new ScaledDown(sketch, scale, inner).all(window.drawing());
    }
}
