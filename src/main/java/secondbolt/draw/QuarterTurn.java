package secondbolt.draw;

import secondbolt.shape.Box;
import secondbolt.shape.Path;
import secondbolt.shape.Point;

/** Turns a whole drawing clockwise by a quarter, about its origin; its words turn with it. */
public final class QuarterTurn implements Mark.Visitor<Mark> {
    private static final QuarterTurn TURN = new QuarterTurn();
    private static final double QUARTER_DEGREES = 90;

    private QuarterTurn() {}

    /** The drawing turned. */
    public static Drawing of(Drawing drawing) {
        return new Drawing(
                drawing.title(),
                turned(drawing.frame()),
                drawing.marks().stream().map(mark -> mark.accept(TURN)).toList());
    }

    private static Box turned(Box box) {
        return Box.between(
                turned(new Point(box.leftMm(), box.topMm())),
                turned(new Point(box.rightMm(), box.bottomMm())));
    }

    private static Point turned(Point point) {
        // Taken from zero rather than negated, so that zero stays without a sign.
        return new Point(0 - point.yMm(), point.xMm());
    }

    private static Path turned(Path path) {
        return path.moved(QuarterTurn::turned);
    }

    @Override
    public Mark line(Mark.Line line) {
        return new Mark.Line(turned(line.path()), line.pen());
    }

    @Override
    public Mark fill(Mark.Fill fill) {
        return new Mark.Fill(turned(fill.path()), fill.shade());
    }

    @Override
    public Mark label(Mark.Label label) {
        Lettering lettering = label.lettering();
        return new Mark.Label(
                label.text(),
                turned(label.at()),
                lettering.turned(lettering.turnDegrees() + QUARTER_DEGREES),
                label.align());
    }

    @Override
    public Mark window(Mark.Window window) {
        Box view = window.view();
        Point corner = window.at().moved(0, view.heightMm());
        return new Mark.Window(of(window.drawing()), turned(view), turned(corner));
    }
}
