package secondbolt.shape;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/**
 * A part of the plane, in millimetres: any number of areas, with or without holes. It never
 * changes.
 */
public final class Region {
    /** No area at all. */
    public static final Region EMPTY = new Region(factory().createPolygon());

    /** Pieces smaller than this come from the last bits of a double, not from a cloth. */
    private static final double DUST_MM2 = 1e-6;

    /** How much of the tolerance leaving corners out may take. */
    private static final double LOOSE_SHARE = 0.45;

    /** A looser shape that misses more than this does not cover what it stands for. */
    private static final double COVERED_MM2 = 1e-4;

    private final Geometry area;

    private Region(Geometry area) {
        this.area = area;
    }

    /**
     * What an outline encloses. Where it only seems to cross itself, because two of its parts that
     * nearly touch were moved and rounded, it is as it was before.
     *
     * @throws IllegalArgumentException if it crosses itself
     */
    public static Region of(Outline outline) {
        Polygon polygon = polygon(outline);
        Optional<Point> crossing = outline.crossing();
        if (crossing.isEmpty()) {
            return new Region(polygon);
        }
        Region mended = areas(GeometryFixer.fix(polygon));
        if (Math.abs(mended.areaMm2() - outline.areaMm2()) > COVERED_MM2) {
            throw new IllegalArgumentException("outline crosses itself at " + crossing.get());
        }
        return mended;
    }

    /** A box; nothing if it has no width or no height. */
    public static Region of(Box box) {
        return box.widthMm() > 0 && box.heightMm() > 0
                ? new Region(polygon(Outline.of(box)))
                : EMPTY;
    }

    private static GeometryFactory factory() {
        return new GeometryFactory();
    }

    static Polygon polygon(Outline outline) {
        List<Coordinate> ring = new ArrayList<>();
        for (Point corner : outline.corners()) {
            ring.add(new Coordinate(corner.xMm(), corner.yMm()));
        }
        ring.add(ring.get(0).copy());
        return factory().createPolygon(ring.toArray(new Coordinate[0]));
    }

    /** What belongs to any of these. */
    public static Region union(Collection<Region> regions) {
        List<Geometry> areas = new ArrayList<>();
        regions.forEach(region -> areas.addAll(polygons(region.area)));
        return areas.isEmpty() ? EMPTY : areas(OverlayNGRobust.union(areas));
    }

    /** What belongs to either. */
    public Region with(Region other) {
        return overlay(other, OverlayNG.UNION);
    }

    /** What belongs to this but not to the other. */
    public Region minus(Region other) {
        return overlay(other, OverlayNG.DIFFERENCE);
    }

    /** What belongs to both. */
    public Region intersection(Region other) {
        return overlay(other, OverlayNG.INTERSECTION);
    }

    private Region overlay(Region other, int operation) {
        return areas(OverlayNGRobust.overlay(area, other.area, operation));
    }

    /** An overlay can leave single points and lines where two areas only touch. */
    private static Region areas(Geometry overlaid) {
        List<Polygon> polygons = polygons(overlaid);
        polygons.removeIf(polygon -> polygon.getArea() < DUST_MM2);
        return polygons.isEmpty() ? EMPTY : new Region(factory().buildGeometry(polygons));
    }

    private static List<Polygon> polygons(Geometry geometry) {
        List<Polygon> polygons = new ArrayList<>();
        for (Object polygon : PolygonExtracter.getPolygons(geometry)) {
            polygons.add((Polygon) polygon);
        }
        return polygons;
    }

    /** What an outline encloses without a border of so much all round inside it. */
    static Region shrunk(Outline outline, double byMm) {
        return areas(BufferOp.bufferOp(polygon(outline), -byMm, sharp()));
    }

    /**
     * An outline made simpler, and nowhere inside this one grown: its straight edges stay where
     * they are, its curves get fewer corners. It reaches nowhere beyond the box of this one grown.
     *
     * @param byMm how wide a border is wanted, zero or more; its corners are kept sharp
     * @param toleranceMm how much wider the border may become along a curve, above zero
     */
    public static Outline loosened(Outline outline, double byMm, double toleranceMm) {
        Geometry exact = polygon(outline);
        Geometry loose = looser(exact, toleranceMm).orElseGet(() -> wider(exact, toleranceMm));
        Geometry inside = inside(loose, exact.getEnvelopeInternal());
        Geometry grown = byMm > 0 ? BufferOp.bufferOp(inside, byMm, sharp()) : inside;
        return areas(grown).outlines().stream()
                .max(Comparator.comparingDouble(Outline::areaMm2))
                .orElse(outline);
    }

