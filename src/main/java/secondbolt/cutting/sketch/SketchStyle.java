package secondbolt.cutting.sketch;

import java.util.List;
import secondbolt.draw.Pen;

/**
 * How large the words and signs on a piece are.
 *
 * @param nameSizesMm to be tried for its name, largest first
 * @param wordsMm of what stands beside marks and edges
 * @param signMm about how large a notch, a cross or an arrow's head is
 * @param isPicture whether it is a picture for the page: points numbered, edge names outside
 * @param cut the cutting line
 * @param sewn the sewing line
 * @param before the outline before the alterations
 */
public record SketchStyle(
        List<Double> nameSizesMm,
        double wordsMm,
        double signMm,
        boolean isPicture,
        Pen cut,
        Pen sewn,
        Pen before) {
    public static final SketchStyle FULL_SIZE =
            new SketchStyle(
                    List.of(14.0, 10.0, 7.0, 5.0, 3.6, 2.6),
                    3.6,
                    4,
                    false,
                    Pen.CUT,
                    Pen.DASHED,
                    new Pen(0.15, List.of(1.0, 1.5)));

    static final SketchStyle PICTURE =
            new SketchStyle(
                    List.of(5.0, 4.0, 3.2),
                    3,
                    1.6,
                    true,
                    new Pen(0.35, List.of()),
                    new Pen(0.15, List.of(1.2, 0.8)),
                    new Pen(0.15, List.of(0.4, 0.6)));

    /** Copies the sizes. */
    public SketchStyle {
        nameSizesMm = List.copyOf(nameSizesMm);
    }
}
