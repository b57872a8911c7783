package secondbolt.shape.cut;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import secondbolt.shape.Point;
import secondbolt.shape.Stretch;

/**
 * How the cutting line goes from one edge to the next.
 *
 * @param leaveMm along the cutting line of the first, where it is left
 * @param between corners in between
 * @param enterMm along the cutting line of the second, where it is entered
 */
record CutCorner(double leaveMm, List<Point> between, double enterMm) {
    /**
     * A mitre runs out no farther than this many times the wider allowance, and is cut off squarely
     * there: corners sharper than 29 degrees.
     *
     * <p>Source: the initial {@code stroke-miterlimit} of SVG 1.1, section 11.4, is 4 (from
     * memory); for cloth, common practice, no source.
     */
    static final double MITRE_LIMIT = 4;

    private static final double DUST_MM = 1e-6;

    /**
     * An edge without an allowance ends all that is cut beside it, unless its neighbour runs on
     * nearly as it does: a seam allowance cut off along it would then be lost for more than this
     * many times its width. Common practice, no source.
     */
    private static final double CUT_OFF_LIMIT = 2;

    /** A curved hem's end is mirrored in so many steps. */
    private static final int HEM_STEPS = 16;

    CutCorner {
        between = List.copyOf(between);
    }

    /**
     * All corners of an outline, each after the part of its number.
     *
     * @param way 1 if the outline runs clockwise on paper, -1 if against it
     */
    static List<CutCorner> round(List<CutEdge> parts, int way) {
        List<CutCorner> corners = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            corners.add(between(parts.get(i), parts.get((i + 1) % parts.size()), way));
        }
        return List.copyOf(corners);
    }

    /**
     * The corners of a sewing line inside an outline: each where its two lines cross.
     *
     * @param way 1 if what lies outside the line is to its right, -1 if to its left
     */
    static List<CutCorner> crossing(List<CutEdge> parts, int way) {
        List<CutCorner> corners = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            CutEdge first = parts.get(i);
            CutEdge second = parts.get((i + 1) % parts.size());
            corners.add(where(first, second).orElseGet(() -> between(first, second, way)));
        }
        return List.copyOf(corners);
    }

    private static Optional<CutCorner> where(CutEdge first, CutEdge second) {
        double farthest = MITRE_LIMIT * Math.max(first.widthMm(), second.widthMm());
        return first.cut()
                .meeting(second.cut(), farthest)
                .filter(m -> first.cut().at(m.firstMm()).distanceMm(corner(first)) <= farthest)
                .map(m -> new CutCorner(m.firstMm(), List.of(), m.secondMm()));
    }

    /**
     * The corner between two edges.
     *
     * @param way 1 if the outline runs clockwise on paper, -1 if against it
     */
    static CutCorner between(CutEdge first, CutEdge second, int way) {
        Optional<CutCorner> hem = Optional.empty();
        if (first.is(Allowance.Kind.PLAIN) && second.is(Allowance.Kind.HEM)) {
            hem = intoHem(first, second);
        } else if (first.is(Allowance.Kind.HEM) && second.is(Allowance.Kind.PLAIN)) {
            hem =
                    intoHem(second.reversed(), first.reversed())
                            .map(corner -> corner.reversed(first, second));
        }
        return hem.orElseGet(() -> plain(first, second, way));
    }

    private CutCorner reversed(CutEdge first, CutEdge second) {
        List<Point> back = new ArrayList<>(between);
        Collections.reverse(back);
        return new CutCorner(
                first.cut().lengthMm() - enterMm, back, second.cut().lengthMm() - leaveMm);
    }

    private static CutCorner plain(CutEdge first, CutEdge second, int way) {
        Run a = first.cut();
        Run b = second.cut();
        if (a.at(a.lengthMm()).distanceMm(b.at(0)) <= DUST_MM) {
            return new CutCorner(a.lengthMm(), List.of(), 0);
        }
        double farthest = MITRE_LIMIT * Math.max(first.widthMm(), second.widthMm());
        Optional<Run.Meeting> meeting = a.meeting(b, farthest);
        boolean fold = first.is(Allowance.Kind.FOLD) || second.is(Allowance.Kind.FOLD);
        boolean ends = fold || meeting.filter(m -> endsAtBareEdge(m, first, second)).isPresent();
        if (meeting.isPresent() && isMitre(meeting.get(), a, corner(first), farthest, ends)) {
            return new CutCorner(meeting.get().firstMm(), List.of(), meeting.get().secondMm());
        }
        double turn = way * turn(a.trail(), b.lead());
        return turn > Math.PI / 2
                ? cutOff(first, second, farthest)
                : stepped(first, second, Math.max(turn, -Math.PI / 3));
    }

    /** Whether one of them has no allowance, as a kept edge, and cuts the other's off near by. */
    private static boolean endsAtBareEdge(Run.Meeting meeting, CutEdge first, CutEdge second) {
        double wider = Math.max(first.widthMm(), second.widthMm());
        double off = first.cut().at(meeting.firstMm()).distanceMm(corner(first));
        return Math.min(first.widthMm(), second.widthMm()) <= DUST_MM
                && off <= CUT_OFF_LIMIT * wider + DUST_MM;
    }

    private static Point corner(CutEdge first) {
        return first.sewn().at(first.sewn().lengthMm());
    }

    /**
     * Both lines run on, or both are shortened; a fold, or an edge without an allowance, is met
     * wherever it runs.
     */
    private static boolean isMitre(
            Run.Meeting meeting, Run a, Point corner, double farthest, boolean ends) {
        double on = meeting.firstMm() - a.lengthMm();
        double back = -meeting.secondMm();
        boolean shortened = on <= DUST_MM && back <= DUST_MM;
        boolean longer = on >= -DUST_MM && back >= -DUST_MM;
        boolean near = a.at(meeting.firstMm()).distanceMm(corner) <= farthest + DUST_MM;
        return shortened || ((longer || ends) && near);
    }

    private static double turn(Point in, Point out) {
        return StrictMath.atan2(
                in.xMm() * out.yMm() - in.yMm() * out.xMm(),
                in.xMm() * out.xMm() + in.yMm() * out.yMm());
    }

    /** The point of a sharp corner is cut off squarely, as far out as a mitre may reach. */
    private static CutCorner cutOff(CutEdge first, CutEdge second, double farthest) {
        Point in = first.cut().trail();
        Point out = second.cut().lead();
        Point tip = new Point(in.xMm() - out.xMm(), in.yMm() - out.yMm());
        double size = tip.distanceMm(Point.ORIGIN);
        Point ahead = new Point(tip.xMm() / size, tip.yMm() / size);
        double goes = in.xMm() * ahead.xMm() + in.yMm() * ahead.yMm();
        Point corner = corner(first);
        double firstOut = ahead(first.cut().at(first.cut().lengthMm()), corner, ahead);
        double secondOut = ahead(second.cut().at(0), corner, ahead);
        return new CutCorner(
                first.cut().lengthMm() + (farthest - firstOut) / goes,
                List.of(),
                -(farthest - secondOut) / goes);
    }

    private static double ahead(Point point, Point corner, Point arrow) {
        return (point.xMm() - corner.xMm()) * arrow.xMm()
                + (point.yMm() - corner.yMm()) * arrow.yMm();
    }

    /** The wider allowance ends squarely at the corner, the narrower runs up to it. */
    private static CutCorner stepped(CutEdge first, CutEdge second, double turn) {
        double tan = StrictMath.tan(Math.min(turn, Math.PI / 2 - 1e-3));
        return first.widthMm() < second.widthMm()
                ? new CutCorner(first.cut().lengthMm() + first.widthMm() * tan, List.of(), 0)
                : new CutCorner(first.cut().lengthMm(), List.of(), -second.widthMm() * tan);
    }

    /**
     * Into a hem: the side's cutting line runs to the hem's turn, and from there its own last part,
     * so deep as the hem, is mirrored at the turn; at a curved hem each point at its own nearest
     * point of the turn.
     */
    private static Optional<CutCorner> intoHem(CutEdge side, CutEdge hem) {
        double depth = hem.widthMm();
        Run line = side.cut();
        double reach = MITRE_LIMIT * Math.max(depth, side.widthMm());
        Optional<Run.Meeting> turn = line.meeting(hem.sewn(), reach);
        if (turn.isEmpty() || !(depth > 0)) {
            return Optional.empty();
        }
        double leave = turn.get().firstMm();
        double inside = leave;
        double least = leave - reach;
        while (inside > least && offMm(line.at(inside), hem.sewn()) < depth) {
            inside -= depth / HEM_STEPS;
        }
        if (inside <= least) {
            return Optional.empty();
        }
        inside = settled(line, hem.sewn(), depth, inside, inside + depth / HEM_STEPS);
        return Optional.of(mirrored(line, hem, inside, leave));
    }

    private static double offMm(Point point, Run turn) {
        return point.distanceMm(turn.at(turn.footMm(point)));
    }

    /** Halves between a place deep enough and one that is not. */
    private static double settled(Run line, Run turn, double depth, double deep, double shallow) {
        double far = deep;
        double near = shallow;
        while (near - far > DUST_MM / 10) {
            double middle = (near + far) / 2;
            if (offMm(line.at(middle), turn) >= depth) {
                far = middle;
            } else {
                near = middle;
            }
        }
        return (near + far) / 2;
    }

    private static CutCorner mirrored(Run line, CutEdge hem, double inside, double leave) {
        List<Point> mirrored = new ArrayList<>();
        for (Point point : finely(line.between(inside, leave))) {
            Point foot = hem.sewn().at(hem.sewn().footMm(point));
            mirrored.add(new Point(2 * foot.xMm() - point.xMm(), 2 * foot.yMm() - point.yMm()));
        }
        Collections.reverse(mirrored);
        Point last = mirrored.remove(mirrored.size() - 1);
        return new CutCorner(leave, mirrored, hem.cut().footMm(last));
    }

    /** With places in between, since a straight side is mirrored at a curve as a curve. */
    private static List<Point> finely(List<Point> points) {
        List<Point> fine = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            for (int k = 0; k < HEM_STEPS; k++) {
                fine.add(Stretch.mix(points.get(i - 1), points.get(i), (double) k / HEM_STEPS));
            }
        }
        fine.add(points.get(points.size() - 1));
        return fine;
    }
}
