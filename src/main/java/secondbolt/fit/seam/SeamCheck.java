package secondbolt.fit.seam;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import secondbolt.file.value.Placed;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.EdgeSum;
import secondbolt.pattern.Seam;
import secondbolt.worksheet.Convention;

/**
 * Whether the two sides of a join meet; not known while one of their edges is open.
 *
 * <p>A gathered side may be off by a twentieth, which the gathers take up; common practice, no
 * source.
 *
 * @param seam as declared
 * @param before the lengths of both sides before the alterations, darts and pleats taken out
 * @param after the lengths after them
 * @param allowed by how much they may differ
 * @param open its edges of which it is not known whether the alterations changed them
 */
public record SeamCheck(
        Seam seam, Sides before, Sides after, Length allowed, List<EdgeSum.Term> open) {
    /**
     * How closely a seam must meet; far below the quarter inch that a made-to-measure shirt maker
     * accepts on widths.
     */
    public static final Convention MEETS =
            Convention.common(Length.ofInches(1, 16), Length.ofMillimetres(1));

    /** The same as a maker says it. */
    public static final Map<Tape, String> MEETS_IN_WORDS =
            Map.of(Tape.INCH, "a sixteenth of an inch", Tape.CENTIMETRE, "1 mm");

    /** Copies the edges. */
    public SeamCheck {
        open = List.copyOf(open);
    }

    /**
     * The lengths of both sides.
     *
     * @param first the side that may be meant to be longer
     * @param second the other
     * @param meant how long the first is meant to be beside the second
     */
    public record Sides(Length first, Length second, Length meant) {
        static Sides of(Seam seam, Lengths lengths) {
            Length first = lengths.of(seam.first().value());
            Length second = lengths.of(seam.second().value());
            double gathered = second.millimetres() * seam.gather().doubleValue();
            Length wide = seam.isGathered() ? Length.ofComputedMillimetres(gathered) : second;
            return new Sides(first, second, wide.plus(seam.ease()));
        }

        /** By how much the first is longer than meant; negative if it is shorter. */
        public Length difference() {
            return first.minus(meant);
        }
    }

    /** A seam before and after the alterations, held against what the tape can show. */
    public static SeamCheck of(Seam seam, Lengths before, Lengths after, Tape tape) {
        Sides now = Sides.of(seam, after);
        Length near = MEETS.on(tape);
        Length allowed = seam.isGathered() ? near.orLonger(now.meant().dividedBy(20)) : near;
        List<EdgeSum.Term> open = new ArrayList<>();
        seam.sides().forEach(side -> open.addAll(after.open(side.value())));
        return new SeamCheck(seam, Sides.of(seam, before), now, allowed, open);
    }

    /** The same, the edges of some pieces open as well where the alterations changed a side. */
    public SeamCheck asking(Predicate<String> isAsked) {
        List<EdgeSum.Term> asked = new ArrayList<>(open);
        for (Placed<EdgeSum> side : seam.sides()) {
            side.value().terms().stream()
                    .filter(term -> isAsked.test(term.piece()) && !asked.contains(term))
                    .forEach(asked::add);
        }
        boolean moved =
                !before.first().equals(after.first()) || !before.second().equals(after.second());
        return moved ? new SeamCheck(seam, before, after, allowed, asked) : this;
    }

    /** Whether the lengths of both sides after the alterations are known. */
    public boolean isKnown() {
        return open.isEmpty();
    }

    /** Whether the length of one side after the alterations is known. */
    public boolean isKnown(EdgeSum side) {
        return side.terms().stream().noneMatch(open::contains);
    }

    /** Whether its sides met before the alterations. */
    public boolean metBefore() {
        return !before.difference().size().isLongerThan(allowed);
    }

    /** Whether it is known to meet. */
    public boolean meets() {
        return isKnown() && !after.difference().size().isLongerThan(allowed);
    }

    /** Whether it met until the pattern was altered. */
    public boolean isBroken() {
        return isKnown() && metBefore() && !meets();
    }
}
