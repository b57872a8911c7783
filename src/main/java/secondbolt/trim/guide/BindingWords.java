package secondbolt.trim.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import secondbolt.measure.Area;
import secondbolt.measure.Tape;
import secondbolt.trim.plan.Binding;

/** How a binding is cut, joined and sewn, in words; common practice where no source is told. */
public final class BindingWords {
    private static final double MM2_PER_CM2 = 100;
    private static final double MM2_PER_IN2 = 25.4 * 25.4;

    private BindingWords() {}

    /** A small area: {@code 819 cm²} or {@code 127 in²}, rounded up. */
    public static String area(Area area, Tape tape) {
        double per = tape == Tape.INCH ? MM2_PER_IN2 : MM2_PER_CM2;
        long units = (long) Math.ceil(area.squareMillimetres() / per);
        return String.format(Locale.ROOT, "%d %s²", units, tape.symbol());
    }

    /** What to do, in order of doing. */
    public static List<String> how(Binding binding) {
        List<String> how = new ArrayList<>();
        if (binding.from() == Binding.From.REMNANT) {
            how.add(
                    switch (binding.cut()) {
                        case BIAS ->
                                "Fold a corner so that crosswise threads lie on lengthwise ones: the"
                                        + " fold is the true bias. Rule every strip from it; the"
                                        + " ends stay cut along the threads.";
                        case STRAIGHT ->
                                "Draw a thread and cut along it, the strips along the long side of"
                                        + " what is left.";
                    });
            how.add(
                    "Join strips right sides together, on the slant, so that their corners stand out"
                            + " by the seam; press the joins open and clip the corners.");
        }
        how.add(
                binding.closesOverTheEdge()
                        ? "Cut the bound edge on its sewing line: it is enclosed and takes no seam"
                                + " allowance."
                        : "Sew the strip ⅛ in (3 mm) from the raw edge, fold it round and stitch in"
                                + " the groove (an encyclopaedia, bound and French seams).");
        if (binding.cut() == Binding.Cut.BIAS) {
            how.add(
                    "Draw the strip a little on an inward curve such as a neckline, ease it on an"
                            + " outward one; stretched, it becomes narrower, so try a hand's length"
                            + " first.");
        }
        return how;
    }
}
