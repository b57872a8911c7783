package secondbolt.fit.alter;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import secondbolt.pattern.piece.NamedEdge;
import secondbolt.pattern.piece.PieceShape;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Path;
import secondbolt.shape.Point;

/**
 * Moves the edges of one name outward and lets the neighbours follow to their other ends, so that
 * straight edges stay straight and curves are blended.
 *
 * <p>An edge moves as one, so that it stays as long as it was: straight across the piece, or square
 * to itself where that is how its neighbours run, as at the side of a ring. There the neighbour is
 * drawn out (or cut off) along itself by the whole amount, as a strip is added to the side of a
 * skirt: derived, since only so its length grows by what the edge moves.
 */
final class WidenedOutline {
    /** The arms of the curve that blends a taper, as a share of it. */
    private static final double BLEND = 1.0 / 3;

    private final PieceShape.Drawn drawn;
    private final WidenShare share;
    private final double topMm;
    private final double middleMm;
    private final EdgeWay ways;

    WidenedOutline(PieceShape.Drawn drawn, WidenShare share) {
        this.drawn = drawn;
        this.share = share;
        this.topMm = drawn.box().topMm();
        this.middleMm = drawn.box().middle().xMm();
        this.ways = new EdgeWay(drawn);
    }

    PieceShape.Drawn edges() {
        List<NamedEdge> moved = new ArrayList<>();
        int count = drawn.edges().size();
        for (int i = 0; i < count; i++) {
            NamedEdge edge = drawn.edges().get(i);
            if (share.edges().contains(edge.name())) {
                moved.add(new NamedEdge(edge.name(), widened(i)));
            } else {
                Shift start = shiftOf((i + count - 1) % count, false);
                Shift end = shiftOf((i + 1) % count, true);
                moved.add(new NamedEdge(edge.name(), following(edge.line(), start, end)));
            }
        }
        return new PieceShape.Drawn(moved);
    }

    /**
     * How a corner moves.
     *
     * @param by this far
     * @param isSquare square to the edge that takes it there, not straight across the piece
     */
    private record Shift(Point by, boolean isSquare) {
        private static final Shift NONE = new Shift(Point.ORIGIN, false);

        double sizeMm() {
            return by.distanceMm(Point.ORIGIN);
        }
    }

    /** How far the start or the end of an edge moves. */
    private Shift shiftOf(int number, boolean atItsStart) {
        NamedEdge edge = drawn.edges().get(number);
        if (!share.edges().contains(edge.name())) {
            return Shift.NONE;
        }
        Point corner = atItsStart ? edge.line().start() : edge.line().end();
        int count = drawn.edges().size();
        int beside = (number + (atItsStart ? count - 1 : 1)) % count;
        if (beside != number && share.edges().contains(drawn.edges().get(beside).name())) {
            return between(number, beside, corner);
        }
        Shift shift = new Shift(times(way(number), shiftMm(corner)), ways.isSquare(number));
        EdgeLine towards = towards(number, atItsStart);
        if (!isAlong(towards, shift) || leads(towards, shift) > 0) {
            return shift;
        }
        // What is cut off a curve ends on the curve, not beside it.
        Point end = towards.at(towards.lengthMm() - shift.sizeMm());
        return new Shift(
                new Point(end.xMm() - corner.xMm(), end.yMm() - corner.yMm()), shift.isSquare());
    }

    /**
     * The corner of two edges that are both moved goes half way between where each would take it:
     * the point of a godet stays, and one side drawn as two edges stays whole.
     */
    private Shift between(int one, int other, Point corner) {
        Point a = way(one);
        Point b = way(other);
        double halfMm = shiftMm(corner) / 2;
        return new Shift(
                new Point((a.xMm() + b.xMm()) * halfMm, (a.yMm() + b.yMm()) * halfMm), false);
    }

    /** The neighbour at one end of an edge, drawn towards it. */
    private EdgeLine towards(int number, boolean atItsStart) {
        int count = drawn.edges().size();
        return atItsStart
                ? drawn.edges().get((number + count - 1) % count).line()
                : drawn.edges().get((number + 1) % count).line().reversed();
    }

    private static double leads(EdgeLine towards, Shift shift) {
        Point leads = towards.directionAt(towards.lengthMm());
        return leads.xMm() * shift.by().xMm() + leads.yMm() * shift.by().yMm();
    }

    /** Which way an edge is moved outward, as an arrow of length one. */
    private Point way(int number) {
        return ways.isSquare(number)
                ? ways.square(number)
                : new Point(outward(drawn.edges().get(number).line()), 0);
    }

