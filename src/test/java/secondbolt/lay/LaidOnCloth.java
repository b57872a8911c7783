package secondbolt.lay;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import secondbolt.cloth.yields.ClothYield;
import secondbolt.lay.piece.LaidPiece;
import secondbolt.lay.stock.PlacementRules;
import secondbolt.lay.stock.SpreadCloth;
import secondbolt.lay.stock.StockLay;
import secondbolt.shape.Outline;
import secondbolt.shape.Region;

/**
 * Checks what a maker would cut, copy by copy on the cloth laid out single, with the JTS Topology
 * Suite, a reference library for plane geometry: on sound cloth, none on another, every left with
 * its right.
 */
final class LaidOnCloth {
    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final double DUST_MM2 = 0.01;

    private LaidOnCloth() {}

    /** What is wrong with a lay; nothing if it could be cut. */
    static List<String> faults(StockLay stock) {
        List<String> faults = new ArrayList<>();
        List<List<Geometry>> lying = new ArrayList<>();
        stock.spreads().forEach(spread -> lying.add(new ArrayList<>()));
        Map<String, Integer> hands = new HashMap<>();
        for (LaidPiece laid : stock.laid()) {
            SpreadCloth spread = stock.spreads().get(laid.cloth());
            ClothYield yielded = spread.cloth().orElseThrow().finished().orElseThrow();
            Region sound = laid.piece().isHidden() ? yielded.soundForHidden() : yielded.sound();
            for (ClothYield.Kept kept : yielded.kept()) {
                sound =
                        PlacementRules.isOf(laid.piece(), kept.edge())
                                ? sound.with(kept.sound())
                                : sound;
            }
            for (LaidPiece.Copy copy : laid.copies(spread.fold())) {
                Geometry shape = polygon(copy.outline());
                double beyond =
                        OverlayNGRobust.overlay(shape, union(sound), OverlayNG.DIFFERENCE)
                                .getArea();
                if (beyond > DUST_MM2) {
                    faults.add(laid.piece().words() + " lies " + beyond + " mm² off the cloth");
                }
                lying.get(laid.cloth()).add(shape);
                hands.merge(laid.piece().piece().name() + " " + copy.isMirrored(), 1, Integer::sum);
            }
        }
        lying.forEach(shapes -> overlaps(shapes, faults));
        hands(stock, hands, faults);
        return faults;
    }

    private static void overlaps(List<Geometry> shapes, List<String> faults) {
        for (int i = 0; i < shapes.size(); i++) {
            for (int j = i + 1; j < shapes.size(); j++) {
                double over =
                        OverlayNGRobust.overlay(
                                        shapes.get(i), shapes.get(j), OverlayNG.INTERSECTION)
                                .getArea();
                if (over > DUST_MM2) {
                    faults.add(i + " and " + j + " overlap by " + over + " mm²");
                }
            }
        }
    }

    private static void hands(StockLay stock, Map<String, Integer> hands, List<String> faults) {
        for (LaidPiece laid : stock.laid()) {
            var cut = laid.piece().piece().cuts().get(stock.role());
            String name = laid.piece().piece().name();
            int right = hands.getOrDefault(name + " false", 0);
            int left = hands.getOrDefault(name + " true", 0);
            if (cut.mirrored() && right != left && stock.fits()) {
                faults.add(name + " " + right + " right and " + left + " left");
            }
        }
    }

    private static Geometry union(Region region) {
        Geometry all = FACTORY.createPolygon();
        for (Outline outline : region.outlines()) {
            all = all.symDifference(polygon(outline));
        }
        return all;
    }

    private static Geometry polygon(Outline outline) {
        List<Coordinate> ring = new ArrayList<>();
        outline.corners().forEach(c -> ring.add(new Coordinate(c.xMm(), c.yMm())));
        ring.add(ring.get(0).copy());
        return FACTORY.createPolygon(ring.toArray(new Coordinate[0]));
    }
}
