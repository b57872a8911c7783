package secondbolt.bench;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import secondbolt.pattern.piece.NamedEdge;
import secondbolt.pattern.piece.Piece;
import secondbolt.pattern.piece.PieceShape;
import secondbolt.shape.Path;
import secondbolt.shape.Point;

/**
 * The least that geometry of others can do for a fit and its cutting lines: measure each edge once
 * before the alterations and once after them, and draw one line of one width round each piece. It
 * alters nothing, keeps no edge apart and follows no seam.
 */
final class GeometryFloor {
    /** Lengths come out within some thousandths of a millimetre, as they must be for a seam. */
    private static final double FLAT_MM = 0.001;

    /** As near as the cutting lines are drawn. */
    private static final double CUT_FLAT_MM = 0.02;

    private static final double ALLOWANCE_MM = 15;
    private static final int MITRE_LIMIT = 4;

    private final List<Path2D> edges = new ArrayList<>();
    private final List<Path2D> outlines = new ArrayList<>();

    /** Keeps the edges of all pieces, before and after, and the outlines of those after. */
    GeometryFloor(List<Piece> before, List<Piece> after) {
        before.stream().map(GeometryFloor::drawn).forEach(this::keepEdges);
        after.stream().map(GeometryFloor::drawn).forEach(this::keepEdges);
        after.stream().map(GeometryFloor::drawn).forEach(this::keepOutline);
    }

    private static PieceShape.Drawn drawn(Piece piece) {
        return piece.shape().asDrawn().orElseThrow();
    }

    private void keepEdges(PieceShape.Drawn shape) {
        for (NamedEdge edge : shape.edges()) {
            Path2D path = new Path2D.Double();
            edge.line().path().steps().forEach(step -> step.accept(new Adding(path)));
            edges.add(path);
        }
    }

    private void keepOutline(PieceShape.Drawn shape) {
        Path2D path = new Path2D.Double();
        Point start = shape.edges().get(0).line().start();
        path.moveTo(start.xMm(), start.yMm());
        for (NamedEdge edge : shape.edges()) {
            edge.line().steps().forEach(step -> step.accept(new Adding(path)));
        }
        outlines.add(path);
    }

    /** Adds steps to a path of the JDK. */
    private record Adding(Path2D to) implements Path.Visitor<Void> {
        @Override
        public Void move(Path.Move move) {
            to.moveTo(move.to().xMm(), move.to().yMm());
            return null;
        }

        @Override
        public Void straight(Path.Straight straight) {
            to.lineTo(straight.to().xMm(), straight.to().yMm());
            return null;
        }

        @Override
        public Void curve(Path.Curve curve) {
            to.curveTo(
                    curve.leave().xMm(),
                    curve.leave().yMm(),
                    curve.arrive().xMm(),
                    curve.arrive().yMm(),
                    curve.to().xMm(),
                    curve.to().yMm());
            return null;
        }

        @Override
        public Void close(Path.Close close) {
            to.closePath();
            return null;
        }
    }

    /** How long all edges are together, before and after, in millimetres. */
    double lengthsMm() {
        double sum = 0;
        for (Path2D edge : edges) {
            List<Coordinate> points = flattened(edge, FLAT_MM);
            for (int i = 1; i < points.size(); i++) {
                sum += points.get(i).distance(points.get(i - 1));
            }
        }
        return sum;
    }

    /** How many corners lines round all pieces have together. */
    int cornersOfCuttingLines() {
        GeometryFactory factory = new GeometryFactory();
        BufferParameters mitred =
                new BufferParameters(
                        8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, MITRE_LIMIT);
        int corners = 0;
        for (Path2D outline : outlines) {
            List<Coordinate> ring = flattened(outline, CUT_FLAT_MM);
            ring.set(ring.size() - 1, ring.get(0));
            Polygon polygon = factory.createPolygon(ring.toArray(Coordinate[]::new));
            Geometry line = new BufferOp(polygon, mitred).getResultGeometry(ALLOWANCE_MM);
            corners += line.getNumPoints();
        }
        return corners;
    }

    private static List<Coordinate> flattened(Path2D path, double flatMm) {
        List<Coordinate> points = new ArrayList<>();
        double[] at = new double[6];
        for (PathIterator i = path.getPathIterator(null, flatMm); !i.isDone(); i.next()) {
            i.currentSegment(at);
            points.add(new Coordinate(at[0], at[1]));
        }
        return points;
    }
}
