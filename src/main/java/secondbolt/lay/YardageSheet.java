package secondbolt.lay;

import java.util.List;
import java.util.Set;
import secondbolt.block.Block;
import secondbolt.draw.Align;
import secondbolt.draw.Drawing;
import secondbolt.draw.Lettering;
import secondbolt.draw.Pen;
import secondbolt.draw.ScaleRulers;
import secondbolt.draw.Sketch;
import secondbolt.garment.Role;
import secondbolt.lay.design.BoltLength;
import secondbolt.lay.design.LayResult;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.shape.Point;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.Subject;

/**
 * The yardage summary: what to buy of every cloth, for every design and width.
 *
 * @param result the designs
 * @param tape to print with
 */
record YardageSheet(LayResult result, Tape tape) {
    private static final double WIDE_MM = 150;
    private static final double HIGH_MM = 70;
    private static final double APART_MM = 8;
    private static final double LABELS_MM = 11;
    private static final double LEAST_LABEL_MM = 22;
    private static final Lettering WIDTH = Lettering.plain(3.2);
    private static final Lettering LENGTH = Lettering.bold(3.6);

    static Sheet of(LayResult result, Tape tape) {
        YardageSheet sheet = new YardageSheet(result, tape);
        return new Sheet(
                "yardage-summary",
                "Yardage summary",
                Set.of(new Subject.Design(result.made().name())),
                sheet.picture(),
                List.of(
                        new Block.Steps(new LayWords(tape).yardage(result)),
                        new Block.Rows(new BoltRows(result, tape).summary())),
                Sheet.Size.PICTURE);
    }

    /** The lengths to buy of the first cloth, side by side and to scale. */
    private Drawing picture() {
        List<BoltLength> all = result.made().bolts();
        Role role = all.get(0).role();
        List<BoltLength> bolts =
                all.stream().filter(b -> b.role() == role && b.toBuy().isPresent()).toList();
        double wide = bolts.stream().mapToDouble(b -> b.width().millimetres()).sum();
        double high =
                bolts.stream()
                        .mapToDouble(b -> b.toBuy().orElseThrow().millimetres())
                        .max()
                        .orElse(1);
        int scale = ScaleRulers.scale(new Box(0, 0, Math.max(1, wide), high), WIDE_MM, HIGH_MM);
        Sketch sketch = new Sketch();
        double x = 0;
        for (BoltLength bolt : bolts) {
            double widthMm = bolt.width().millimetres() / scale;
            double lengthMm = bolt.toBuy().orElseThrow().millimetres() / scale;
            double room = Math.max(widthMm, LEAST_LABEL_MM);
            Point middle = new Point(x + room / 2, 0);
            sketch.label(tape.print(bolt.width()), middle.moved(0, 3.5), WIDTH, Align.MIDDLE);
            sketch.label(
                    tape.printShop(bolt.toBuy().orElseThrow()),
                    middle.moved(0, 8.5),
                    LENGTH,
                    Align.MIDDLE);
            sketch.box(
                    new Box(middle.xMm() - widthMm / 2, LABELS_MM, widthMm, lengthMm), Pen.PLAIN);
            x += room + APART_MM;
        }
        double bottom = LABELS_MM + high / scale;
        String words =
                bolts.isEmpty()
                        ? "No common width is wide enough for " + role + "."
                        : result.made().name()
                                + ", "
                                + role
                                + ": width above, length to buy below it, drawn 1 : "
                                + scale;
        sketch.label(words, new Point(0, bottom + 5), WIDTH);
        double frame = Math.max(x, WIDTH.widthMm(words) + 2);
        return sketch.drawing("Yardage summary", new Box(-0.5, -0.5, frame, bottom + 8));
    }
}
