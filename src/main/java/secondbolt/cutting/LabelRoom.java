package secondbolt.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.draw.Align;
import secondbolt.draw.Mark;
import secondbolt.draw.Sketch;
import secondbolt.shape.Box;
import secondbolt.shape.InsideTest;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;

/**
 * Finds room for labels, so that none lies on another or on what must be seen. Not for sharing: it
 * remembers what it has placed.
 */
final class LabelRoom {
    /** How far apart the small boxes stand that stand in for a line. */
    private static final double STEP_MM = 1;

    private final BoxGrid taken = new BoxGrid();
    private final Optional<InsideTest> inside;

    /** Labels must lie inside this outline, if one is given. */
    LabelRoom(Optional<Outline> inside) {
        this.inside = inside.map(InsideTest::new);
    }

    /** Keeps a line clear, and so much on both sides. */
    void take(Point from, Point to, double besideMm) {
        int steps = Math.max(1, (int) Math.ceil(from.distanceMm(to) / STEP_MM));
        for (int i = 0; i <= steps; i++) {
            Point at = mix(from, to, (double) i / steps);
            taken.add(Box.between(at, at).grown(besideMm));
        }
    }

    /** Whether a point is free of all that was taken. */
    boolean isFree(Point at, double besideMm) {
        Box box = Box.between(at, at).grown(besideMm);
        return !taken.overlaps(box);
    }

    /** Whether a label has room. */
    boolean fits(Mark.Label label) {
        return cells(label).stream().allMatch(this::isFree);
    }

    private boolean isFree(Box cell) {
        return !taken.overlaps(cell) && inside.map(outline -> isInside(outline, cell)).orElse(true);
    }

    private static boolean isInside(InsideTest outline, Box cell) {
        return outline.contains(new Point(cell.leftMm(), cell.topMm()))
                && outline.contains(new Point(cell.rightMm(), cell.topMm()))
                && outline.contains(new Point(cell.leftMm(), cell.bottomMm()))
                && outline.contains(new Point(cell.rightMm(), cell.bottomMm()));
    }

    /** Writes the labels and keeps them clear. */
    void write(Sketch sketch, List<Mark.Label> labels) {
        for (Mark.Label label : labels) {
            sketch.add(label);
            cells(label).forEach(taken::add);
        }
    }

    /** Writes the first group of labels that has room; says whether there was one. */
    boolean writeFirst(Sketch sketch, List<List<Mark.Label>> candidates) {
        return writeFirst(sketch, candidates.stream());
    }

    /** The same; groups behind the first that has room are never asked for. */
    boolean writeFirst(Sketch sketch, Stream<List<Mark.Label>> candidates) {
        Optional<List<Mark.Label>> first =
                candidates.filter(labels -> labels.stream().allMatch(this::fits)).findFirst();
        first.ifPresent(labels -> write(sketch, labels));
        return first.isPresent();
    }

    /** Small boxes along the label's letters, whichever way it is turned. */
    private static List<Box> cells(Mark.Label label) {
        double size = label.lettering().sizeMm();
        double width = label.lettering().widthMm(label.text());
        double turn = Math.toRadians(label.lettering().turnDegrees());
        double cos = Math.cos(turn);
        double sin = Math.sin(turn);
        double from =
                label.align() == Align.START
                        ? 0
                        : label.align() == Align.MIDDLE ? -width / 2 : -width;
        int count = Math.max(1, (int) Math.ceil(width / size));
        List<Box> cells = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double along = from + width * (i + 0.5) / count;
            double up = 0.3 * size;
            Point middle = label.at().moved(along * cos + up * sin, along * sin - up * cos);
            cells.add(Box.between(middle, middle).grown(size * 0.58));
        }
        return cells;
    }

    private static Point mix(Point a, Point b, double share) {
        return new Point(
                a.xMm() + (b.xMm() - a.xMm()) * share, a.yMm() + (b.yMm() - a.yMm()) * share);
    }
}
