package secondbolt.cutting.sketch;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import secondbolt.draw.Align;
import secondbolt.draw.Lettering;
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

    /** Legible in the hand. Common practice, no source. */
    private static final double LEAST_MM = 2.2;

    private static final double SMALLER = 0.7;

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

    /** The same for a few. */
    void writeFirst(Sketch sketch, List<List<Mark.Label>> candidates) {
        writeFirst(sketch, candidates::stream);
    }

    /**
     * Writes the first group of labels that has room, smaller if it must be; if there is none, the
     * one that lies on least else, for what is written on a piece is never left out. Groups behind
     * the first that has room are never asked for.
     */
    void writeFirst(Sketch sketch, Supplier<Stream<List<Mark.Label>>> candidates) {
        Supplier<Stream<List<Mark.Label>>> smaller =
                () ->
                        candidates
                                .get()
                                .map(labels -> labels.stream().map(LabelRoom::smaller).toList());
        Stream.of(candidates, smaller)
                .flatMap(Supplier::get)
                .filter(labels -> labels.stream().allMatch(this::fits))
                .findFirst()
                .or(() -> smaller.get().min(Comparator.comparingLong(this::covered)))
                .ifPresent(labels -> write(sketch, labels));
    }

    private static Mark.Label smaller(Mark.Label label) {
        Lettering lettering = label.lettering();
        return new Mark.Label(
                label.text(),
                label.at(),
                new Lettering(
                        Math.min(
                                lettering.sizeMm(),
                                Math.max(LEAST_MM, lettering.sizeMm() * SMALLER)),
                        lettering.face(),
                        lettering.turnDegrees()),
                label.align());
    }

    /** How much of the labels lies on something else or over the edge. */
    private long covered(List<Mark.Label> labels) {
        return labels.stream()
                .flatMap(label -> cells(label).stream())
                .filter(cell -> !isFree(cell))
                .count();
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
