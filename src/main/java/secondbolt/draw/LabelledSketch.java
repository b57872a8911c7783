package secondbolt.draw;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import secondbolt.shape.Box;
import secondbolt.shape.Path;
import secondbolt.shape.Point;
import secondbolt.shape.Region;

/**
 * A sketch whose labels do not lie over each other; its frame holds them all. Not for sharing.
 *
 * <p>A label that has no room where it belongs moves aside, and a fine line leads to it.
 */
public final class LabelledSketch {
    /** How much of the size of a face its figures and capitals stand above the base line. */
    private static final double CAP_SHARE = 0.72;

    private static final double AIR_MM = 0.5;
    private static final double FRAME_AIR_MM = 1;
    private static final int RINGS = 40;
    private static final double RING_MM = 0.8;
    private static final int PLACES_A_RING = 16;

    private final Sketch sketch = new Sketch();
    private final Rows taken = new Rows();
    private final Rows blocked = new Rows();
    private final List<Box> all = new ArrayList<>();

    /** Boxes by the rows they reach into, so that only what is level with another is looked at. */
    private static final class Rows {
        private static final double ROW_MM = 4;

        private final Map<Long, List<Box>> rows = new HashMap<>();

        void add(Box box) {
            rowsOf(box)
                    .forEach(row -> rows.computeIfAbsent(row, any -> new ArrayList<>()).add(box));
        }

        boolean overlap(Box box) {
            return rowsOf(box)
                    .anyMatch(
                            row ->
                                    rows.getOrDefault(row, List.of()).stream()
                                            .anyMatch(box::overlaps));
        }

        private static Stream<Long> rowsOf(Box box) {
            return LongStream.rangeClosed(row(box.topMm()), row(box.bottomMm())).boxed();
        }

        private static long row(double y) {
            return (long) Math.floor(y / ROW_MM);
        }
    }

    /** The sketch itself, for marks that are not labels. */
    public Sketch marks() {
        return sketch;
    }

    /** A label outside what is drawn, where nothing else is. */
    public void outside(String text, Point at, Lettering lettering, Align align) {
        Box box = box(text, at, lettering, align);
        take(box);
        sketch.label(text, at, lettering, align);
    }

    /** Keeps labels off a region too small to hold its own letter. */
    public void keepOff(Region region, Lettering lettering) {
        if (!holds(region, lettering)) {
            blocked.add(region.box());
        }
    }

    private static boolean holds(Region region, Lettering lettering) {
        Box letter = centred("M", Point.ORIGIN, lettering);
        return region.box().widthMm() >= letter.widthMm()
                && region.box().heightMm() >= letter.heightMm();
    }

    /**
     * A letter on a region if it has room there, beside it with a line to it if not.
     *
     * @param within where it should stay if it can
     */
    public void letter(String text, Region region, Box within, Lettering lettering) {
        Point inside = region.inside();
        if (holds(region, lettering) && !taken.overlap(centred(text, inside, lettering))) {
            set(text, inside, lettering);
            return;
        }
        Point at =
                aside(text, region, lettering).stream()
                        .filter(p -> isFree(centred(text, p, lettering), Optional.of(within)))
                        .findFirst()
                        .or(
                                () ->
                                        aside(text, region, lettering).stream()
                                                .filter(
                                                        p ->
                                                                isFree(
                                                                        centred(text, p, lettering),
                                                                        Optional.empty()))
                                                .findFirst())
                        .orElse(inside);
        sketch.line(inside, at, Pen.FINE);
        set(text, at, lettering);
    }

    /** Places beside a region, the nearest first. */
    private static List<Point> aside(String text, Region region, Lettering lettering) {
        Box letter = centred(text, Point.ORIGIN, lettering);
        Box box = region.box();
        List<Point> places = new ArrayList<>();
        for (int ring = 0; ring < RINGS; ring++) {
            for (int i = 0; i < PLACES_A_RING; i++) {
                double turn = 2 * Math.PI * i / PLACES_A_RING;
                double across = (box.widthMm() + letter.widthMm()) / 2 + (1 + ring) * RING_MM;
                double along = (box.heightMm() + letter.heightMm()) / 2 + (1 + ring) * RING_MM;
                places.add(box.middle().moved(across * Math.cos(turn), along * Math.sin(turn)));
            }
        }
        return places;
    }

    private boolean isFree(Box box, Optional<Box> within) {
        boolean inside = within.map(w -> w.with(box).equals(w)).orElse(true);
        return inside && !taken.overlap(box) && !blocked.overlap(box);
    }

    /** A number in the left top corner of a box. */
    public void corner(String text, Box box, Lettering lettering) {
        Box size = centred(text, Point.ORIGIN, lettering);
        set(
                text,
                new Point(box.leftMm(), box.topMm())
                        .moved(size.widthMm() / 2 + 1, size.heightMm() / 2 + 1),
                lettering);
    }

    private void set(String text, Point at, Lettering lettering) {
        Box box = centred(text, at, lettering);
        take(box);
        sketch.fill(Path.of(box), Shade.WHITE);
        double half = lettering.sizeMm() * CAP_SHARE / 2;
        sketch.label(text, at.moved(0, half), lettering, Align.MIDDLE);
    }

    private void take(Box box) {
        taken.add(box);
        all.add(box);
    }

    private static Box centred(String text, Point middle, Lettering lettering) {
        double half = lettering.sizeMm() * CAP_SHARE / 2;
        return box(text, middle.moved(0, half), lettering, Align.MIDDLE);
    }

    /** About the box of a label that is upright, or turned a quarter to read upwards. */
    private static Box box(String text, Point at, Lettering lettering, Align align) {
        double width = lettering.widthMm(text);
        double start =
                switch (align) {
                    case START -> 0;
                    case MIDDLE -> -width / 2;
                    case END -> -width;
                };
        double cap = lettering.sizeMm() * CAP_SHARE;
        Box box =
                lettering.turnDegrees() == 0
                        ? new Box(at.xMm() + start, at.yMm() - cap, width, cap)
                        : new Box(at.xMm() - cap, at.yMm() - start - width, cap, width);
        return box.grown(AIR_MM);
    }

    /** All that was drawn, in a frame that holds every label. */
    public Drawing drawing(String title) {
        return sketch.drawing(
                title, all.stream().reduce(Box::with).orElseThrow().grown(FRAME_AIR_MM));
    }
}
