package secondbolt.hem.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import secondbolt.draw.Drawing;
import secondbolt.draw.Pen;
import secondbolt.draw.Sketch;
import secondbolt.hem.turned.HemEdge;
import secondbolt.shape.Box;
import secondbolt.shape.Path;
import secondbolt.shape.Point;
import secondbolt.shape.cut.TurnedEdge;

/**
 * A reduced picture of one edge turned up, the piece above: heavy the fold, thin the edge that is
 * turned up with its mirrored ends, dashed the line it lands on. Not for measuring.
 */
public final class FoldPicture {
    private static final double ACROSS_MM = 150;
    private static final double ALONG_MM = 80;
    private static final double MARGIN_MM = 3;

    private final TurnedEdge turned;
    private final Sketch sketch = new Sketch();
    private final UnaryOperator<Point> place;
    private final Box frame;

    private FoldPicture(TurnedEdge turned) {
        this.turned = turned;
        UnaryOperator<Point> level = level();
        List<Point> all = new ArrayList<>(turned.fold().flattened(0.5));
        turned.outer().forEach(all::addAll);
        turned.landing().forEach(all::addAll);
        Box box = Box.between(level.apply(all.get(0)), level.apply(all.get(0)));
        for (Point point : all) {
            Point on = level.apply(point);
            box = box.with(Box.between(on, on));
        }
        Box bounds = box;
        double scale =
                Math.min(
                        0.8,
                        Math.min(
                                ACROSS_MM / Math.max(1, box.widthMm()),
                                ALONG_MM / Math.max(1, box.heightMm())));
        this.place =
                point -> {
                    Point on = level.apply(point);
                    return new Point(
                            MARGIN_MM + (on.xMm() - bounds.leftMm()) * scale,
                            MARGIN_MM + (on.yMm() - bounds.topMm()) * scale);
                };
        this.frame =
                new Box(
                        0,
                        0,
                        box.widthMm() * scale + 2 * MARGIN_MM,
                        box.heightMm() * scale + 2 * MARGIN_MM);
    }

    /**
     * The picture of a drawn edge.
     *
     * @param hem the maker's name for its hem
     */
    public static Drawing of(String hem, HemEdge edge) {
        return new FoldPicture(edge.turned().orElseThrow())
                .draw("How " + edge.edge().words() + " is turned up for " + hem);
    }

    /** Turned so that the piece lies above its fold. */
    private UnaryOperator<Point> level() {
        Point from = turned.way() > 0 ? turned.fold().end() : turned.fold().start();
        Point to = turned.way() > 0 ? turned.fold().start() : turned.fold().end();
        double x = to.xMm() - from.xMm();
        double y = to.yMm() - from.yMm();
        double size = Math.hypot(x, y);
        if (size < 1) {
            return point -> point;
        }
        return point -> {
            double dx = point.xMm() - from.xMm();
            double dy = point.yMm() - from.yMm();
            return new Point((dx * x + dy * y) / size, (dy * x - dx * y) / size);
        };
    }

    private Drawing draw(String title) {
        List<List<Point>> outer = turned.outer();
        List<List<Point>> landing = turned.landing();
        for (int i = 0; i < outer.size(); i++) {
            sketch.line(Path.through(outer.get(i)).moved(place), Pen.PLAIN);
            sketch.line(Path.through(landing.get(i)).moved(place), Pen.DASHED);
        }
        end(outer.get(0).get(0), turned.fold().start(), landing.get(0).get(0));
        List<Point> lastOuter = outer.get(outer.size() - 1);
        List<Point> lastLanding = landing.get(landing.size() - 1);
        end(
                lastOuter.get(lastOuter.size() - 1),
                turned.fold().end(),
                lastLanding.get(lastLanding.size() - 1));
        sketch.line(turned.fold().path().moved(place), Pen.BOLD);
        return sketch.drawing(title, frame);
    }

    private void end(Point outer, Point fold, Point landing) {
        sketch.line(Path.through(List.of(outer, fold)).moved(place), Pen.PLAIN);
        sketch.line(Path.through(List.of(fold, landing)).moved(place), Pen.DASHED);
    }
}
