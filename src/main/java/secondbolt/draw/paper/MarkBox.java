package secondbolt.draw.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import secondbolt.draw.Mark;
import secondbolt.shape.Box;
import secondbolt.shape.Path;
import secondbolt.shape.Point;

/** A box that a mark does not leave, rather too large than too small. */
final class MarkBox implements Mark.Visitor<Box>, Path.Visitor<List<Point>> {
    static final MarkBox OF = new MarkBox();

    private MarkBox() {}

    @Override
    public Box line(Mark.Line line) {
        return box(line.path()).grown(line.pen().widthMm());
    }

    @Override
    public Box fill(Mark.Fill fill) {
        return box(fill.path());
    }

    /** Round the whole circle that the label could turn in. */
    @Override
    public Box label(Mark.Label label) {
        double reach = label.lettering().widthMm(label.text()) + label.lettering().sizeMm();
        return Box.between(label.at(), label.at()).grown(reach);
    }

    @Override
    public Box window(Mark.Window window) {
        Point at = window.at();
        return Box.between(at, at.moved(window.view().widthMm(), window.view().heightMm()));
    }

    private Box box(Path path) {
        List<Point> points = new ArrayList<>();
        path.steps().forEach(step -> points.addAll(step.accept(this)));
        return Box.between(
                new Point(xs(points).min().orElseThrow(), ys(points).min().orElseThrow()),
                new Point(xs(points).max().orElseThrow(), ys(points).max().orElseThrow()));
    }

    private static DoubleStream xs(List<Point> points) {
        return points.stream().mapToDouble(Point::xMm);
    }

    private static DoubleStream ys(List<Point> points) {
        return points.stream().mapToDouble(Point::yMm);
    }

    @Override
    public List<Point> move(Path.Move move) {
        return List.of(move.to());
    }

    @Override
    public List<Point> straight(Path.Straight straight) {
        return List.of(straight.to());
    }

    /** A cubic stays inside the hull of its ends and control points. */
    @Override
    public List<Point> curve(Path.Curve curve) {
        return List.of(curve.leave(), curve.arrive(), curve.to());
    }

    @Override
    public List<Point> close(Path.Close close) {
        return List.of();
    }
}
