package secondbolt.supply.left;

import java.util.Arrays;
import java.util.List;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.worksheet.Convention;

/**
 * What a rectangle of sound cloth is large enough for, the most demanding first; common practice,
 * no source. A rectangle that serves several may be cut into one of them.
 */
@SuppressWarnings("ImmutableEnumChecker") // a convention never changes
public enum RemnantUse {
    /** Front and back of about 38 by 42 cm in one piece, with seams and a turned top. */
    BAG("a plain bag in one piece", 18, 38, 450, 950),
    /** A square long enough that bias strips need few joins. */
    BIAS_STRIPS("bias strips for binding", 12, 12, 300, 300),
    /** Half a neckline or a front edge. */
    FACING("facings", 8, 18, 200, 450),
    /** Of about 15 by 17 cm finished, with seams and a turned top. */
    POCKET("a patch pocket", 8, 9, 200, 230),
    /** Of four times 12 mm, long enough for an apron's tie in two parts. */
    STRAIGHT_STRIPS("straight strips for ties, loops and belt carriers", 2, 20, 50, 500),
    /** Two layers of it make a trial seam. */
    TRIALS("mending, and trials of seam, press and buttonhole", 4, 6, 100, 150);

    private final String words;
    private final Convention across;
    private final Convention along;

    RemnantUse(String words, long acrossIn, long alongIn, long acrossMm, long alongMm) {
        this.words = words;
        this.across =
                Convention.common(Length.ofInches(acrossIn, 1), Length.ofMillimetres(acrossMm));
        this.along = Convention.common(Length.ofInches(alongIn, 1), Length.ofMillimetres(alongMm));
    }

    /** What it is good for, to go on after a size. */
    public String words() {
        return words;
    }

    /** Whether a rectangle is large enough, whichever way it lies. */
    private boolean fits(Box box, Tape tape) {
        double shortMm = Math.min(box.widthMm(), box.heightMm());
        double longMm = Math.max(box.widthMm(), box.heightMm());
        return shortMm >= across.on(tape).millimetres() && longMm >= along.on(tape).millimetres();
    }

    /** All that a rectangle is large enough for, the most demanding first. */
    static List<RemnantUse> of(Box box, Tape tape) {
        return Arrays.stream(values()).filter(use -> use.fits(box, tape)).toList();
    }
}
