package secondbolt.shape.cut;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Point;
import secondbolt.shape.Stretch;

/**
 * An edge of a piece turned up onto the piece: the fold, the line so far outside it, and the line
 * inside on which that one lands. All in millimetres.
 *
 * <p>Both ends are mirrored at the fold: the sides of the piece between the fold and the landing
 * line come to lie on themselves, so both lines end at the same places of the fold. At a corner,
 * within the edge or toward a neighbour that is turned too, both end on a mitre: on the line that
 * halves the corner, or, where the neighbour is turned by another depth, on the one from the corner
 * to where the two landing lines cross. Of an outline that includes what is turned up the ends lie
 * where it draws them.
 *
 * <p>Derived: beside a smooth line of length L that turns by τ radians, the line at the distance d
 * has the length L + dτ on the bulging side and L − dτ on the hollow one; their difference is 2dτ.
 */
public final class TurnedEdge {
    /** An edge is parted where it turns by more than this; less is a slip of drawing. */
    private static final double CORNER_RADIANS = Math.toRadians(0.5);

    private static final double FLAT_MM = 0.005;
    private static final int LEAST_SAMPLES = 64;

    /** What of the height of its bow an arc may stray from its circle, and how much at most. */
    private static final double ARC_SHARE = 0.02;

    private static final double ARC_MM = 0.1;

    private final EdgeLine edge;
    private final int way;
    private final double depthMm;
    private final List<TurnedPart> parts;
    private final Optional<Drawn> drawn;

    private TurnedEdge(
            EdgeLine edge, int way, double depthMm, List<TurnedPart> parts, Optional<Drawn> drawn) {
        this.edge = edge;
        this.way = way;
        this.depthMm = depthMm;
        this.parts = parts;
        this.drawn = drawn;
    }

    /**
     * The lines outside and inside the fold where they are drawn, not mirrored.
     *
     * @param outer the line outside
     * @param landing the line it lands on
     */
    private record Drawn(SewnEdges.Sewn outer, SewnEdges.Sewn landing) {}

    /**
     * How much of an outline that includes it is turned up, or lies beyond its seam.
     *
     * @param widthMm how far inside its edge the fold or the seam lies; zero on a fold of the cloth
     * @param depthMm how deep it is turned up; zero of an edge that is not
     */
    public record Included(double widthMm, double depthMm) {}

    /**
     * One end of an edge.
     *
     * @param leansRadians how far the side leans from square to the fold; above zero if the piece
     *     widens towards the fold, below if it narrows
     * @param takesInMm by how much the mirrored end of the line outside lies farther in than a side
     *     that ran straight on; negative if it lies farther out
     */
    public record End(double leansRadians, double takesInMm) {}

    /**
     * A corner within an edge.
     *
     * @param alongMm from the edge's start
     * @param turnsRadians how sharply it turns; above zero if it points out of the piece
     */
    public record Corner(double alongMm, double turnsRadians) {}

    /**
     * An edge of an outline.
     *
     * @param outline the edges in drawing order, either way round
     * @param number of the edge, from 0
     * @param depthsMm how deep each edge is turned up; zero of one that is not
     * @throws IllegalArgumentException if its own depth is not above zero
     */
    public static TurnedEdge of(List<EdgeLine> outline, int number, List<Double> depthsMm) {
        int count = outline.size();
        int before = (number + count - 1) % count;
        int after = (number + 1) % count;
        return of(
                outline.get(number),
                CuttingLine.way(outline),
                depthsMm.get(number),
                new Side(outline.get(before).reversed(), depthsMm.get(before)),
                new Side(outline.get(after), depthsMm.get(after)));
    }

    /**
     * An edge whose sides stand square to it.
     *
     * @param way 1 if the piece lies to the right of the edge, -1 if to its left
     * @param depthMm how deep it is turned up, above zero
     */
    public static TurnedEdge square(EdgeLine edge, int way, double depthMm) {
        Point first = edge.directionAt(0);
        Point last = edge.directionAt(edge.lengthMm());
        return of(
                edge,
                way,
                depthMm,
                new Side(ray(edge.start(), inward(first, way), depthMm), 0),
                new Side(ray(edge.end(), inward(last, way), depthMm), 0));
    }

