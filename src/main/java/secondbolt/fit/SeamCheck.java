package secondbolt.fit;

import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/**
 * Whether the two sides of a join meet.
 *
 * <p>Tolerance: 1 mm, or a sixteenth of an inch on an inch tape; common practice, no source, and
 * far below the quarter inch that a made-to-measure shirt maker accepts on widths. A gathered side
 * may be off by a twentieth, which the gathers take up; common practice, no source.
 *
 * @param seam as declared
 * @param before the lengths of both sides before the alterations, darts and pleats taken out
 * @param after the lengths after them
 * @param allowed by how much they may differ
 */
record SeamCheck(Seam seam, Sides before, Sides after, Length allowed) {
    /**
     * The lengths of both sides.
     *
     * @param first the side that may be meant to be longer
     * @param second the other
     * @param meant how long the first is meant to be beside the second
     */
    record Sides(Length first, Length second, Length meant) {
        static Sides of(Seam seam, Lengths lengths) {
            Length first = lengths.of(seam.first().value());
            Length second = lengths.of(seam.second().value());
            double gathered = second.millimetres() * seam.gather().doubleValue();
            Length wide =
                    seam.gather().signum() > 0 && seam.gather().doubleValue() != 1
                            ? Length.ofComputedMillimetres(gathered)
                            : second;
            return new Sides(first, second, wide.plus(seam.ease()));
        }

        /** By how much the first is longer than meant; negative if it is shorter. */
        Length difference() {
            return first.minus(meant);
        }
    }

    static SeamCheck of(Seam seam, Lengths before, Lengths after, Tape tape) {
        Sides now = Sides.of(seam, after);
        Length mark = tape == Tape.INCH ? Length.ofInches(1, 16) : Length.ofMillimetres(1);
        boolean gathered = seam.gather().doubleValue() != 1;
        Length allowed = gathered ? mark.orLonger(now.meant().dividedBy(20)) : mark;
        return new SeamCheck(seam, Sides.of(seam, before), now, allowed);
    }

    boolean metBefore() {
        return !before.difference().size().isLongerThan(allowed);
    }

    boolean meets() {
        return !after.difference().size().isLongerThan(allowed);
    }

    /** Whether it met until the pattern was altered. */
    boolean isBroken() {
        return metBefore() && !meets();
    }
}
