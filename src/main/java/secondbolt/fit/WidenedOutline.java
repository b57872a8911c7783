package secondbolt.fit;

import java.util.ArrayList;
import java.util.List;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Path;
import secondbolt.shape.Point;

/**
 * Moves the edges of one name outward and lets the neighbours follow to their other ends, so that
 * straight edges stay straight and curves are blended.
 */
final class WidenedOutline {
    /** The arms of the curve that blends a taper, as a share of it. */
    private static final double BLEND = 1.0 / 3;

    private final PieceShape.Drawn drawn;
    private final WidenShare share;
    private final double topMm;
    private final double middleMm;

    WidenedOutline(PieceShape.Drawn drawn, WidenShare share) {
        this.drawn = drawn;
        this.share = share;
        this.topMm = drawn.box().topMm();
        this.middleMm = drawn.box().middle().xMm();
    }

    PieceShape.Drawn edges() {
        List<NamedEdge> moved = new ArrayList<>();
        int count = drawn.edges().size();
        for (int i = 0; i < count; i++) {
            NamedEdge edge = drawn.edges().get(i);
            if (share.edges().contains(edge.name())) {
                moved.add(new NamedEdge(edge.name(), widened(edge.line())));
            } else {
                double startMm = shiftOf(drawn.edges().get((i + count - 1) % count), false);
                double endMm = shiftOf(drawn.edges().get((i + 1) % count), true);
                moved.add(new NamedEdge(edge.name(), following(edge.line(), startMm, endMm)));
            }
        }
        return new PieceShape.Drawn(moved);
    }

    /** How far across the start or the end of an edge moves. */
    private double shiftOf(NamedEdge edge, boolean atItsStart) {
        if (!share.edges().contains(edge.name())) {
            return 0;
        }
        Point point = atItsStart ? edge.line().start() : edge.line().end();
        return outward(edge.line()) * shiftMm(point);
    }

    /** Away from the middle of the piece. */
    private double outward(EdgeLine edge) {
        double edgeMm = edge.at(edge.lengthMm() / 2).xMm();
        return edgeMm >= middleMm ? 1 : -1;
    }

    private double shiftMm(Point point) {
        return share.each().millimetres() * share.ramp(point.yMm() - topMm);
    }

    private static EdgeLine following(EdgeLine edge, double startMm, double endMm) {
        if (startMm == 0 && endMm == 0) {
            return edge;
        }
        double lengthMm = edge.lengthMm();
        return edge.moved(
                point -> {
                    double t = edge.alongMm(point) / lengthMm;
                    return point.moved((1 - t) * startMm + t * endMm, 0);
                });
    }

    private EdgeLine widened(EdgeLine edge) {
        double outward = outward(edge);
        List<Double> stops = new ArrayList<>(List.of(0.0));
        stops.addAll(crossings(edge));
        stops.add(edge.lengthMm());
        List<Path.Step> steps = new ArrayList<>();
        Point start = edge.start().moved(outward * shiftMm(edge.start()), 0);
        for (int i = 1; i < stops.size(); i++) {
            EdgeLine part = edge.part(stops.get(i - 1), stops.get(i));
            EdgeLine moved = part.moved(p -> p.moved(outward * shiftMm(p), 0));
            steps.addAll(
                    isTaper(part)
                            ? blended(edge, stops.get(i - 1), stops.get(i), moved)
                            : moved.steps());
        }
        return new EdgeLine(start, steps);
    }

    /** Where the edge passes the beginning and the end of the taper, in order along it. */
    private List<Double> crossings(EdgeLine edge) {
        List<Double> crossings = new ArrayList<>();
        share.from().ifPresent(y -> addCrossing(edge, topMm + y.millimetres(), crossings));
        share.to().ifPresent(y -> addCrossing(edge, topMm + y.millimetres(), crossings));
        crossings.sort(null);
        return crossings;
    }

    private static void addCrossing(EdgeLine edge, double yMm, List<Double> crossings) {
        double low = 0;
        double high = edge.lengthMm();
        boolean down = edge.start().yMm() < edge.end().yMm();
        double firstMm = Math.min(edge.start().yMm(), edge.end().yMm());
        double lastMm = Math.max(edge.start().yMm(), edge.end().yMm());
        if (yMm <= firstMm + 0.5 || yMm >= lastMm - 0.5) {
            return;
        }
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            boolean before = edge.at(middle).yMm() < yMm == down;
            low = before ? middle : low;
            high = before ? high : middle;
        }
        crossings.add(low);
    }

    private boolean isTaper(EdgeLine part) {
        double ramp = share.ramp(part.at(part.lengthMm() / 2).yMm() - topMm);
        return ramp > 0 && ramp < 1;
    }

    /**
     * One curve over the taper that leaves and arrives in the directions of what lies beside it.
     */
    private static List<Path.Step> blended(
            EdgeLine edge, double fromMm, double toMm, EdgeLine moved) {
        double armMm = moved.start().distanceMm(moved.end()) * BLEND;
        Point leaving = edge.directionAt(fromMm);
        Point arriving = edge.directionAt(toMm);
        return List.of(
                new Path.Curve(
                        moved.start().moved(leaving.xMm() * armMm, leaving.yMm() * armMm),
                        moved.end().moved(-arriving.xMm() * armMm, -arriving.yMm() * armMm),
                        moved.end()));
    }
}
