package secondbolt.draw.paper;

import java.util.List;
import secondbolt.draw.Pen;
import secondbolt.draw.Sketch;
import secondbolt.shape.Box;
import secondbolt.shape.Path;
import secondbolt.shape.Point;

/**
 * The marks by which a tile is joined to its neighbours: in the middle of the shared band a dashed
 * line, and on it, near both ends, a cross whose centre is the same point of the drawing on both
 * tiles. The ticks beside the cross are counted: one between the first and second row, two between
 * the second and third. Between rows a circle stands round the cross, between columns a square.
 */
public final class JoinMarks {
    public static final String WORDS =
            "Cut along the dotted lines at the top and on the left, lay this sheet over the one"
                    + " above or to the left until lines and crosses meet, and tape.";

    private static final Pen JOIN = new Pen(0.2, List.of(0.8, 0.8));
    private static final Pen CROSS = new Pen(0.15, List.of());
    private static final Pen TICK = new Pen(0.3, List.of());

    /** Clear of the bands of joins that run the other way, and of the ends of the line. */
    private static final double FROM_END_MM = 18;

    private static final double ARM_MM = 3.5;
    private static final double RING_MM = 2;
    private static final double FIRST_TICK_MM = 5;
    private static final double TICK_STEP_MM = 1.5;
    private static final double TICK_ARM_MM = 1.5;

    private final Sketch sketch;
    private final Box live;

    private JoinMarks(Sketch sketch, Box live) {
        this.sketch = sketch;
        this.live = live;
    }

    /** Draws the joins to all neighbours that are printed; says whether there was one. */
    public static boolean draw(Sketch sketch, Tiling tiling, Tiling.Tile tile) {
        Box live = tiling.area().live();
        JoinMarks marks = new JoinMarks(sketch, live);
        double half = Tiling.OVERLAP_MM / 2;
        int row = tile.row();
        int column = tile.column();
        boolean any = false;
        if (tiling.isPrinted(row - 1, column)) {
            any = marks.betweenRows(live.topMm() + half, row - 1);
        }
        if (tiling.isPrinted(row + 1, column)) {
            any = marks.betweenRows(live.bottomMm() - half, row);
        }
        if (tiling.isPrinted(row, column - 1)) {
            any = marks.betweenColumns(live.leftMm() + half, column - 1);
        }
        if (tiling.isPrinted(row, column + 1)) {
            any = marks.betweenColumns(live.rightMm() - half, column);
        }
        return any;
    }

    private boolean betweenRows(double y, int ticks) {
        sketch.line(new Point(live.leftMm(), y), new Point(live.rightMm(), y), JOIN);
        for (double x : ends(live.leftMm(), live.rightMm())) {
            Point centre = new Point(x, y);
            cross(centre);
            sketch.line(Path.circle(centre, RING_MM), CROSS);
            double step = step(live.middle().xMm() - x, ticks);
            for (int i = 0; i < ticks; i++) {
                tick(centre.moved(start(step) + i * step, 0), 0, TICK_ARM_MM);
            }
        }
        return true;
    }

    private boolean betweenColumns(double x, int ticks) {
        sketch.line(new Point(x, live.topMm()), new Point(x, live.bottomMm()), JOIN);
        for (double y : ends(live.topMm(), live.bottomMm())) {
            Point centre = new Point(x, y);
            cross(centre);
            sketch.box(Box.between(centre, centre).grown(RING_MM), CROSS);
            double step = step(live.middle().yMm() - y, ticks);
            for (int i = 0; i < ticks; i++) {
                tick(centre.moved(0, start(step) + i * step), TICK_ARM_MM, 0);
            }
        }
        return true;
    }

    private static List<Double> ends(double from, double to) {
        return List.of(from + FROM_END_MM, to - FROM_END_MM);
    }

    /** From the cross towards the middle of the page, closer together where there are many. */
    private static double step(double toMiddleMm, int ticks) {
        double room = Math.abs(toMiddleMm) - FIRST_TICK_MM;
        return Math.copySign(Math.min(TICK_STEP_MM, room / ticks), toMiddleMm);
    }

    private static double start(double step) {
        return Math.copySign(FIRST_TICK_MM, step);
    }

    private void cross(Point centre) {
        sketch.line(centre.moved(-ARM_MM, 0), centre.moved(ARM_MM, 0), CROSS);
        sketch.line(centre.moved(0, -ARM_MM), centre.moved(0, ARM_MM), CROSS);
    }

    private void tick(Point middle, double across, double along) {
        sketch.line(middle.moved(-across, -along), middle.moved(across, along), TICK);
    }
}
