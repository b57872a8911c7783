package secondbolt.tools;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import secondbolt.shape.Point;

/**
 * A cross by which a tile is joined to a neighbour, found on the tile's pixels.
 *
 * <p>It stands on the dashed line in the middle of the band that both tiles show. Its four arms are
 * measured beyond the ring or square that stands round it.
 */
final class JoinCross {
    /** Derived: the sheet's margin of 10 mm and half of the band of 10 mm that tiles share. */
    private static final double FROM_EDGE_MM = 15;

    /** Derived: the margin, and 18 mm that a cross keeps from the end of its dashed line. */
    private static final double FROM_END_MM = 28;

    /** Derived: the ring has a radius of 2 mm, an arm ends at 3.5 mm. */
    private static final double ON_ARM_MM = 2.75;

    private static final double REACH_MM = 1;

    /** An arm is 0.15 mm wide, a dash of the line under it 0.2 mm; more is something else. */
    private static final double WIDEST_MM = 0.28;

    /** The side of a tile at which a neighbour lies. */
    enum Side {
        TOP,
        BOTTOM,
        LEFT,
        RIGHT
    }

    private JoinCross() {}

    /** Both crosses of a side, each as far as it can be read; in the same order on both tiles. */
    static List<Optional<Point>> on(Raster page, Side side) {
        return about(page, side).map(about -> middle(page, about)).toList();
    }

    private static Stream<Point> about(Raster page, Side side) {
        double right = page.widthMm();
        double bottom = page.heightMm();
        return switch (side) {
            case TOP -> ends(right).mapToObj(x -> new Point(x, FROM_EDGE_MM));
            case BOTTOM -> ends(right).mapToObj(x -> new Point(x, bottom - FROM_EDGE_MM));
            case LEFT -> ends(bottom).mapToObj(y -> new Point(FROM_EDGE_MM, y));
            case RIGHT -> ends(bottom).mapToObj(y -> new Point(right - FROM_EDGE_MM, y));
        };
    }

    private static DoubleStream ends(double sideMm) {
        return DoubleStream.of(FROM_END_MM, sideMm - FROM_END_MM);
    }

    private static Optional<Point> middle(Raster page, Point about) {
        OptionalDouble across =
                arms().mapToObj(y -> page.through(about.moved(0, y), 1, 0, REACH_MM))
                        .flatMap(JoinCross::arm)
                        .mapToDouble(Raster.Run::middleMm)
                        .average();
        OptionalDouble along =
                arms().mapToObj(x -> page.through(about.moved(x, 0), 0, 1, REACH_MM))
                        .flatMap(JoinCross::arm)
                        .mapToDouble(Raster.Run::middleMm)
                        .average();
        return across.isPresent() && along.isPresent()
                ? Optional.of(about.moved(across.getAsDouble(), along.getAsDouble()))
                : Optional.empty();
    }

    private static DoubleStream arms() {
        return DoubleStream.of(-ON_ARM_MM, ON_ARM_MM);
    }

    private static Stream<Raster.Run> arm(List<Raster.Run> runs) {
        return runs.size() == 1 && runs.get(0).widthMm() < WIDEST_MM
                ? runs.stream()
                : Stream.empty();
    }
}
