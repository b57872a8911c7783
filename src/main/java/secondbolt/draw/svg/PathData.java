package secondbolt.draw.svg;

import secondbolt.draw.Decimals;
import secondbolt.shape.Path;
import secondbolt.shape.Point;

/** The {@code d} attribute of a path. */
final class PathData implements Path.Visitor<String> {
    private PathData() {}

    static String of(Path path) {
        PathData data = new PathData();
        StringBuilder out = new StringBuilder();
        path.steps().forEach(step -> out.append(step.accept(data)));
        return out.toString();
    }

    @Override
    public String move(Path.Move move) {
        return "M" + point(move.to());
    }

    @Override
    public String straight(Path.Straight straight) {
        return "L" + point(straight.to());
    }

    @Override
    public String curve(Path.Curve curve) {
        return "C" + point(curve.leave()) + " " + point(curve.arrive()) + " " + point(curve.to());
    }

    @Override
    public String close(Path.Close close) {
        return "Z";
    }

    private static String point(Point point) {
        return Decimals.text(point.xMm()) + " " + Decimals.text(point.yMm());
    }
}