    /**
     * An edge of an outline that includes what is turned up: all three lines lie inside it, between
     * the seams of its sides, which run past the fold as the outline draws them.
     *
     * <p>Derived: what is sewn down is as long as the sides' seams leave it at the depth outside
     * the fold; what it lands on, at the depth inside.
     *
     * @param outline the cutting line in drawing order, either way round
     * @param number of the edge, from 0; its depth is above zero
     * @param included of each edge
     */
    public static TurnedEdge within(List<EdgeLine> outline, int number, List<Included> included) {
        int count = outline.size();
        int before = (number + count - 1) % count;
        int after = (number + 1) % count;
        int way = CuttingLine.way(outline);
        double depthMm = included.get(number).depthMm();
        List<SewnEdges.Sewn> folds = sewn(outline, included, 0);
        Drawn drawn =
                new Drawn(
                        sewn(outline, included, -1).get(number),
                        sewn(outline, included, 1).get(number));
        List<Point> line = folds.get(number).line();
        if (line.size() < 2) {
            TurnedEdge none = square(outline.get(number), way, depthMm);
            return new TurnedEdge(none.edge, way, depthMm, none.parts, Optional.of(drawn));
        }
        Point first = line.get(0);
        Point last = line.get(line.size() - 1);
        EdgeLine fold =
                outline.get(number).isStraight()
                        ? EdgeLine.straight(first, last)
                        : EdgeLine.through(apart(line));
        List<Point> up = new ArrayList<>(folds.get(before).line());
        Collections.reverse(up);
        TurnedEdge mirrored =
                of(
                        fold,
                        way,
                        depthMm,
                        side(first, up, fold.directionAt(0), way, included.get(before)),
                        side(
                                last,
                                folds.get(after).line(),
                                fold.directionAt(fold.lengthMm()),
                                way,
                                included.get(after)));
        return new TurnedEdge(fold, way, depthMm, mirrored.parts, Optional.of(drawn));
    }

    private static List<SewnEdges.Sewn> sewn(
            List<EdgeLine> outline, List<Included> included, int depths) {
        return SewnEdges.of(
                outline,
                included.stream()
                        .map(edge -> Math.max(0, edge.widthMm() + depths * edge.depthMm()))
                        .toList());
    }

    /** Without points that lie on each other. */
    private static List<Point> apart(List<Point> line) {
        List<Point> points = new ArrayList<>();
        for (Point point : line) {
            if (points.isEmpty() || points.get(points.size() - 1).distanceMm(point) > 1e-6) {
                points.add(point);
            }
        }
        return points;
    }

    /** The seam of a side from the fold on; square to the fold where nothing is left of it. */
    private static Side side(Point corner, List<Point> seam, Point fold, int way, Included is) {
        Optional<Point> next = seam.stream().filter(p -> p.distanceMm(corner) > 1e-3).findFirst();
        return new Side(
                next.map(to -> EdgeLine.straight(corner, to))
                        .orElseGet(() -> ray(corner, inward(fold, way), 1)),
                is.depthMm());
    }

    static EdgeLine ray(Point from, Point arrow, double lengthMm) {
        return EdgeLine.straight(from, from.moved(arrow.xMm() * lengthMm, arrow.yMm() * lengthMm));
    }

    static Point inward(Point direction, int way) {
        return new Point(-way * direction.yMm(), way * direction.xMm());
    }

    /**
     * A neighbour.
     *
     * @param line from the corner on
     * @param depthMm how deep it is turned up; zero if it is not
     */
    private record Side(EdgeLine line, double depthMm) {}

    private static TurnedEdge of(EdgeLine edge, int way, double depthMm, Side before, Side after) {
        if (!(depthMm > 0)) {
            throw new IllegalArgumentException("depthMm must be above 0, was " + depthMm);
        }
        List<List<Stretch>> smooth = smoothParts(edge);
        List<TurnedPart> parts = new ArrayList<>();
        for (int i = 0; i < smooth.size(); i++) {
            TurnedPart.Samples part = TurnedPart.Samples.of(smooth.get(i), LEAST_SAMPLES, FLAT_MM);
            Run start =
                    i > 0
                            ? Mitre.halving(
                                    part.first(), turnedBack(smooth.get(i - 1)), way, depthMm)
                            : side(before, part.first(), way, depthMm, false);
            Run end =
                    i + 1 < smooth.size()
                            ? Mitre.halving(part.last(), lead(smooth.get(i + 1)), way, depthMm)
                            : side(after, part.last(), way, depthMm, true);
            parts.add(TurnedPart.of(part, start, end, way, depthMm));
        }
        return new TurnedEdge(edge, way, depthMm, parts, Optional.empty());
    }

    private static TurnedPart.Sample turnedBack(List<Stretch> stretches) {
        Stretch last = stretches.get(stretches.size() - 1);
        return new TurnedPart.Sample(last.to(), last.directionAt(1), 0);
    }

