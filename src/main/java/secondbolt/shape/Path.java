package secondbolt.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * A run of straight and curved steps in millimetres; the first step moves to the start.
 *
 * @param steps in order
 */
public record Path(List<Step> steps) {
    /** One step of a path. */
    public sealed interface Step {
        /** Answers with the function for the kind of step. */
        <R> R accept(Visitor<R> visitor);
    }

    /** One answer for each kind of step. */
    public interface Visitor<R> {
        /** Answers for a move without a line. */
        R move(Move move);

        /** Answers for a straight step. */
        R straight(Straight straight);

        /** Answers for a curved step. */
        R curve(Curve curve);

        /** Answers for the way back to the start. */
        R close(Close close);
    }

    /**
     * Begins at a point.
     *
     * @param to the point
     */
    public record Move(Point to) implements Step {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.move(this);
        }
    }

    /**
     * Goes straight to a point.
     *
     * @param to the point
     */
    public record Straight(Point to) implements Step {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.straight(this);
        }
    }

    /**
     * Goes to a point along a cubic curve.
     *
     * @param leave the control point of the beginning
     * @param arrive the control point of the end
     * @param to the end
     */
    public record Curve(Point leave, Point arrive, Point to) implements Step {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.curve(this);
        }
    }

    /** Goes straight back to where the path began. */
    public record Close() implements Step {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.close(this);
        }
    }

    /** The control arm of a quarter circle as a cubic, as a share of its radius. */
    private static final double QUARTER_ARM = 4.0 / 3.0 * (Math.sqrt(2) - 1);

    /** Copies the steps and checks that the path begins with a move. */
    public Path {
        steps = List.copyOf(steps);
        if (steps.isEmpty() || !(steps.get(0) instanceof Move)) {
            throw new IllegalArgumentException("a path must begin with a move");
        }
    }

    /** A straight line. */
    public static Path line(Point from, Point to) {
        return new Path(List.of(new Move(from), new Straight(to)));
    }

    /** The sides of a box, closed. */
    public static Path of(Box box) {
        return polygon(
                List.of(
                        new Point(box.leftMm(), box.topMm()),
                        new Point(box.rightMm(), box.topMm()),
                        new Point(box.rightMm(), box.bottomMm()),
                        new Point(box.leftMm(), box.bottomMm())));
    }

    /** Straight steps through the corners and back to the first. */
    public static Path polygon(List<Point> corners) {
        List<Step> steps = new ArrayList<>();
        for (Point corner : corners) {
            steps.add(steps.isEmpty() ? new Move(corner) : new Straight(corner));
        }
        steps.add(new Close());
        return new Path(steps);
    }

    /** Straight steps through the points, not closed. */
    public static Path through(List<Point> points) {
        List<Step> steps = new ArrayList<>();
        points.forEach(p -> steps.add(steps.isEmpty() ? new Move(p) : new Straight(p)));
        return new Path(steps);
    }

    /** A circle, as four cubics that stray from it by less than a thirty-sixth of a percent. */
    public static Path circle(Point middle, double radiusMm) {
        double arm = radiusMm * QUARTER_ARM;
        double x = middle.xMm();
        double y = middle.yMm();
        double r = radiusMm;
        return new Path(
                List.of(
                        new Move(new Point(x + r, y)),
                        curve(x + r, y + arm, x + arm, y + r, x, y + r),
                        curve(x - arm, y + r, x - r, y + arm, x - r, y),
                        curve(x - r, y - arm, x - arm, y - r, x, y - r),
                        curve(x + arm, y - r, x + r, y - arm, x + r, y),
                        new Close()));
    }

    /** The same steps with every point moved; the way must keep straight lines straight. */
    public Path moved(UnaryOperator<Point> way) {
        Visitor<Step> mover =
                new Visitor<>() {
                    @Override
                    public Step move(Move move) {
                        return new Move(way.apply(move.to()));
                    }

                    @Override
                    public Step straight(Straight straight) {
                        return new Straight(way.apply(straight.to()));
                    }

                    @Override
                    public Step curve(Curve curve) {
                        return new Curve(
                                way.apply(curve.leave()),
                                way.apply(curve.arrive()),
                                way.apply(curve.to()));
                    }

                    @Override
                    public Step close(Close close) {
                        return close;
                    }
                };
        return new Path(steps.stream().map(step -> step.accept(mover)).toList());
    }

    private static Curve curve(double x1, double y1, double x2, double y2, double x, double y) {
        return new Curve(new Point(x1, y1), new Point(x2, y2), new Point(x, y));
    }
}
