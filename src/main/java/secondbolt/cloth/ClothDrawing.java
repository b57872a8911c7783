package secondbolt.cloth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.cloth.yields.ClothYield;
import secondbolt.draw.Align;
import secondbolt.draw.Drawing;
import secondbolt.draw.LabelledSketch;
import secondbolt.draw.Lettering;
import secondbolt.draw.Pen;
import secondbolt.draw.ScaleRulers;
import secondbolt.draw.Shade;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.shape.Path;
import secondbolt.shape.Point;
import secondbolt.shape.Region;
import secondbolt.textile.extent.Extent;
import secondbolt.textile.extent.Flaw;
import secondbolt.textile.extent.Sides;

/** Draws one cloth to scale, as measured: what is cut away, its flaws, and what is clear. */
final class ClothDrawing {
    /** What the kinds of line mean. */
    static final String CAPTION =
            "As measured, right side up. Tinted: cut away. Hatched, with a letter: flaws (strokes"
                    + " rising), flaws for hidden pieces (strokes falling), features (level"
                    + " strokes). Fine dashes: kept clear. Long dashes, with a number: the largest"
                    + " clear rectangles. A picture, not for measuring: mark from the tables.";

    /** The same below a picture that follows one with the whole of it. */
    static final String CAPTION_AGAIN = "Drawn and marked as the first cloth is.";

    private static final double LARGEST_MM = 165;
    private static final Pen KEPT_CLEAR = new Pen(0.15, List.of(1.0, 0.8));
    private static final Pen EDGE = new Pen(0.4, List.of());
    private static final Pen RECTANGLE = new Pen(0.35, List.of(4.0, 1.6));
    private static final Lettering LETTER = Lettering.bold(3.6);
    private static final Lettering SMALL = Lettering.plain(3);
    private static final double HATCH_MM = 1.5;
    private static final double LABEL_GAP_MM = 12.5;

    private final ClothResult result;
    private final Tape tape;
    private final ClothYield yielded;
    private final Extent extent;
    private final int scale;
    private final LabelledSketch sketch = new LabelledSketch();

    private ClothDrawing(ClothResult result, ClothYield yielded, Tape tape) {
        this.result = result;
        this.yielded = yielded;
        this.tape = tape;
        this.extent = result.cloth().extent().toOptional().orElseThrow();
        this.scale = ScaleRulers.scale(extent.outline().box(), LARGEST_MM, LARGEST_MM);
    }

    /**
     * The picture in its own millimetres.
     *
     * @param yielded what the cloth yields, as its page tells it
     */
    static Drawing of(ClothResult result, ClothYield yielded, Tape tape) {
        return new ClothDrawing(result, yielded, tape).drawing();
    }

    /** Where a part of the trimmed cloth lay as measured, in the picture. */
    private Region untrimmed(Region finished) {
        return picture(yielded.placing().measured(finished));
    }

    private Region picture(Region measured) {
        Box box = extent.outline().box();
        return measured.moved(-box.leftMm(), -box.topMm()).scaled(1.0 / scale, 1.0 / scale);
    }

    private Drawing drawing() {
        Region cloth = picture(Region.of(extent.outline()));
        fill(cloth, Shade.TINT);
        fill(untrimmed(yielded.whole()), Shade.WHITE);
        List<Region> flaws = flaws(cloth);
        outline(cloth, EDGE);
        around(cloth.box());
        flaws.stream().filter(f -> !f.isEmpty()).forEach(f -> sketch.keepOff(f, LETTER));
        rectangles();
        for (int i = 0; i < flaws.size(); i++) {
            if (!flaws.get(i).isEmpty()) {
                sketch.letter(FlawLetters.letter(i), flaws.get(i), cloth.box(), LETTER);
            }
        }
        return sketch.drawing(result.name() + ", drawn 1 : " + scale);
    }

    private void fill(Region region, Shade shade) {
        region.paths().forEach(path -> sketch.marks().fill(path, shade));
    }

    private void outline(Region region, Pen pen) {
        region.paths().forEach(path -> sketch.marks().line(path, pen));
    }

    private List<Region> flaws(Region cloth) {
        outline(untrimmed(yielded.keptClear()), KEPT_CLEAR);
        List<Region> regions = new ArrayList<>();
        for (Flaw flaw : result.cloth().condition().flaws()) {
            Region region = picture(Region.of(flaw.patch().outline())).intersection(cloth);
            regions.add(region);
            fill(region, Shade.WHITE);
            region.hatch(HATCH_MM, turn(flaw.kind()))
                    .forEach(line -> sketch.marks().line(line, Pen.FINE));
            outline(region, Pen.PLAIN);
        }
        return regions;
    }

    private static double turn(Flaw.Kind kind) {
        return switch (kind) {
            case UNSOUND -> -45;
            case HIDDEN_USE -> 45;
            case FEATURE -> 0;
        };
    }

    private void rectangles() {
        for (int i = 0; i < yielded.rectangles().size(); i++) {
            Region region = untrimmed(Region.of(yielded.rectangles().get(i)));
            // A hair inside, so that it does not run on the outline of the cloth.
            Box box = region.box().grown(-0.5);
            sketch.marks().box(box, RECTANGLE);
            sketch.corner(Integer.toString(i + 1), box, LETTER);
        }
    }

    private void around(Box cloth) {
        ScaleRulers.draw(sketch, cloth, tape, scale);
        Sides<Optional<String>> names = result.cloth().edging().names();
        double middle = cloth.middle().xMm();
        sketch.outside(
                named("top", names.top()), new Point(middle, -LABEL_GAP_MM), SMALL, Align.MIDDLE);
        sketch.outside(
                named("bottom", names.bottom()),
                new Point(middle, cloth.bottomMm() + 5),
                SMALL,
                Align.MIDDLE);
        sketch.outside(
                named("left", names.left()),
                new Point(-LABEL_GAP_MM, cloth.middle().yMm()),
                SMALL.turned(-90),
                Align.MIDDLE);
        sketch.outside(
                named("right", names.right()),
                new Point(cloth.rightMm() + 5, cloth.middle().yMm()),
                SMALL.turned(-90),
                Align.MIDDLE);
        grain(cloth);
        sketch.outside(
                ScaleRulers.words(tape, scale),
                new Point(0, cloth.bottomMm() + 11),
                SMALL,
                Align.START);
    }

    private static String named(String side, Optional<String> name) {
        return name.map(n -> side + ": " + n).orElse(side);
    }

    private void grain(Box cloth) {
        double x = cloth.rightMm() + 9;
        double half = Math.min(15, cloth.heightMm() / 2);
        double top = cloth.middle().yMm() - half;
        double bottom = cloth.middle().yMm() + half;
        sketch.marks().line(new Point(x, top), new Point(x, bottom), Pen.PLAIN);
        head(new Point(x, top), 1);
        head(new Point(x, bottom), -1);
        sketch.outside(
                "grain", new Point(x + 4, cloth.middle().yMm()), SMALL.turned(-90), Align.MIDDLE);
    }

    private void head(Point tip, int way) {
        sketch.marks()
                .fill(
                        Path.polygon(
                                List.of(tip, tip.moved(-1, 2.6 * way), tip.moved(1, 2.6 * way))),
                        Shade.BLACK);
    }
}
