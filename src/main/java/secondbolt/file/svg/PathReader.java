package secondbolt.file.svg;

import java.util.ArrayList;
import java.util.List;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Path;
import secondbolt.shape.Point;

/**
 * Reads the {@code d} of a path: one run of steps, in the units of the drawing.
 *
 * <p>Source: SVG 1.1 (Second Edition), section 8.3 for the commands, appendix F.6 for the arc.
 */
final class PathReader {
    private static final String ONE_RUN = "one path for each edge";

    private final Cursor cursor;
    private final List<Path.Step> steps = new ArrayList<>();
    private Point start = Point.ORIGIN;
    private Point at = Point.ORIGIN;

    /** Where S or T mirrors its control point from; the point itself after other commands. */
    private Point cubicControl = Point.ORIGIN;

    private Point quadControl = Point.ORIGIN;

    private PathReader(String d) {
        cursor = new Cursor(d);
    }

    static EdgeLine read(String d) throws Slip {
        PathReader reader = new PathReader(d);
        reader.readAll();
        return new EdgeLine(reader.start, reader.steps);
    }

    private void readAll() throws Slip {
        cursor.passBlanks();
        if (cursor.peek() != 'M' && cursor.peek() != 'm') {
            throw new Slip(cursor.at(), cursor.ahead(), "M and the first point of the path");
        }
        move(cursor.take() == 'm');
        boolean closed = false;
        while (!cursor.isAtEnd()) {
            int place = cursor.at();
            String ahead = cursor.ahead();
            char command = cursor.take();
            if (command == 'M' || command == 'm') {
                throw new Slip(place, "a path that leaves off and goes on elsewhere", ONE_RUN);
            }
            if (closed) {
                throw new Slip(place, "more of a path after it closed", ONE_RUN);
            }
            if (command == 'Z' || command == 'z') {
                closed = true;
                cursor.passBlanks();
                close();
            } else if ("LlHhVvCcSsQqTtAa".indexOf(command) < 0) {
                throw new Slip(place, ahead, "one of the commands M L H V C S Q T A Z");
            } else {
                repeated(command);
            }
        }
        if (steps.isEmpty()) {
            throw new Slip(0, "a path without a line", "a path of one step or more");
        }
    }

    private void move(boolean relative) throws Slip {
        cursor.passBlanks();
        start = point(false);
        arrive(start, start, start);
        while (cursor.isAtNumber()) {
            straight(point(relative));
        }
    }

    private void add(Path.Step step) throws Slip {
        steps.add(step);
        Bounds.checkSteps(steps.size(), cursor.at());
    }

    private void close() throws Slip {
        if (at.distanceMm(start) > 0) {
            straight(start);
        }
    }

    private void repeated(char command) throws Slip {
        cursor.passBlanks();
        do {
            step(Character.toUpperCase(command), Character.isLowerCase(command));
        } while (cursor.isAtNumber());
    }

    private void step(char command, boolean relative) throws Slip {
        switch (command) {
            case 'L' -> straight(point(relative));
            case 'H' -> straight(new Point(coordinate(relative, at.xMm()), at.yMm()));
            case 'V' -> straight(new Point(at.xMm(), coordinate(relative, at.yMm())));
            case 'C' -> curve(point(relative), point(relative), point(relative));
            case 'S' -> curve(mirrored(cubicControl), point(relative), point(relative));
            case 'Q' -> quadratic(point(relative), point(relative));
            case 'T' -> quadratic(mirrored(quadControl), point(relative));
            default -> arc(relative);
        }
    }

    private double coordinate(boolean relative, double own) throws Slip {
        return cursor.number() + (relative ? own : 0);
    }

    private Point point(boolean relative) throws Slip {
        double x = coordinate(relative, at.xMm());
        return new Point(x, coordinate(relative, at.yMm()));
    }

    private Point mirrored(Point control) {
        return new Point(2 * at.xMm() - control.xMm(), 2 * at.yMm() - control.yMm());
    }

    private void arrive(Point to, Point cubic, Point quad) {
        at = to;
        cubicControl = cubic;
        quadControl = quad;
    }

    /** A step to where it begins draws nothing. */
    private void straight(Point to) throws Slip {
        if (at.distanceMm(to) > 0) {
            add(new Path.Straight(to));
        }
        arrive(to, to, to);
    }

    private void curve(Point leave, Point control, Point to) throws Slip {
        add(leave, control, to);
        arrive(to, control, to);
    }

    private void add(Point leave, Point control, Point to) throws Slip {
        if (at.distanceMm(leave) + at.distanceMm(control) + at.distanceMm(to) > 0) {
            add(new Path.Curve(leave, control, to));
        }
    }

    /** A quadratic is the cubic whose arms are two thirds of the way to its control point. */
    private void quadratic(Point control, Point to) throws Slip {
        add(between(at, control, 2.0 / 3), between(to, control, 2.0 / 3), to);
        arrive(to, to, control);
    }

    private static Point between(Point a, Point b, double share) {
        return new Point(
                a.xMm() + (b.xMm() - a.xMm()) * share, a.yMm() + (b.yMm() - a.yMm()) * share);
    }

    private void arc(boolean relative) throws Slip {
        int place = cursor.at();
        double across = Math.abs(cursor.number());
        double along = Math.abs(cursor.number());
        double degrees = cursor.number();
        boolean large = cursor.flag();
        boolean sweep = cursor.flag();
        Point to = point(relative);
        if (across == 0 || along == 0) {
            straight(to);
        } else if (at.distanceMm(to) > 0) {
            List<Path.Step> arc = EllipseArc.of(at, to, across, along, degrees, large, sweep);
            if (arc.isEmpty()) {
                throw new Slip(
                        place, "an arc that is too flat or too large", "radii near its size");
            }
            for (Path.Step step : arc) {
                add(step);
            }
            arrive(to, to, to);
        }
    }
}
