package secondbolt.file.svg;

import java.util.ArrayList;
import java.util.List;
import secondbolt.measure.Plural;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Path;
import secondbolt.shape.Point;

/**
 * A change of coordinates: x' = a x + c y + e, y' = b x + d y + f.
 *
 * <p>Source: SVG 1.1 (Second Edition), section 7.4.
 */
record Affine(double a, double b, double c, double d, double e, double f) {
    /** Less of an area, for the longer side of what a square becomes, is none. */
    private static final double SQUEEZED = 1e-6;

    static final Affine NONE = new Affine(1, 0, 0, 1, 0, 0);

    /** This after the other, as a group's transform stands before that of its member. */
    Affine times(Affine inner) {
        return new Affine(
                a * inner.a + c * inner.b,
                b * inner.a + d * inner.b,
                a * inner.c + c * inner.d,
                b * inner.c + d * inner.d,
                a * inner.e + c * inner.f + e,
                b * inner.e + d * inner.f + f);
    }

    /**
     * Whether an area stays one: nothing is squeezed to a line, and no figure is beyond all use.
     */
    boolean isSound() {
        double square = Math.max(a * a + b * b, c * c + d * d);
        double area = Math.abs(a * d - b * c);
        return area > SQUEEZED * square && Double.isFinite(area + square + e + f);
    }

    Point of(Point p) {
        return new Point(a * p.xMm() + c * p.yMm() + e, b * p.xMm() + d * p.yMm() + f);
    }

    EdgeLine of(EdgeLine edge) {
        List<Path.Step> steps = new ArrayList<>();
        edge.steps().forEach(step -> steps.add(step.accept(new Changed(this))));
        return new EdgeLine(of(edge.start()), steps);
    }

    private record Changed(Affine by) implements Path.Visitor<Path.Step> {
        @Override
        public Path.Step move(Path.Move move) {
            return new Path.Move(by.of(move.to()));
        }

        @Override
        public Path.Step straight(Path.Straight straight) {
            return new Path.Straight(by.of(straight.to()));
        }

        @Override
        public Path.Step curve(Path.Curve curve) {
            return new Path.Curve(by.of(curve.leave()), by.of(curve.arrive()), by.of(curve.to()));
        }

        @Override
        public Path.Step close(Path.Close close) {
            return close;
        }
    }

    static Affine moved(double x, double y) {
        return new Affine(1, 0, 0, 1, x, y);
    }

    static Affine turned(double degrees) {
        double radians = Math.toRadians(degrees);
        double cos = StrictMath.cos(radians);
        double sin = StrictMath.sin(radians);
        return new Affine(cos, sin, -sin, cos, 0, 0);
    }

    /** Reads the value of a {@code transform} attribute. */
    static Affine parse(String text) throws Slip {
        Cursor cursor = new Cursor(text);
        Affine all = NONE;
        cursor.passSeparator();
        while (!cursor.isAtEnd()) {
            int at = cursor.at();
            String word = cursor.word();
            cursor.passBlanks();
            if (!cursor.takes('(')) {
                throw new Slip(at, cursor.ahead(), "a transform such as translate(10, 20)");
            }
            cursor.passBlanks();
            List<Double> numbers = new ArrayList<>();
            while (!cursor.takes(')')) {
                numbers.add(cursor.number());
            }
            all = all.times(one(word, numbers, at));
            cursor.passSeparator();
        }
        return all;
    }

    private static Affine one(String word, List<Double> n, int at) throws Slip {
        String form = word + " " + n.size();
        return switch (form) {
            case "matrix 6" ->
                    new Affine(n.get(0), n.get(1), n.get(2), n.get(3), n.get(4), n.get(5));
            case "translate 1" -> moved(n.get(0), 0);
            case "translate 2" -> moved(n.get(0), n.get(1));
            case "scale 1" -> new Affine(n.get(0), 0, 0, n.get(0), 0, 0);
            case "scale 2" -> new Affine(n.get(0), 0, 0, n.get(1), 0, 0);
            case "rotate 1" -> turned(n.get(0));
            case "rotate 3" ->
                    moved(n.get(1), n.get(2))
                            .times(turned(n.get(0)))
                            .times(moved(-n.get(1), -n.get(2)));
            case "skewX 1" -> new Affine(1, 0, StrictMath.tan(Math.toRadians(n.get(0))), 1, 0, 0);
            case "skewY 1" -> new Affine(1, StrictMath.tan(Math.toRadians(n.get(0))), 0, 1, 0, 0);
            default ->
                    throw new Slip(
                            at,
                            "the transform `" + word + "` with " + Plural.of(n.size(), "number"),
                            "matrix with 6 numbers, translate or scale with 1 or 2, rotate with"
                                    + " 1 or 3, skewX or skewY with 1");
        };
    }
}
