package secondbolt.lay.picture;

import java.util.List;
import secondbolt.draw.Align;
import secondbolt.draw.Drawing;
import secondbolt.draw.LabelledSketch;
import secondbolt.draw.Lettering;
import secondbolt.draw.Pen;
import secondbolt.draw.ScaleRulers;
import secondbolt.draw.Shade;
import secondbolt.lay.piece.LaidPiece;
import secondbolt.lay.piece.PinPoint;
import secondbolt.lay.stock.SpreadCloth;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.shape.Outline;
import secondbolt.shape.Path;
import secondbolt.shape.Point;
import secondbolt.shape.Region;

/** Draws the pieces on one cloth, trimmed and washed, to scale. */
public final class LayDrawing {
    private static final double HATCH_MM = 1.5;
    private static final double NUMBER_ROOM_MM = 3;
    private static final double LONGEST_ARROW_MM = 14;
    private static final Pen EDGE = new Pen(0.4, List.of());
    private static final Pen OVER = new Pen(0.35, List.of(4.0, 1.6));
    private static final Lettering NUMBER = Lettering.bold(3.6);
    private static final Lettering SMALL = Lettering.plain(3);

    private final CuttingPlan plan;
    private final Tape tape;
    private final int scale;
    private final LabelledSketch sketch = new LabelledSketch();

    private LayDrawing(CuttingPlan plan, Tape tape) {
        this.plan = plan;
        this.tape = tape;
        this.scale = ScaleRulers.scale(spread().whole().box(), 100, 170);
    }

    /** The picture of a cloth, with what is cut from it already. */
    static Drawing of(CuttingPlan plan, Tape tape) {
        return new LayDrawing(plan, tape).drawing();
    }

    /** What the kinds of line on the picture mean. */
    public static String caption(CuttingPlan plan) {
        SpreadCloth spread = plan.spread();
        StringBuilder words = new StringBuilder("The trimmed and washed cloth, ");
        words.append(spread.fold().isPresent() ? "folded, " : "")
                .append("right side up. Hatched: no piece (strokes rising), hidden pieces only")
                .append(" (strokes falling). Arrows: how the pattern's length lies. Dots: the two")
                .append(" points to pin first. Long dashes: what stays over in one piece.");
        if (!spread.cuts().spoilt().isEmpty() || !spread.cuts().holes().isEmpty()) {
            words.append(" Grey, short dashes: cut already.");
        }
        if (plan.stock().laid().stream()
                .flatMap(l -> l.pins().stream())
                .anyMatch(PinPoint::isMatch)) {
            words.append(" Crosses: where the pattern of the cloth meets another piece.");
        }
        return words.toString();
    }

    private SpreadCloth spread() {
        return plan.spread();
    }

    private Region picture(Region region) {
        return region.scaled(1.0 / scale, 1.0 / scale);
    }

    private Point picture(Point point) {
        return new Point(point.xMm() / scale, point.yMm() / scale);
    }

    private Drawing drawing() {
        Region whole = picture(spread().whole());
        fill(whole, Shade.WHITE);
        hatch(picture(spread().whole().minus(spread().soundForHidden())), -45);
        hatch(picture(spread().soundForHidden().minus(spread().sound())), 45);
        line(whole, EDGE);
        Box box = whole.box();
        ScaleRulers.draw(sketch, box, tape, scale);
        around(box);
        spread().cuts().holes().forEach(hole -> hole(hole.region()));
        spread().cuts().spoilt().forEach(spoilt -> line(picture(spoilt), Pen.DASHED));
        plan.pieces().forEach(piece -> piece.laid().ifPresent(this::piece));
        over();
        plan.pieces().forEach(piece -> label(piece, box));
        return sketch.drawing("Cutting plan of " + plan.name() + ", drawn 1 : " + scale);
    }

