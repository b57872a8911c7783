package secondbolt.hem.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.hem.turned.HemEdge;
import secondbolt.hem.turned.HemResult;
import secondbolt.measure.Length;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Point;
import secondbolt.shape.cut.Parallel;
import secondbolt.shape.cut.TurnedEdge;

/**
 * The shape of a card a hem is pressed over: its lower edge is the fold, from left to right, the
 * piece above it.
 *
 * @param edges whose hem it is for
 * @param fold in millimetres of the card
 * @param kind how it is used along the hem
 * @param ends what lies at its left and its right end; empty where it repeats
 */
public record PressingCard(List<HemEdge> edges, EdgeLine fold, Kind kind, List<String> ends) {
    /** Not wider than a page of either common paper. */
    public static final double WIDE_MM = 180;

    /** An upright side begins so far past the deepest line. */
    public static final double PAST_MM = 3;

    /** An arc card goes no farther round than this to either side. */
    private static final double HALF_RADIANS = Math.PI / 3;

    /** A curve that turns farther is parted, so that each card lies flat on an ironing board. */
    private static final double WIDEST_RADIANS = Math.PI / 2;

    /** Arcs of radii nearer to each other share a card. */
    private static final double SAME_MM = 0.1;

    /** Copies the lists. */
    public PressingCard {
        edges = List.copyOf(edges);
        ends = List.copyOf(ends);
    }

    /** How a card goes along the hem. */
    enum Kind {
        /** Slid along a straight fold. */
        STRAIGHT,
        /** Slid along an arc. */
        ARC,
        /** Laid once. */
        CURVE
    }

    /** The cards of a hem; edges of one shape share one. */
    public static List<PressingCard> of(HemResult hem) {
        List<PressingCard> cards = new ArrayList<>();
        List<HemEdge> straight =
                hem.edges().stream()
                        .filter(e -> isStraight(e) && hem.hem().depth().isPresent())
                        .toList();
        if (!straight.isEmpty()) {
            EdgeLine fold = EdgeLine.straight(Point.ORIGIN, new Point(WIDE_MM, 0));
            cards.add(new PressingCard(straight, fold, Kind.STRAIGHT, List.of()));
        }
        List<HemEdge> left =
                new ArrayList<>(
                        hem.edges().stream()
                                .filter(e -> !isStraight(e))
                                .filter(e -> e.turned().filter(t -> !t.isTooTight()).isPresent())
                                .toList());
        while (!left.isEmpty()) {
            HemEdge first = left.get(0);
            List<HemEdge> same = left.stream().filter(e -> isSameArc(first, e)).toList();
            left.removeAll(same.isEmpty() ? List.of(first) : same);
            if (same.isEmpty()) {
                cards.addAll(curve(first));
            } else {
                cards.add(arc(same));
            }
        }
        return cards;
    }

    private static boolean isStraight(HemEdge edge) {
        return edge.turned().map(t -> t.fold().isStraight()).orElse(false);
    }

    private static boolean isSameArc(HemEdge a, HemEdge b) {
        Optional<Double> radius = a.turned().flatMap(TurnedEdge::radiusMm);
        Optional<Double> other = b.turned().flatMap(TurnedEdge::radiusMm);
        return radius.isPresent()
                && other.isPresent()
                && Math.abs(radius.get() - other.get()) <= SAME_MM
                && bulges(a) == bulges(b);
    }

    private static boolean bulges(HemEdge edge) {
        return edge.turned().orElseThrow().turnsRadians() > 0;
    }

    private static PressingCard arc(List<HemEdge> edges) {
        TurnedEdge turned = edges.get(0).turned().orElseThrow();
        double radiusMm = turned.radiusMm().orElseThrow();
        // A hollow card is widest where its sides begin.
        double widestMm = bulges(edges.get(0)) ? radiusMm : radiusMm + turned.depthMm() + PAST_MM;
        double half = Math.min(HALF_RADIANS, StrictMath.asin(Math.min(1, WIDE_MM / 2 / widestMm)));
        Point middle = new Point(radiusMm * StrictMath.sin(half), 0);
        double down = Math.PI / 2;
        EdgeLine fold =
                bulges(edges.get(0))
                        ? EdgeLine.arc(middle.moved(0, -radiusMm), radiusMm, down + half, -2 * half)
                        : EdgeLine.arc(middle.moved(0, radiusMm), radiusMm, -down - half, 2 * half);
        return new PressingCard(edges, fold, Kind.ARC, List.of());
    }

    private static List<PressingCard> curve(HemEdge edge) {
        TurnedEdge turned = edge.turned().orElseThrow();
        EdgeLine line = turned.way() > 0 ? turned.fold().reversed() : turned.fold();
        String left = turned.way() > 0 ? edge.ends().end().name() : edge.ends().start().name();
        String right = turned.way() > 0 ? edge.ends().start().name() : edge.ends().end().name();
        int parts = (int) Math.max(1, Math.ceil(Math.abs(turned.turnsRadians()) / WIDEST_RADIANS));
        List<PressingCard> cards = new ArrayList<>();
        for (int i = 0; i < parts; i++) {
            double whole = line.lengthMm();
            EdgeLine part =
                    parts == 1 ? line : line.part(whole * i / parts, whole * (i + 1) / parts);
            List<String> ends =
                    List.of(
                            i == 0 ? left : "part " + i,
                            i == parts - 1 ? right : "part " + (i + 2));
            cards.add(new PressingCard(List.of(edge), levelled(part), Kind.CURVE, ends));
        }
        return cards;
    }

    /** Turned so that both ends are level. */
    private static EdgeLine levelled(EdgeLine line) {
        Point from = line.start();
        Point to = line.end();
        double turn = StrictMath.atan2(to.yMm() - from.yMm(), to.xMm() - from.xMm());
        return line.turned(-turn, from);
    }

    /** The line so far inside the fold. */
    public List<Point> inside(Length depth) {
        return Parallel.points(fold, depth.millimetres());
    }

    /** Its radius, if it is an arc. */
    Optional<Length> radius() {
        return kind == Kind.ARC
                ? edges.get(0).turned().flatMap(TurnedEdge::radiusMm).map(HemEdge::mm)
                : Optional.empty();
    }
}
