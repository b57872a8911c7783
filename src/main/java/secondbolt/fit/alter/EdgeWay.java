package secondbolt.fit.alter;

import java.util.List;
import java.util.stream.IntStream;
import secondbolt.pattern.piece.NamedEdge;
import secondbolt.pattern.piece.PieceShape;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Point;
import secondbolt.shape.cut.CuttingLine;

/**
 * Which way an edge goes that is moved outward: straight across the piece, or square to itself.
 *
 * <p>Derived: a neighbour grows by the whole of what the edge moves only if it runs that way. Waist
 * and hem of a ring run square to its sides; those of a straight-topped gore run across. An edge
 * that lies nearer to across than to along can only be moved square to itself.
 */
public final class EdgeWay {
    /** The cosine of 30 degrees: nearer than that is along. */
    static final double NEARLY = Math.sqrt(3) / 2;

    /** The cosine of 8 degrees: an edge that leans less is moved across without any harm. */
    private static final double UPRIGHT = 0.99;

    /** The cosine of 45 degrees. */
    private static final double LEANING = Math.sqrt(0.5);

    private final List<EdgeLine> edges;
    private final int way;

    /** The ways of all edges of a drawn piece. */
    public EdgeWay(PieceShape.Drawn drawn) {
        edges = drawn.edges().stream().map(NamedEdge::line).toList();
        way = CuttingLine.way(edges);
    }

    /** Out of the piece, square to the line between the edge's ends, as an arrow of length one. */
    Point square(int number) {
        EdgeLine edge = edges.get(number);
        Point from = edge.start();
        Point to = edge.end();
        double mm = from.distanceMm(to);
        double x = (to.xMm() - from.xMm()) / mm;
        double y = (to.yMm() - from.yMm()) / mm;
        return new Point(way * y, -way * x);
    }

    /** Whether an edge is moved square to itself; only one that leans, see {@link #runsDown}. */
    public boolean isSquare(int number) {
        EdgeLine edge = edges.get(number);
        if (edge.start().distanceMm(edge.end()) < 1) {
            return false;
        }
        Point square = square(number);
        double across = Math.abs(square.xMm());
        if (across > UPRIGHT || across < LEANING) {
            return across < LEANING;
        }
        return bothRun(number, square, new Point(Math.signum(square.xMm()), 0));
    }

    /**
     * Whether the edge runs down its piece, nearer to along than to across, so that a width can
     * begin part of the way down it.
     */
    public boolean runsDown(int number) {
        EdgeLine edge = edges.get(number);
        return edge.start().distanceMm(edge.end()) >= 1
                && Math.abs(square(number).xMm()) >= LEANING;
    }

    /**
     * How many sides of the piece these edges make: one that goes on where another ends, or beyond
     * edges that lie in one line with both, as a pocket opening does, is of the same side.
     *
     * @param names of its edges
     */
    int sides(PieceShape.Drawn drawn, List<String> names) {
        List<Integer> moved =
                IntStream.range(0, edges.size())
                        .filter(i -> names.contains(drawn.edges().get(i).name()))
                        .boxed()
                        .toList();
        int sides = 0;
        for (int i = 0; i < moved.size(); i++) {
            int before = moved.get((i + moved.size() - 1) % moved.size());
            sides += goesOn(before, moved.get(i)) ? 0 : 1;
        }
        return moved.isEmpty() ? 0 : Math.max(1, sides);
    }

    /** Whether one side goes on from an edge to one after it, over those between. */
    private boolean goesOn(int from, int to) {
        int count = edges.size();
        boolean isNext = (from + 1) % count == to;
        for (int i = from; i != to; i = (i + 1) % count) {
            if (!turnsOn(i, (i + 1) % count, isNext)) {
                return false;
            }
        }
        // A cap begins and ends in line with both sides of its sleeve, which run against another.
        Point a = square(from);
        Point b = square(to);
        boolean runAlike = a.xMm() * b.xMm() + a.yMm() * b.yMm() > 0;
        return from != to && (isNext || runAlike);
    }

    /**
     * Whether two edges that meet are one side. A corner that points out of the piece by a third of
     * a turn or less is where two sides meet, as at the point of a godet; one that points in, as
     * under the arm of a sleeve cut in one with the front, is not. Derived.
     */
    private boolean turnsOn(int one, int other, boolean mayPointIn) {
        Point leaves = edges.get(one).directionAt(edges.get(one).lengthMm());
        Point goes = edges.get(other).directionAt(0);
        double turn = way * (leaves.xMm() * goes.yMm() - leaves.yMm() * goes.xMm());
        boolean isInLine = leaves.xMm() * goes.xMm() + leaves.yMm() * goes.yMm() > 0.5;
        return isInLine || (mayPointIn && turn < 0);
    }

    /**
     * Whether what is sewn at both ends runs more nearly square to the edge than across: waist and
     * hem of a ring do. Where one runs across, as the wrist of a sleeve, the piece is measured
     * across, and only moved so it gains the whole amount.
     */
    private boolean bothRun(int number, Point square, Point across) {
        int count = edges.size();
        EdgeLine before = edges.get((number + count - 1) % count);
        EdgeLine after = edges.get((number + 1) % count).reversed();
        boolean isEven = lead(before, square) == lead(before, across);
        return lead(before, square) >= lead(before, across)
                && lead(after, square) >= lead(after, across)
                && !(isEven && lead(after, square) == lead(after, across));
    }

    /** A neighbour that runs quite another way, as an armhole does, tells nothing. */
    private static double lead(EdgeLine towards, Point arrow) {
        Point leads = towards.directionAt(towards.lengthMm());
        double cosine = Math.abs(leads.xMm() * arrow.xMm() + leads.yMm() * arrow.yMm());
        return cosine < LEANING ? LEANING : cosine;
    }
}
