package secondbolt.shape.cut;

import java.util.ArrayList;
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
 * to where the two landing lines cross; where that would leave nothing of an edge there is no
 * mitre, and both end as at a side that is not turned. Of an outline that includes what is turned
 * up the ends lie where it draws them.
 *
 * <p>Derived: beside a smooth line of length L that turns by τ radians, the line at the distance d
 * has the length L + dτ on the bulging side and L − dτ on the hollow one; their difference is 2dτ.
 */
public final class TurnedEdge {
    private static final double FLAT_MM = 0.005;
    private static final int LEAST_SAMPLES = 64;

    /** What of the height of its bow an arc may stray from its circle, and how much at most. */
    private static final double ARC_SHARE = 0.02;

    private static final double ARC_MM = 0.1;

    private final EdgeLine edge;
    private final int way;
    private final double depthMm;
    private final List<TurnedPart> parts;
    private final Mitred mitred;
    private final Optional<Drawn> drawn;

    private TurnedEdge(
            EdgeLine edge,
            int way,
            double depthMm,
            List<TurnedPart> parts,
            Mitred mitred,
            Optional<Drawn> drawn) {
        this.edge = edge;
        this.way = way;
        this.depthMm = depthMm;
        this.parts = parts;
        this.mitred = mitred;
        this.drawn = drawn;
    }

    /**
     * At which ends it meets a neighbour that is turned too on a mitre.
     *
     * @param atStart at the edge's start
     * @param atEnd at its end
     */
    private record Mitred(boolean atStart, boolean atEnd) {}

    /**
     * The lines outside and inside the fold where they are drawn, not mirrored.
     *
     * @param outer the line outside
     * @param landing the line it lands on
     */
    record Drawn(SewnEdges.Sewn outer, SewnEdges.Sewn landing) {}

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
        int way = CuttingLine.way(outline);
        MitredCorners corners = MitredCorners.of(outline, depthsMm, way);
        return of(
                outline.get(number),
                way,
                depthsMm.get(number),
                new TurnedSide(
                        outline.get(before).reversed(),
                        depthsMm.get(before),
                        corners.isMitred(number)),
                new TurnedSide(outline.get(after), depthsMm.get(after), corners.isMitred(after)));
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
                new TurnedSide(ray(edge.start(), inward(first, way), depthMm), 0, false),
                new TurnedSide(ray(edge.end(), inward(last, way), depthMm), 0, false));
    }

    /** The same, the lines outside and inside as they are drawn. */
    TurnedEdge drawn(Drawn lines) {
        return new TurnedEdge(edge, way, depthMm, parts, mitred, Optional.of(lines));
    }

    static EdgeLine ray(Point from, Point arrow, double lengthMm) {
        return EdgeLine.straight(from, from.moved(arrow.xMm() * lengthMm, arrow.yMm() * lengthMm));
    }

    static Point inward(Point direction, int way) {
        return new Point(-way * direction.yMm(), way * direction.xMm());
    }

    static TurnedEdge of(
            EdgeLine edge, int way, double depthMm, TurnedSide before, TurnedSide after) {
        if (!(depthMm > 0)) {
            throw new IllegalArgumentException("depthMm must be above 0, was " + depthMm);
        }
        List<List<Stretch>> smooth = SmoothParts.of(edge);
        List<TurnedPart> parts = new ArrayList<>();
        for (int i = 0; i < smooth.size(); i++) {
            TurnedPart.Samples part = TurnedPart.Samples.of(smooth.get(i), LEAST_SAMPLES, FLAT_MM);
            Run start =
                    i > 0
                            ? Mitre.halving(
                                    part.first(), turnedBack(smooth.get(i - 1)), way, depthMm)
                            : before.run(part.first(), way, depthMm, false);
            Run end =
                    i + 1 < smooth.size()
                            ? Mitre.halving(part.last(), lead(smooth.get(i + 1)), way, depthMm)
                            : after.run(part.last(), way, depthMm, true);
            parts.add(TurnedPart.of(part, start, end, way, depthMm));
        }
        return new TurnedEdge(
                edge,
                way,
                depthMm,
                parts,
                new Mitred(before.isMitred(), after.isMitred()),
                Optional.empty());
    }

    private static TurnedPart.Sample turnedBack(List<Stretch> stretches) {
        Stretch last = stretches.get(stretches.size() - 1);
        return new TurnedPart.Sample(last.to(), last.directionAt(1), 0);
    }

    private static TurnedPart.Sample lead(List<Stretch> stretches) {
        return new TurnedPart.Sample(stretches.get(0).from(), stretches.get(0).directionAt(0), 0);
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

    /** Whether it ends on a mitre at its start. */
    public boolean isMitredAtStart() {
        return mitred.atStart();
    }

    /** Whether it ends on a mitre at its end. */
    public boolean isMitredAtEnd() {
        return mitred.atEnd();
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