    private static TurnedPart.Sample lead(List<Stretch> stretches) {
        return new TurnedPart.Sample(stretches.get(0).from(), stretches.get(0).directionAt(0), 0);
    }

    private static Run side(
            Side side, TurnedPart.Sample here, int way, double depthMm, boolean isEnd) {
        if (side.depthMm() <= 0) {
            return Mitre.run(side.line());
        }
        // A side runs away from the corner: the outline runs that way at the end, back at the
        // start.
        Point away = side.line().directionAt(0);
        Point there = isEnd ? away : new Point(-away.xMm(), -away.yMm());
        return Mitre.between(
                here, new TurnedPart.Sample(here.at(), there, 0), way, depthMm, side.depthMm());
    }

    private static List<List<Stretch>> smoothParts(EdgeLine edge) {
        List<List<Stretch>> parts = new ArrayList<>();
        for (Stretch stretch : edge.stretches()) {
            if (stretch.lengthMm() <= 1e-9) {
                continue;
            }
            List<Stretch> last = parts.isEmpty() ? List.of() : parts.get(parts.size() - 1);
            if (last.isEmpty() || isCorner(last.get(last.size() - 1), stretch)) {
                parts.add(new ArrayList<>());
            }
            parts.get(parts.size() - 1).add(stretch);
        }
        return parts;
    }

    private static boolean isCorner(Stretch before, Stretch after) {
        return before.directionAt(1).distanceMm(after.directionAt(0)) > CORNER_RADIANS;
    }

    /** The edge itself, as drawn. */
    public EdgeLine fold() {
        return edge;
    }

    /** 1 if the piece lies to the right of the edge as drawn, -1 if to its left. */
    public int way() {
        return way;
    }

    /** How deep it is turned up. */
    public double depthMm() {
        return depthMm;
    }

    /** How long the fold is. */
    public double foldMm() {
        return edge.lengthMm();
    }

    /** How long the line outside is, its ends mirrored. */
    public double outerMm() {
        return drawn.map(d -> d.outer().lengthMm())
                .orElseGet(() -> parts.stream().mapToDouble(TurnedPart::outerMm).sum());
    }

    /** How long the line is that it lands on. */
    public double landingMm() {
        return drawn.map(d -> d.landing().lengthMm())
                .orElseGet(() -> parts.stream().mapToDouble(TurnedPart::landingMm).sum());
    }

    /** How much longer the line outside is than the one it lands on; negative if shorter. */
    public double surplusMm() {
        return drawn.isPresent()
                ? outerMm() - landingMm()
                : parts.stream().mapToDouble(TurnedPart::surplusMm).sum();
    }

    /**
     * How far the whole fold turns, its corners left out; above zero if it bulges out of the piece.
     */
    public double turnsRadians() {
        return parts.stream().mapToDouble(TurnedPart::turnsRadians).sum();
    }

    /** The end at the edge's start. */
    public End start() {
        return parts.get(0).start();
    }

    /** The end at the edge's end. */
    public End end() {
        return parts.get(parts.size() - 1).end();
    }

    /** Its corners, in order. */
    public List<Corner> corners() {
        List<Corner> corners = new ArrayList<>();
        double along = 0;
        for (int i = 1; i < parts.size(); i++) {
            along += parts.get(i - 1).lengthMm();
            Point in = parts.get(i - 1).samples().last().direction();
            Point out = parts.get(i).samples().first().direction();
            corners.add(new Corner(along, way * TurnedPart.angle(in, out)));
        }
        return List.copyOf(corners);
    }

    /** Whether it bends so sharply somewhere that the line outside or inside turns back. */
    public boolean isTooTight() {
        return parts.stream().anyMatch(part -> part.tightestMm() <= depthMm);
    }

    /** The radius of the circle it is a part of, if it is an arc. */
    public Optional<Double> radiusMm() {
        if (parts.size() != 1 || edge.isStraight()) {
            return Optional.empty();
        }
        return parts.get(0).samples().circleMm(ARC_SHARE, ARC_MM);
    }

    /** The line outside; a run of points close together for each smooth part. */
    public List<List<Point>> outer() {
        return drawn.filter(d -> !d.outer().line().isEmpty())
                .map(d -> List.of(d.outer().line()))
                .orElseGet(() -> parts.stream().map(part -> part.beside(depthMm)).toList());
    }

    /** The line it lands on, likewise. */
    public List<List<Point>> landing() {
        return drawn.filter(d -> !d.landing().line().isEmpty())
                .map(d -> List.of(d.landing().line()))
                .orElseGet(() -> parts.stream().map(part -> part.beside(-depthMm)).toList());
    }
}
