package secondbolt.lay.search;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import secondbolt.shape.Outline;

/**
 * Checks a lay with nothing of the search's own: the figures are turned, moved and overlaid by the
 * JTS Topology Suite, a reference library for plane geometry.
 */
public final class LayChecker {
    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final double MOST_OVERLAP_MM2 = 0.01;
    private static final double SLACK_MM = 1e-3;
    private static final double STEP_SLACK_MM = 0.05;

    private LayChecker() {}

    /** What is wrong with a lay; nothing if it could be cut. */
    public static List<String> faults(List<Figure> figures, List<Bed> beds, double gapMm, Lay lay) {
        List<String> faults = new ArrayList<>();
        List<Geometry> lying = new ArrayList<>();
        boolean[] there = new boolean[figures.size()];
        for (Placed placed : lay.placed()) {
            Figure figure = figures.get(placed.figure());
            if (there[placed.figure()]) {
                faults.add("figure " + placed.figure() + " is there twice");
            }
            there[placed.figure()] = true;
            if (figure.ways().stream().noneMatch(way -> isSo(placed, way))) {
                faults.add("figure " + placed.figure() + " lies in no way it may: " + placed);
            }
            Geometry shape = lying(figure.outline(), placed);
            lying.add(shape);
            Bed bed = beds.get(placed.bed());
            Geometry sound = union(bed.grades().get(figure.grade()).outlines());
            double beyond = OverlayNGRobust.overlay(shape, sound, OverlayNG.DIFFERENCE).getArea();
            if (beyond > MOST_OVERLAP_MM2) {
                faults.add("figure " + placed.figure() + " lies " + beyond + " mm² off the cloth");
            }
        }
        for (int out : lay.leftOver()) {
            if (there[out]) {
                faults.add("figure " + out + " is laid and left out");
            }
            there[out] = true;
        }
        for (int i = 0; i < there.length; i++) {
            if (!there[i]) {
                faults.add("figure " + i + " is lost");
            }
        }
        for (int i = 0; i < lying.size(); i++) {
            for (int j = i + 1; j < lying.size(); j++) {
                if (lay.placed().get(i).bed() == lay.placed().get(j).bed()) {
                    pair(
                            lay.placed().get(i),
                            lying.get(i),
                            lay.placed().get(j),
                            lying.get(j),
                            gapMm,
                            faults);
                }
            }
        }
        return faults;
    }

    /** Whether it is turned as a way says, and lies between its bounds and on one of its steps. */
    private static boolean isSo(Placed placed, Way way) {
        return way.turnDegrees() == placed.turnDegrees()
                && way.isMirrored() == placed.isMirrored()
                && (way.bed().isEmpty() || way.bed().getAsInt() == placed.bed())
                && isOn(way.across(), placed.acrossMm())
                && isOn(way.along(), placed.alongMm());
    }

    private static boolean isOn(Rail rail, double at) {
        double steps = rail.everyMm() > 0 ? (at - rail.fromMm()) / rail.everyMm() : 0;
        return at >= rail.leastMm() - STEP_SLACK_MM
                && at <= rail.mostMm() + STEP_SLACK_MM
                && Math.abs(steps - Math.rint(steps)) * rail.everyMm() <= STEP_SLACK_MM;
    }

    private static void pair(
            Placed a,
            Geometry first,
            Placed b,
            Geometry second,
            double gapMm,
            List<String> faults) {
        double apart = first.distance(second);
        double over = OverlayNGRobust.overlay(first, second, OverlayNG.INTERSECTION).getArea();
        if (over > MOST_OVERLAP_MM2 || apart < gapMm - SLACK_MM) {
            faults.add(
                    a.figure()
                            + " and "
                            + b.figure()
                            + ": overlap "
                            + over
                            + " mm², apart "
                            + apart);
        }
    }

    private static Geometry lying(Outline outline, Placed placed) {
        AffineTransformation move = new AffineTransformation();
        if (placed.isMirrored()) {
            move.scale(-1, 1);
        }
        move.rotate(Math.toRadians(placed.turnDegrees()));
        move.translate(placed.acrossMm(), placed.alongMm());
        return move.transform(polygon(outline));
    }

    private static Geometry polygon(Outline outline) {
        List<Coordinate> ring = new ArrayList<>();
        outline.corners().forEach(c -> ring.add(new Coordinate(c.xMm(), c.yMm())));
        ring.add(ring.get(0).copy());
        return FACTORY.createPolygon(ring.toArray(new Coordinate[0]));
    }

    private static Geometry union(List<Outline> outlines) {
        Geometry all = FACTORY.createPolygon();
        for (Outline outline : outlines) {
            all = all.symDifference(polygon(outline));
        }
        return all;
    }
}