    /** Corners stay sharp where their point runs out no more than twice the border. */
    private static BufferParameters sharp() {
        BufferParameters sharp =
                new BufferParameters(
                        BufferParameters.DEFAULT_QUADRANT_SEGMENTS,
                        BufferParameters.CAP_FLAT,
                        BufferParameters.JOIN_MITRE,
                        2);
        sharp.setSimplifyFactor(0);
        return sharp;
    }

    /** Cut off at a box, so that a curve too is no wider than it is and an exact fit stays one. */
    private static Geometry inside(Geometry wide, Envelope box) {
        return box.contains(wide.getEnvelopeInternal())
                ? wide
                : OverlayNGRobust.overlay(wide, factory().toGeometry(box), OverlayNG.INTERSECTION);
    }

    /** This made simpler and nowhere inside itself, its curves up to so much farther out. */
    public Region loosened(double toleranceMm) {
        List<Region> loose = new ArrayList<>();
        for (Polygon polygon : polygons(area)) {
            loose.add(
                    areas(
                            looser(polygon, toleranceMm)
                                    .orElseGet(() -> wider(polygon, toleranceMm))));
        }
        return union(loose);
    }

    /** Made simpler, and then so much wider all round that all that was cut off lies within it. */
    private static Geometry wider(Geometry exact, double toleranceMm) {
        return DouglasPeuckerSimplifier.simplify(exact, toleranceMm * LOOSE_SHARE)
                .buffer(toleranceMm / 2, 2);
    }

    /** Made simpler edge by edge; nothing if it would not cover all of what it stands for. */
    private static Optional<Geometry> looser(Geometry exact, double toleranceMm) {
        Geometry simple = DouglasPeuckerSimplifier.simplify(exact, toleranceMm * LOOSE_SHARE);
        if (!(exact instanceof Polygon polygon
                && simple instanceof Polygon fewer
                && fewer.getNumInteriorRing() == polygon.getNumInteriorRing())) {
            return Optional.empty();
        }
        List<LinearRing> rings = new ArrayList<>();
        for (int i = -1; i < polygon.getNumInteriorRing(); i++) {
            Coordinate[] ring = ring(polygon, i).getCoordinates();
            boolean coversLeft = Orientation.isCCW(ring) == i < 0;
            Optional<Coordinate[]> loose =
                    LooseRing.of(ring, ring(fewer, i).getCoordinates(), coversLeft ? 1 : -1);
            if (loose.isEmpty()) {
                return Optional.empty();
            }
            rings.add(factory().createLinearRing(loose.get()));
        }
        Polygon loose =
                factory()
                        .createPolygon(
                                rings.get(0),
                                rings.subList(1, rings.size()).toArray(new LinearRing[0]));
        boolean holds =
                loose.isValid()
                        && OverlayNGRobust.overlay(exact, loose, OverlayNG.DIFFERENCE).getArea()
                                < COVERED_MM2;
        return holds ? Optional.of(loose) : Optional.empty();
    }

    /** The outer ring is that before the first hole. */
    private static LinearRing ring(Polygon polygon, int number) {
        return number < 0 ? polygon.getExteriorRing() : polygon.getInteriorRingN(number);
    }

    /** This in convex parts that do not overlap, corners in the order of growing angle. */
    public List<Outline> convexParts() {
        List<Outline> parts = new ArrayList<>();
        polygons(area).forEach(polygon -> parts.addAll(ConvexParts.of(polygon)));
        return List.copyOf(parts);
    }

    /** This with all lengths across and along multiplied, seen from the origin. */
    public Region scaled(double across, double along) {
        return new Region(AffineTransformation.scaleInstance(across, along).transform(area));
    }

    /** This moved by so much. */
    public Region moved(double acrossMm, double alongMm) {
        return new Region(
                AffineTransformation.translationInstance(acrossMm, alongMm).transform(area));
    }

    /** Its area in square millimetres. */
    public double areaMm2() {
        return area.getArea();
    }

    /** How far apart two regions are where they are nearest to each other; zero if they meet. */
    public double distanceMm(Region other) {
        return area.distance(other.area);
    }

    /** Whether there is none. */
    public boolean isEmpty() {
        return area.isEmpty();
    }

    /** Whether a box lies wholly inside, but for so much along its sides. */
    public boolean contains(Box box, double toleranceMm) {
        return Region.of(box.grown(-toleranceMm)).minus(this).isEmpty();
    }

