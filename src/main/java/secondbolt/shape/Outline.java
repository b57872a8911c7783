package secondbolt.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/**
 * A closed run of straight edges, in millimetres.
 *
 * @param corners in order, at least three; the last joins the first
 */
public record Outline(List<Point> corners) {
    /** How far the edges standing in for a circle may run outside it. */
    private static final double ROUND_TOLERANCE_MM = 0.02;

    /** Two edges whose turn differs by less from a right angle, or from none, count as at it. */
    private static final double SAME_TURN = 1e-9;

    /** With so many edges the area is less than a ten-thousandth too large. */
    private static final int FEWEST_ROUND_EDGES = 192;

    /** Copies the corners and checks their number. */
    public Outline {
        corners = List.copyOf(corners);
        if (corners.size() < 3) {
            throw new IllegalArgumentException(
                    "an outline needs three corners or more, was " + corners.size());
        }
    }

    /** The sides of a box. */
    public static Outline of(Box box) {
        return new Outline(
                List.of(
                        new Point(box.leftMm(), box.topMm()),
                        new Point(box.rightMm(), box.topMm()),
                        new Point(box.rightMm(), box.bottomMm()),
                        new Point(box.leftMm(), box.bottomMm())));
    }

    /**
     * A polygon round a circle, whose edges touch it from outside: nowhere more than 0.02 mm away,
     * and less than a ten-thousandth larger.
     *
     * <p>Derived: a polygon of n edges round a circle reaches r (1/cos(π/n) − 1) ≈ r π²/2n² past it
     * and is about π²/3n² of its area larger.
     *
     * @throws IllegalArgumentException if the radius is not above zero
     */
    public static Outline round(Point middle, double radiusMm) {
        if (!(radiusMm > 0)) {
            throw new IllegalArgumentException("radiusMm must be above 0, was " + radiusMm);
        }
        int edges = roundEdges(radiusMm);
        double reach = radiusMm / Math.cos(Math.PI / edges);
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < edges; i++) {
            // Half a step on, so that an edge stands upright or level at each of the four sides.
            double turn = 2 * Math.PI * (i + 0.5) / edges;
            corners.add(middle.moved(reach * Math.cos(turn), reach * Math.sin(turn)));
        }
        return new Outline(corners);
    }

    private static int roundEdges(double radiusMm) {
        double enough = Math.PI * Math.sqrt(radiusMm / (2 * ROUND_TOLERANCE_MM));
        return 4 * (int) Math.ceil(Math.max(FEWEST_ROUND_EDGES, enough * 1.01) / 4);
    }

    /**
     * Where it crosses or touches itself, if it does; such an outline encloses nothing definite.
     */
    public Optional<Point> crossing() {
        TopologyValidationError error = new IsValidOp(Region.polygon(this)).getValidationError();
        return Optional.ofNullable(error)
                .map(found -> new Point(found.getCoordinate().x, found.getCoordinate().y));
    }

    /**
     * What it encloses and a border of so much all round, zero or more. Corners of a right angle
     * and blunter ones stay sharp, so a box grows to a box and a polygon round a circle to one
     * round the larger circle; a sharper one, as at the end of a tear, is rounded, so that the
     * border is nowhere wider there than it must be.
     *
     * @throws IllegalArgumentException if the border is negative or the outline crosses itself
     */
    public Region grown(double byMm) {
        if (!(byMm >= 0)) {
            throw new IllegalArgumentException("byMm must be 0 or more, was " + byMm);
        }
        Region own = Region.of(this);
        if (byMm == 0) {
            return own;
        }
        return isBlunt() ? Region.of(edgesMovedOut(byMm)) : withStrips(own, byMm);
    }

    /** What it encloses without a border of so much all round inside it, zero or more. */
    public Region shrunk(double byMm) {
        return Region.shrunk(this, byMm);
    }

    /** Each edge with the strip beside it, and what lies between two strips at a corner. */
    private Region withStrips(Region own, double byMm) {
        double way = Math.signum(signedAreaMm2()) * byMm;
        List<Region> parts = new ArrayList<>(List.of(own));
        for (int i = 0; i < corners.size(); i++) {
            Point in = edge(i + corners.size() - 1);
            Point out = edge(i);
            double inLength = Math.hypot(in.xMm(), in.yMm());
            double outLength = Math.hypot(out.xMm(), out.yMm());
            if (inLength == 0 || outLength == 0) {
                continue;
            }
            Point at = corners.get(i);
            Point to = corners.get((i + 1) % corners.size());
            double x = way * out.yMm() / outLength;
            double y = -way * out.xMm() / outLength;
            parts.add(Region.of(new Outline(List.of(at, to, to.moved(x, y), at.moved(x, y)))));
            double cross = way * (in.xMm() * out.yMm() - in.yMm() * out.xMm());
            double along = (in.xMm() * out.xMm() + in.yMm() * out.yMm()) / inLength / outLength;
            if (along < -SAME_TURN) {
                // A sharp corner, or the end of a hollow, where the round lies within anyway.
                parts.add(Region.of(Outline.round(at, byMm)));
            } else if (cross > SAME_TURN * byMm * inLength * outLength) {
                Point before = at.moved(way * in.yMm() / inLength, -way * in.xMm() / inLength);
                double share = way / (1 + along);
                Point tip =
                        at.moved(
                                share * (in.yMm() / inLength + out.yMm() / outLength),
                                -share * (in.xMm() / inLength + out.xMm() / outLength));
                parts.add(Region.of(new Outline(List.of(at, before, tip, at.moved(x, y)))));
            }
        }
        return Region.union(parts);
    }

    /** Whether every corner turns the same way, and none by more than a right angle. */
    private boolean isBlunt() {
        double way = Math.signum(signedAreaMm2());
        for (int i = 0; i < corners.size(); i++) {
            Point out = edge(i);
            Point in = edge(i + corners.size() - 1);
            double cross = way * (in.xMm() * out.yMm() - in.yMm() * out.xMm());
            double along = in.xMm() * out.xMm() + in.yMm() * out.yMm();
            double scale = Math.hypot(in.xMm(), in.yMm()) * Math.hypot(out.xMm(), out.yMm());
            if (!(cross > 0) || along < -SAME_TURN * scale) {
                return false;
            }
        }
        return true;
    }

    /** Where one edge leads, counted from its corner. */
    private Point edge(int number) {
        Point from = corners.get(number % corners.size());
        Point to = corners.get((number + 1) % corners.size());
        return new Point(to.xMm() - from.xMm(), to.yMm() - from.yMm());
    }

    /** Each corner goes to where its two edges meet once both have moved out. */
    private Outline edgesMovedOut(double byMm) {
        double way = Math.signum(signedAreaMm2()) * byMm;
        List<Point> moved = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Point in = edge(i + corners.size() - 1);
            Point out = edge(i);
            double inLength = Math.hypot(in.xMm(), in.yMm());
            double outLength = Math.hypot(out.xMm(), out.yMm());
            double ix = in.xMm() / inLength;
            double iy = in.yMm() / inLength;
            double ox = out.xMm() / outLength;
            double oy = out.yMm() / outLength;
            double share = way / (1 + ix * ox + iy * oy);
            moved.add(corners.get(i).moved(share * (iy + oy), -share * (ix + ox)));
        }
        return new Outline(moved);
    }

    /** What it encloses, in square millimetres, if it does not cross itself. */
    public double areaMm2() {
        return Math.abs(signedAreaMm2());
    }

    /** Whether its corners go round it clockwise, as seen on the sheet. */
    public boolean runsClockwise() {
        return signedAreaMm2() > 0;
    }

    private double signedAreaMm2() {
        double twice = 0;
        Point last = corners.get(corners.size() - 1);
        for (Point corner : corners) {
            twice += last.xMm() * corner.yMm() - corner.xMm() * last.yMm();
            last = corner;
        }
        return twice / 2;
    }

    /** Whether a point lies inside; on the line itself it may come out either way. */
    public boolean contains(Point point) {
        boolean inside = false;
        Point last = corners.get(corners.size() - 1);
        for (Point corner : corners) {
            boolean spans = corner.yMm() > point.yMm() != last.yMm() > point.yMm();
            if (spans && point.xMm() < crossingXMm(last, corner, point.yMm())) {
                inside = !inside;
            }
            last = corner;
        }
        return inside;
    }

    static double crossingXMm(Point from, Point to, double yMm) {
        double share = (yMm - from.yMm()) / (to.yMm() - from.yMm());
        return from.xMm() + share * (to.xMm() - from.xMm());
    }

    /** The smallest box round it. */
    public Box box() {
        double left = Double.POSITIVE_INFINITY;
        double top = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double bottom = Double.NEGATIVE_INFINITY;
        for (Point corner : corners) {
            left = Math.min(left, corner.xMm());
            right = Math.max(right, corner.xMm());
            top = Math.min(top, corner.yMm());
            bottom = Math.max(bottom, corner.yMm());
        }
        return new Box(left, top, right - left, bottom - top);
    }

    /** The same with every corner put elsewhere. */
    public Outline map(UnaryOperator<Point> move) {
        return new Outline(corners.stream().map(move).toList());
    }

    /** Its edges, closed. */
    public Path path() {
        return Path.polygon(corners);
    }
}
