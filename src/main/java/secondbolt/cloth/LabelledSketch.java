package secondbolt.cloth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.draw.Align;
import secondbolt.draw.Drawing;
import secondbolt.draw.Lettering;
import secondbolt.draw.Pen;
import secondbolt.draw.Shade;
import secondbolt.draw.Sketch;
import secondbolt.shape.Box;
import secondbolt.shape.Path;
import secondbolt.shape.Point;
import secondbolt.shape.Region;

/**
 * A sketch whose labels do not lie over each other; its frame holds them all. Not for sharing.
 *
 * <p>A label that has no room where it belongs moves aside, and a fine line leads to it.
 */
final class LabelledSketch {
    /** How much of the size of a face its figures and capitals stand above the base line. */
    private static final double CAP_SHARE = 0.72;

    private static final double AIR_MM = 0.5;
    private static final double FRAME_AIR_MM = 1;
    private static final int RINGS = 14;
    private static final double RING_MM = 2.5;
    private static final int PLACES_A_RING = 16;

    private final Sketch sketch = new Sketch();
    private final List<Box> taken = new ArrayList<>();
    private Optional<Box> frame = Optional.empty();

    /** The sketch itself, for marks that are not labels. */
    Sketch marks() {
        return sketch;
    }

    /** A label outside the cloth, where nothing else is. */
    void outside(String text, Point at, Lettering lettering, Align align) {
        Box box = box(text, at, lettering, align);
        take(box);
        sketch.label(text, at, lettering, align);
    }

    /** A letter on a region if it has room there, beside it if not. */
    void letter(String text, Region region, Lettering lettering) {
        Point inside = region.inside();
        Box box = centred(text, inside, lettering);
        boolean room =
                region.box().widthMm() >= box.widthMm()
                        && region.box().heightMm() >= box.heightMm();
        place(text, inside, lettering, room);
    }

    /** A number in the left top corner of a box. */
    void corner(String text, Box box, Lettering lettering) {
        Box size = centred(text, Point.ORIGIN, lettering);
        place(
                text,
                new Point(box.leftMm(), box.topMm())
                        .moved(size.widthMm() / 2 + 1, size.heightMm() / 2 + 1),
                lettering,
                true);
    }

    private void place(String text, Point wanted, Lettering lettering, boolean there) {
        Point at = there ? wanted : wanted.moved(RING_MM, 0);
        Box box = centred(text, at, lettering);
        for (int i = 0; i < RINGS * PLACES_A_RING && (overlaps(box) || (!there && i == 0)); i++) {
            int ring = i / PLACES_A_RING;
            double reach = RING_MM * (1.4 + ring);
            double turn = 2 * Math.PI * i / PLACES_A_RING;
            at = wanted.moved(reach * Math.cos(turn), reach * Math.sin(turn));
            box = centred(text, at, lettering);
        }
        take(box);
        if (at.distanceMm(wanted) > RING_MM * 1.6) {
            sketch.line(wanted, at, Pen.FINE);
        }
        sketch.fill(Path.of(box), Shade.WHITE);
        double half = lettering.sizeMm() * CAP_SHARE / 2;
        sketch.label(text, at.moved(0, half), lettering, Align.MIDDLE);
    }

    private boolean overlaps(Box box) {
        return taken.stream().anyMatch(box::overlaps);
    }

    private void take(Box box) {
        taken.add(box);
        frame = Optional.of(frame.map(box::with).orElse(box));
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
    Drawing drawing(String title) {
        return sketch.drawing(title, frame.orElseThrow().grown(FRAME_AIR_MM));
    }
}