    private void around(Box box) {
        sketch.outside(
                ScaleRulers.words(tape, scale),
                new Point(0, box.bottomMm() + 6),
                SMALL,
                Align.START);
        String left = spread().fold().isPresent() ? "fold" : "left";
        sketch.outside(left, new Point(-12, box.middle().yMm()), SMALL.turned(-90), Align.MIDDLE);
        sketch.outside(
                "right",
                new Point(box.rightMm() + 5, box.middle().yMm()),
                SMALL.turned(-90),
                Align.MIDDLE);
        sketch.outside("top", new Point(box.middle().xMm(), -11), SMALL, Align.MIDDLE);
    }

    private void fill(Region region, Shade shade) {
        region.paths().forEach(path -> sketch.marks().fill(path, shade));
    }

    private void line(Region region, Pen pen) {
        region.paths().forEach(path -> sketch.marks().line(path, pen));
    }

    private void hatch(Region region, double turn) {
        region.hatch(HATCH_MM, turn).forEach(path -> sketch.marks().line(path, Pen.FINE));
        line(region, Pen.FINE);
    }

    /** What is cut already is a hole in the cloth. */
    private void hole(Region cut) {
        Region region = picture(cut);
        fill(region, Shade.TINT);
        line(region, Pen.DASHED);
    }

    private void piece(LaidPiece laid) {
        Region region = picture(Region.of(laid.outline()));
        fill(region, Shade.WHITE);
        line(region, Pen.PLAIN);
        arrow(laid, region);
        for (PinPoint pin : laid.pins()) {
            if (pin.isMatch()) {
                cross(picture(pin.at()));
            } else {
                sketch.marks().fill(Path.polygon(dot(picture(pin.at()))), Shade.BLACK);
            }
        }
    }

    private void cross(Point at) {
        for (double slant : List.of(1.0, -1.0)) {
            sketch.marks()
                    .line(at.moved(-1.2, -1.2 * slant), at.moved(1.2, 1.2 * slant), Pen.PLAIN);
        }
    }

    private static List<Point> dot(Point at) {
        return Outline.round(at, 0.6).corners();
    }

    /** Towards the pattern's top, beyond the number; on the other side of it if it has no room. */
    private void arrow(LaidPiece laid, Region region) {
        Point inside = region.inside();
        Point up = laid.on(new Point(0, -1));
        Point from = laid.on(Point.ORIGIN);
        double x = up.xMm() - from.xMm();
        double y = up.yMm() - from.yMm();
        double longMm =
                Math.min(LONGEST_ARROW_MM, laid.piece().outline().box().heightMm() / scale / 3);
        for (double share : List.of(1.0, 0.6, 0.35)) {
            for (double way : List.of(1.0, -1.0)) {
                double lengthMm = longMm * share;
                double nearMm = way > 0 ? NUMBER_ROOM_MM : -NUMBER_ROOM_MM - lengthMm;
                Point base = inside.moved(x * nearMm, y * nearMm);
                Point tip = base.moved(x * lengthMm, y * lengthMm);
                if (holds(region, base) && holds(region, tip)) {
                    arrow(base, tip, x, y);
                    return;
                }
            }
        }
    }

    private static boolean holds(Region region, Point point) {
        return region.outlines().stream().anyMatch(outline -> outline.contains(point));
    }

    private void arrow(Point base, Point tip, double x, double y) {
        sketch.marks().line(base, tip, Pen.FINE);
        sketch.marks()
                .fill(
                        Path.polygon(
                                List.of(
                                        tip,
                                        tip.moved(-x * 2.2 - y * 0.8, -y * 2.2 + x * 0.8),
                                        tip.moved(-x * 2.2 + y * 0.8, -y * 2.2 - x * 0.8))),
                        Shade.BLACK);
    }

    private void over() {
        plan.over()
                .map(box -> picture(Region.of(box)).box())
                .filter(box -> box.widthMm() > 6 && box.heightMm() > 6)
                .ifPresent(
                        box -> {
                            sketch.marks().box(box.grown(-0.5), OVER);
                            sketch.corner("over", box.grown(-0.5), SMALL);
                        });
    }

    private void label(NumberedPiece numbered, Box within) {
        Region region = picture(numbered.region());
        sketch.letter(Integer.toString(numbered.number()), region, within, NUMBER);
    }
}
