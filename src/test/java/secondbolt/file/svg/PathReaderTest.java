package secondbolt.file.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Point;

/** Every path command, held against values by hand and java.awt.geom. */
class PathReaderTest {
    private static void assertSame(EdgeLine expected, EdgeLine found) {
        assertEquals(expected.steps().size(), found.steps().size());
        List<Point> a = expected.flattened(0.01);
        List<Point> b = found.flattened(0.01);
        assertEquals(a.size(), b.size());
        for (int i = 0; i < a.size(); i++) {
            assertEquals(0, a.get(i).distanceMm(b.get(i)), 1e-9);
        }
    }

    /** By hand: each pair is the same line, the second in absolute L and C alone. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = ';',
            value = {
                "M10 20 30 40; M10,20L30,40",
                "m10 20 30 40; M10,20L40,60",
                "M1 2 l3 4 5-6; M1,2L4,6L9,0",
                "M1 2 H9 h-3; M1,2L9,2L6,2",
                "M1 2 V9 v-3; M1,2L1,9L1,6",
                "M1 1h8v8z; M1,1L9,1L9,9L1,1",
                "M1 1h8v8H1V1z; M1,1L9,1L9,9L1,9L1,1",
                "M1 2c1 2 3 4 5 6; M1,2C2,4 4,6 6,8",
                "M0 0C1 2 3 4 5 6S9 9 20 20; M0,0C1,2 3,4 5,6C7,8 9,9 20,20",
                "M0 0c1 2 3 4 5 6s4 3 15 14; M0,0C1,2 3,4 5,6C7,8 9,9 20,20",
                "M0 0L5 6S9 9 20 20; M0,0L5,6C5,6 9,9 20,20",
                "M0 0Q3 6 9 0; M0,0C2,4 5,4 9,0",
                "M0 0q3 6 9 0t9 0; M0,0C2,4 5,4 9,0C13,-4 16,-4 18,0",
                "M0 0Q3 6 9 0T18 0; M0,0C2,4 5,4 9,0C13,-4 16,-4 18,0",
                "M0 0L9 0T18 6; M0,0L9,0C9,0 12,2 18,6",
                "M.5.5L1e1-2.5E-1; M0.5,0.5L10,-0.25",
                "M1 1 A0 5 0 0 1 9 9; M1,1L9,9",
            })
    void readsEachCommand(String d, String same) throws Slip {
        assertSame(PathReader.read(same), PathReader.read(d));
    }

    /** The quadratic's own curve, not only its cubic: against java.awt.geom. */
    @Test
    void drawsAQuadraticAsAwtDoes() throws Slip {
        Path2D path = new Path2D.Double();
        path.moveTo(10, 20);
        path.quadTo(60, 180, 200, 30);
        EdgeLine edge = PathReader.read("M10 20Q60 180 200 30");
        double[] c = new double[6];
        PathIterator flat = path.getPathIterator(null, 0.001);
        for (; !flat.isDone(); flat.next()) {
            flat.currentSegment(c);
            assertEquals(0, edge.distanceMm(new Point(c[0], c[1])), 0.002);
        }
    }

    /** By hand: arcs of the circle of radius 50 whose ends are 60 apart, 40 from the middle. */
    @ParameterizedTest(name = "large {0}, sweep {1}")
    @CsvSource({"0, 1, 40", "0, 0, -40", "1, 1, -40", "1, 0, 40"})
    void findsTheMiddleOfAnArc(String large, String sweep, double middleY) throws Slip {
        EdgeLine arc = PathReader.read("M-30 0A50 50 0 %s %s 30 0".formatted(large, sweep));
        Point middle = new Point(0, middleY);
        for (Point point : arc.flattened(0.01)) {
            assertEquals(50, point.distanceMm(middle), 1e-5);
        }
        double small = 2 * Math.asin(0.6) * 50;
        double length = large.equals("1") ? 2 * Math.PI * 50 - small : small;
        assertEquals(length, arc.lengthMm(), 1e-4);
        // Sweep 1 turns clockwise on paper: from the left end it goes up first.
        assertEquals(sweep.equals("1") ? -1 : 1, Math.signum(arc.directionAt(0).yMm()));
        assertEquals(new Point(30, 0), arc.end());
    }

    /** Flags may follow each other without a gap; radii too small are enlarged to reach. */
    @Test
    void readsArcsWrittenTightly() throws Slip {
        assertSame(PathReader.read("M0 0A10 10 0 0 1 20 0"), PathReader.read("M0 0a1 1 0 0120 0"));
        assertEquals(Math.PI * 10, PathReader.read("M0 0a1 1 0 0120 0").lengthMm(), 1e-5);
    }

    /** Points of a turned ellipse satisfy its equation about the middle of the chord. */
    @Test
    void turnsAnEllipse() throws Slip {
        double turn = Math.toRadians(30);
        double x = 60 * Math.cos(turn);
        double y = 60 * Math.sin(turn);
        EdgeLine arc = PathReader.read("M%s %sA60 25 30 0 1 %s %s".formatted(-x, -y, x, y));
        for (Point p : arc.flattened(0.01)) {
            double u = p.xMm() * Math.cos(turn) + p.yMm() * Math.sin(turn);
            double v = -p.xMm() * Math.sin(turn) + p.yMm() * Math.cos(turn);
            assertEquals(1, u * u / 3600 + v * v / 625, 1e-6);
        }
    }
}