    /**
     * The smallest box round it.
     *
     * @throws IllegalStateException if it is empty
     */
    public Box box() {
        if (isEmpty()) {
            throw new IllegalStateException("an empty region has no box");
        }
        var envelope = area.getEnvelopeInternal();
        return new Box(
                envelope.getMinX(), envelope.getMinY(), envelope.getWidth(), envelope.getHeight());
    }

    /** Its outlines and the outlines of its holes, from the top, then from the left. */
    public List<Outline> outlines() {
        List<Outline> outlines = new ArrayList<>();
        List<Polygon> polygons = polygons(area);
        polygons.removeIf(Polygon::isEmpty);
        for (Polygon polygon : polygons) {
            outlines.add(outline(polygon.getExteriorRing()));
            for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
                outlines.add(outline(polygon.getInteriorRingN(i)));
            }
        }
        outlines.sort(
                Comparator.<Outline>comparingDouble(o -> o.box().topMm())
                        .thenComparingDouble(o -> o.box().leftMm()));
        return List.copyOf(outlines);
    }

    private static Outline outline(LineString ring) {
        List<Point> corners = new ArrayList<>();
        Coordinate[] coordinates = ring.getCoordinates();
        for (int i = 0; i < coordinates.length - 1; i++) {
            corners.add(new Point(coordinates[i].x, coordinates[i].y));
        }
        return new Outline(corners);
    }

    /** Its edges for drawing, each outline closed. */
    public List<Path> paths() {
        return outlines().stream().map(Outline::path).toList();
    }

    /**
     * A point well inside, such as for a letter: the middle of its box if that lies inside.
     *
     * @throws IllegalStateException if it is empty
     */
    public Point inside() {
        Point middle = box().middle();
        Coordinate at = new Coordinate(middle.xMm(), middle.yMm());
        if (area.contains(factory().createPoint(at))) {
            return middle;
        }
        Coordinate inner = area.getInteriorPoint().getCoordinate();
        return new Point(inner.x, inner.y);
    }

    /**
     * Parallel lines across it, clipped to it.
     *
     * @param spacingMm from line to line, above zero
     * @param turnDegrees of the lines, from level, clockwise
     * @throws IllegalArgumentException if the spacing is not above zero
     */
    public List<Path> hatch(double spacingMm, double turnDegrees) {
        if (!(spacingMm > 0)) {
            throw new IllegalArgumentException("spacingMm must be above 0, was " + spacingMm);
        }
        if (isEmpty()) {
            return List.of();
        }
        double turn = Math.toRadians(turnDegrees);
        double reach = Math.hypot(box().widthMm(), box().heightMm()) / 2 + spacingMm;
        Point middle = box().middle();
        // Counted from the origin, so that neighbouring hatches of one turn run on.
        double offset = middle.yMm() * Math.cos(turn) - middle.xMm() * Math.sin(turn);
        long first = (long) Math.ceil((offset - reach) / spacingMm);
        long last = (long) Math.floor((offset + reach) / spacingMm);
        List<LineString> lines = new ArrayList<>();
        for (long i = first; i <= last; i++) {
            double aside = i * spacingMm - offset;
            Point foot = middle.moved(-aside * Math.sin(turn), aside * Math.cos(turn));
            lines.add(line(foot, reach * Math.cos(turn), reach * Math.sin(turn)));
        }
        return clipped(lines);
    }

    private static LineString line(Point middle, double acrossMm, double alongMm) {
        Coordinate[] ends = {
            new Coordinate(middle.xMm() - acrossMm, middle.yMm() - alongMm),
            new Coordinate(middle.xMm() + acrossMm, middle.yMm() + alongMm)
        };
        return factory().createLineString(ends);
    }

    private List<Path> clipped(List<LineString> lines) {
        Geometry all = factory().createMultiLineString(lines.toArray(new LineString[0]));
        Geometry inside = OverlayNGRobust.overlay(all, area, OverlayNG.INTERSECTION);
        List<Path> parts = new ArrayList<>();
        for (int i = 0; i < inside.getNumGeometries(); i++) {
            Coordinate[] ends = inside.getGeometryN(i).getCoordinates();
            if (ends.length > 1) {
                Coordinate end = ends[ends.length - 1];
                parts.add(Path.line(new Point(ends[0].x, ends[0].y), new Point(end.x, end.y)));
            }
        }
        return List.copyOf(parts);
    }

    /** Whether the other has the same corners in the same order. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Region region && area.equalsExact(region.area);
    }

    @Override
    public int hashCode() {
        return area.getNumPoints();
    }

    @Override
    public String toString() {
        return "Region" + outlines();
    }
}
