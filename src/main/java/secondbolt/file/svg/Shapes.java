package secondbolt.file.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Path;
import secondbolt.shape.Point;

/**
 * The lines of one element, in the units of the drawing.
 *
 * <p>Source: SVG 1.1 (Second Edition), chapters 8 and 9.
 *
 * @param attributes finds an attribute's value
 */
record Shapes(Function<String, Optional<String>> attributes) {
    /** One side of a rect. */
    record Side(String name, EdgeLine line) {}

    EdgeLine line(String element) throws Slip {
        return switch (element) {
            case "path" -> PathReader.read(attributes.apply("d").orElse(""));
            case "line" ->
                    straight(
                            List.of(
                                    new Point(number("x1"), number("y1")),
                                    new Point(number("x2"), number("y2"))));
            case "polyline" -> straight(points());
            default -> straight(closed(points()));
        };
    }

    private double number(String name) throws Slip {
        Cursor cursor = new Cursor(attributes.apply(name).orElse("0"));
        cursor.passBlanks();
        String ahead = cursor.ahead();
        double value = cursor.number();
        if (!cursor.isAtEnd()) {
            throw new Slip(0, name + " of " + ahead, "a number in the drawing's units");
        }
        return value;
    }

    private List<Point> points() throws Slip {
        Cursor cursor = new Cursor(attributes.apply("points").orElse(""));
        cursor.passBlanks();
        List<Point> points = new ArrayList<>();
        while (!cursor.isAtEnd()) {
            double x = cursor.number();
            points.add(new Point(x, cursor.number()));
        }
        return points;
    }

    private static List<Point> closed(List<Point> points) {
        List<Point> all = new ArrayList<>(points);
        if (!all.isEmpty()) {
            all.add(all.get(0));
        }
        return all;
    }

    private static EdgeLine straight(List<Point> points) throws Slip {
        List<Path.Step> steps = new ArrayList<>();
        Bounds.checkSteps(points.size(), 0);
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i).distanceMm(points.get(i - 1)) > 0) {
                steps.add(new Path.Straight(points.get(i)));
            }
        }
        if (steps.isEmpty()) {
            throw new Slip(0, "an edge without a length", "two points or more");
        }
        return new EdgeLine(points.get(0), steps);
    }

    /** The sides of a rect, clockwise. */
    List<Side> sides() throws Slip {
        double left = number("x");
        double top = number("y");
        double width = number("width");
        double height = number("height");
        if (!(width > 0) || !(height > 0)) {
            throw new Slip(0, "a rect without a size", "width and height above zero");
        }
        if (number("rx") > 0 || number("ry") > 0) {
            throw new Slip(0, "a rect with round corners", "its line as a path");
        }
        Point a = new Point(left, top);
        Point b = a.moved(width, 0);
        Point c = b.moved(0, height);
        Point d = a.moved(0, height);
        return List.of(
                new Side("top", EdgeLine.straight(a, b)),
                new Side("right", EdgeLine.straight(b, c)),
                new Side("bottom", EdgeLine.straight(c, d)),
                new Side("left", EdgeLine.straight(d, a)));
    }
}
