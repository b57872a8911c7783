package secondbolt.lay.search;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import secondbolt.lay.kept.KeptLays;
import secondbolt.lay.placement.AllowedPositions;
import secondbolt.lay.placement.Container;
import secondbolt.lay.placement.Lay;
import secondbolt.lay.placement.PackingItem;
import secondbolt.lay.placement.Placement;
import secondbolt.lay.placement.PlacementRule;
import secondbolt.shape.Outline;

/**
 * Checks a lay with nothing of the search's own: the items are turned, moved and overlaid by the
 * JTS Topology Suite, a reference library for plane geometry.
 */
public final class LayChecker {
    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final double MOST_OVERLAP_MM2 = 0.01;
    private static final double SLACK_MM = 1e-3;
    private static final double STEP_SLACK_MM = 0.05;

    private LayChecker() {}

    /** What is wrong with a lay; nothing if it could be cut. */
    public static List<String> faults(
            List<PackingItem> items, List<Container> containers, double gapMm, Lay lay) {
        List<String> faults = new ArrayList<>();
        List<Geometry> lying = new ArrayList<>();
        boolean[] there = new boolean[items.size()];
        for (Placement placement : lay.placements()) {
            PackingItem item = items.get(placement.item());
            if (there[placement.item()]) {
                faults.add("item " + placement.item() + " is there twice");
            }
            there[placement.item()] = true;
            if (item.rules().stream().noneMatch(rule -> isSo(placement, rule))) {
                faults.add("item " + placement.item() + " lies in no way it may: " + placement);
            }
            Geometry shape = lying(item.outline(), placement);
            lying.add(shape);
            Container container = containers.get(placement.container());
            Geometry sound = union(container.grades().get(item.grade()).outlines());
            double beyond = OverlayNGRobust.overlay(shape, sound, OverlayNG.DIFFERENCE).getArea();
            if (beyond > MOST_OVERLAP_MM2) {
                faults.add("item " + placement.item() + " lies " + beyond + " mm² off the cloth");
            }
        }
        for (int out : lay.leftOver()) {
            if (there[out]) {
                faults.add("item " + out + " is laid and left out");
            }
            there[out] = true;
        }
        for (int i = 0; i < there.length; i++) {
            if (!there[i]) {
                faults.add("item " + i + " is lost");
            }
        }
        for (int i = 0; i < lying.size(); i++) {
            for (int j = i + 1; j < lying.size(); j++) {
                if (lay.placements().get(i).container() == lay.placements().get(j).container()) {
                    pair(
                            lay.placements().get(i),
                            lying.get(i),
                            lay.placements().get(j),
                            lying.get(j),
                            gapMm,
                            faults);
                }
            }
        }
        if (!KeptLays.isTaken(items, containers, gapMm, lay)) {
            faults.add("it would not be taken if it were kept");
        }
        return faults;
    }

    /** Whether it is turned as a rule says, and lies between its bounds and on one of its steps. */
    private static boolean isSo(Placement placement, PlacementRule rule) {
        return rule.orientation().equals(placement.orientation())
                && (rule.container().isEmpty()
                        || rule.container().getAsInt() == placement.container())
                && isOn(rule.across(), placement.acrossMm())
                && isOn(rule.along(), placement.alongMm());
    }

    private static boolean isOn(AllowedPositions positions, double at) {
        double steps =
                positions.everyMm() > 0 ? (at - positions.fromMm()) / positions.everyMm() : 0;
        return at >= positions.leastMm() - STEP_SLACK_MM
                && at <= positions.mostMm() + STEP_SLACK_MM
                && Math.abs(steps - Math.rint(steps)) * positions.everyMm() <= STEP_SLACK_MM;
    }

    private static void pair(
            Placement a,
            Geometry first,
            Placement b,
            Geometry second,
            double gapMm,
            List<String> faults) {
        double apart = first.distance(second);
        double over = OverlayNGRobust.overlay(first, second, OverlayNG.INTERSECTION).getArea();
        if (over > MOST_OVERLAP_MM2 || apart < gapMm - SLACK_MM) {
            faults.add(
                    a.item() + " and " + b.item() + ": overlap " + over + " mm², apart " + apart);
        }
    }

    private static Geometry lying(Outline outline, Placement placement) {
        AffineTransformation move = new AffineTransformation();
        if (placement.orientation().isMirrored()) {
            move.scale(-1, 1);
        }
        move.rotate(Math.toRadians(placement.orientation().turnDegrees()));
        move.translate(placement.acrossMm(), placement.alongMm());
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