    /** Away from the middle of the piece. */
    private double outward(EdgeLine edge) {
        double edgeMm = edge.at(edge.lengthMm() / 2).xMm();
        return edgeMm >= middleMm ? 1 : -1;
    }

    private static Point times(Point arrow, double mm) {
        return new Point(arrow.xMm() * mm, arrow.yMm() * mm);
    }

    private double shiftMm(Point point) {
        return share.each().millimetres() * share.ramp(point.yMm() - topMm);
    }

    private static EdgeLine following(EdgeLine edge, Shift start, Shift end) {
        EdgeLine there = drawnOut(edge, end);
        EdgeLine both = drawnOut(there.reversed(), start).reversed();
        Point startBy = isAlong(edge.reversed(), start) ? Point.ORIGIN : start.by();
        Point endBy = isAlong(edge, end) ? Point.ORIGIN : end.by();
        if (startBy.equals(Point.ORIGIN) && endBy.equals(Point.ORIGIN)) {
            boolean isAsItWas =
                    both.start().equals(edge.start()) && both.steps().equals(edge.steps());
            return isAsItWas ? edge : both;
        }
        double lengthMm = both.lengthMm();
        return both.moved(
                point -> {
                    double t = both.alongMm(point) / lengthMm;
                    return point.moved(
                            (1 - t) * startBy.xMm() + t * endBy.xMm(),
                            (1 - t) * startBy.yMm() + t * endBy.yMm());
                });
    }

    /** Whether the end of an edge moves on, or back, along the edge itself. */
    private static boolean isAlong(EdgeLine edge, Shift end) {
        double mm = end.sizeMm();
        if (!end.isSquare() || mm == 0 || edge.lengthMm() <= 2 * mm) {
            return false;
        }
        return Math.abs(leads(edge, end)) >= mm * EdgeWay.NEARLY;
    }

    /** An edge with its end moved along itself: run on straight, or cut off. */
    private static EdgeLine drawnOut(EdgeLine edge, Shift end) {
        if (!isAlong(edge, end)) {
            return edge;
        }
        Point corner = edge.end();
        Point moved = corner.moved(end.by().xMm(), end.by().yMm());
        if (edge.isStraight()) {
            return EdgeLine.straight(edge.start(), moved);
        }
        if (leads(edge, end) > 0) {
            List<Path.Step> steps = new ArrayList<>(edge.steps());
            steps.add(new Path.Straight(moved));
            return new EdgeLine(edge.start(), steps);
        }
        EdgeLine shorter = edge.part(0, edge.alongMm(moved));
        return shorter.moved(p -> p.equals(shorter.end()) ? moved : p);
    }

    private EdgeLine widened(int number) {
        EdgeLine edge = drawn.edges().get(number).line();
        UnaryOperator<Point> move = move(number);
        List<Double> stops = new ArrayList<>(List.of(0.0));
        stops.addAll(crossings(edge));
        stops.add(edge.lengthMm());
        List<Path.Step> steps = new ArrayList<>();
        Point start = move.apply(edge.start());
        for (int i = 1; i < stops.size(); i++) {
            EdgeLine part = edge.part(stops.get(i - 1), stops.get(i));
            EdgeLine moved = part.moved(move);
            steps.addAll(
                    isTaper(part)
                            ? blended(edge, stops.get(i - 1), stops.get(i), moved)
                            : moved.steps());
        }
        return new EdgeLine(start, steps);
    }

    /** The whole edge moves as one, its ends to where its neighbours end. */
    private UnaryOperator<Point> move(int number) {
        EdgeLine edge = drawn.edges().get(number).line();
        Point way = way(number);
        Point start = shiftOf(number, true).by();
        Point end = shiftOf(number, false).by();
        Point startAs = times(way, shiftMm(edge.start()));
        Point endAs = times(way, shiftMm(edge.end()));
        if (start.equals(startAs) && end.equals(endAs)) {
            return point -> shifted(point, way);
        }
        double lengthMm = edge.lengthMm();
        return point -> {
            double t = edge.alongMm(point) / lengthMm;
            return shifted(point, way)
                    .moved(
                            (1 - t) * (start.xMm() - startAs.xMm()) + t * (end.xMm() - endAs.xMm()),
                            (1 - t) * (start.yMm() - startAs.yMm())
                                    + t * (end.yMm() - endAs.yMm()));
        };
    }

    private Point shifted(Point point, Point way) {
        Point by = times(way, shiftMm(point));
        return point.moved(by.xMm(), by.yMm());
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
