package secondbolt.shape;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.triangulate.polygon.ConstrainedDelaunayTriangulator;

/**
 * Cuts a plane figure into convex polygons: triangles, joined again where what they make stays
 * convex.
 *
 * <p>Source: the joining is that of Hertel and Mehlhorn, Fast triangulation of simple polygons,
 * 1983 (from memory): at most four times as many parts as there must be.
 */
final class ConvexParts {
    private static final double DUST = 1e-9;

    private ConvexParts() {}

    /** The parts of a polygon, with holes or without. */
    static List<Outline> of(Geometry figure) {
        List<List<Coordinate>> parts = new ArrayList<>();
        Geometry triangles = ConstrainedDelaunayTriangulator.triangulate(figure);
        for (int i = 0; i < triangles.getNumGeometries(); i++) {
            Coordinate[] corners = triangles.getGeometryN(i).getCoordinates();
            List<Coordinate> part = new ArrayList<>(List.of(corners).subList(0, 3));
            if (area(part) < 0) {
                Collections.reverse(part);
            }
            parts.add(part);
        }
        boolean more = true;
        while (more) {
            more = joinTwo(parts);
        }
        return parts.stream().map(ConvexParts::outline).toList();
    }

    private static boolean joinTwo(List<List<Coordinate>> parts) {
        for (int i = 0; i < parts.size(); i++) {
            for (int j = i + 1; j < parts.size(); j++) {
                List<Coordinate> both = joined(parts.get(i), parts.get(j));
                if (!both.isEmpty()) {
                    parts.set(i, both);
                    parts.remove(j);
                    return true;
                }
            }
        }
        return false;
    }

    /** Both in one if they share an edge and make a convex one; else nothing. */
    private static List<Coordinate> joined(List<Coordinate> a, List<Coordinate> b) {
        for (int i = 0; i < a.size(); i++) {
            Coordinate from = a.get(i);
            Coordinate to = a.get((i + 1) % a.size());
            for (int j = 0; j < b.size(); j++) {
                if (b.get(j).equals2D(to) && b.get((j + 1) % b.size()).equals2D(from)) {
                    List<Coordinate> both = new ArrayList<>();
                    for (int k = 1; k <= a.size(); k++) {
                        both.add(a.get((i + k) % a.size()));
                    }
                    for (int k = 2; k < b.size(); k++) {
                        both.add(b.get((j + k) % b.size()));
                    }
                    return isConvex(both) ? both : List.of();
                }
            }
        }
        return List.of();
    }

    private static boolean isConvex(List<Coordinate> ring) {
        int n = ring.size();
        for (int i = 0; i < n; i++) {
            Coordinate a = ring.get(i);
            Coordinate b = ring.get((i + 1) % n);
            Coordinate c = ring.get((i + 2) % n);
            double cross = (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
            if (cross < -DUST) {
                return false;
            }
        }
        return true;
    }

    private static double area(List<Coordinate> ring) {
        double twice = 0;
        for (int i = 0; i < ring.size(); i++) {
            Coordinate a = ring.get(i);
            Coordinate b = ring.get((i + 1) % ring.size());
            twice += a.x * b.y - b.x * a.y;
        }
        return twice / 2;
    }

    private static Outline outline(List<Coordinate> ring) {
        return new Outline(ring.stream().map(c -> new Point(c.x, c.y)).toList());
    }
}
