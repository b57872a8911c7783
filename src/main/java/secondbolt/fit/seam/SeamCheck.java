package secondbolt.fit.seam;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import secondbolt.file.value.Placed;
import secondbolt.measure.Length;
import secondbolt.measure.Share;
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

    /** What is less shorter than that is a slip, not a band to be stretched; common practice. */
    private static final Share LEAST_STRETCHED_ON = Share.ofPercent(105);

    /** Copies the edges. */
    public SeamCheck {
        open = List.copyOf(open);
    }

    /**
     * The lengths of both sides.
     *
     * @param first the side that may be meant to be longer
     * @param second the other
     * @param meant how long the first is meant to be beside the second, what laps past it taken off
     * @param firstReach how long the first is when it is stretched, if it is a band of a knit; else
     *     the same as {@code first}
     * @param secondReach the same of the second
     */
    public record Sides(
            Length first, Length second, Length meant, Length firstReach, Length secondReach) {
        static Sides of(Seam seam, Lengths lengths, EdgeStretch stretch) {
            Length first = lengths.of(seam.first().value());
            Length second = lengths.of(seam.second().value());
            Length sewn = second.minus(seam.laps());
            double gathered = sewn.millimetres() * seam.gather().doubleValue();
            Length wide = seam.isGathered() ? Length.ofComputedMillimetres(gathered) : sewn;
            EdgeSum one = seam.first().value();
            EdgeSum two = seam.second().value();
            boolean isOne = stretch.isBand(one, two);
            boolean isTwo = stretch.isBand(two, one);
            return new Sides(
                    first,
                    second,
                    wide.plus(seam.ease()),
                    isOne ? stretch.reach(one, lengths) : first,
                    isTwo ? stretch.reach(two, lengths) : second);
        }

        private boolean isPlain() {
            return meant.equals(second);
        }

        /** Whether the first is a band that is shorter, so that it is to be stretched on. */
        public boolean isFirstShortBand() {
            return isPlain() && firstReach.isLongerThan(first) && isFarShorter(first, second);
        }

        /** Whether the second is such a band. */
        public boolean isSecondShortBand() {
            return isPlain() && secondReach.isLongerThan(second) && isFarShorter(second, first);
        }

        private static boolean isFarShorter(Length band, Length edge) {
            return edge.isLongerThan(band.times(LEAST_STRETCHED_ON));
        }

        /** Whether one side is a band of a knit that reaches when it is stretched. */
        boolean isStretchedOn() {
            return (isFirstShortBand() && !firstReach.isShorterThan(second))
                    || (isSecondShortBand() && !secondReach.isShorterThan(first));
        }

        /** By how much the first is longer than meant; negative if it is shorter. */
        public Length difference() {
            return first.minus(meant);
        }
    }

    /** A seam before and after the alterations, held against what the tape can show. */
    public static SeamCheck of(
            Seam seam, Lengths before, Lengths after, EdgeStretch stretch, Tape tape) {
        Sides now = Sides.of(seam, after, stretch);
        Length near = MEETS.on(tape);
        Length allowed = seam.isGathered() ? near.orLonger(now.meant().dividedBy(20)) : near;
        List<EdgeSum.Term> open = new ArrayList<>();
        seam.sides().forEach(side -> open.addAll(after.open(side.value())));
        return new SeamCheck(seam, Sides.of(seam, before, stretch), now, allowed, open);
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

    /** How much of the second the first is sewn to, after the alterations: all but its lap. */
    public Length sewnTo() {
        return after.second().minus(seam.laps());
    }

    /** Whether its sides met before the alterations. */
    public boolean metBefore() {
        return before.isStretchedOn() || !before.difference().size().isLongerThan(allowed);
    }

    /** Whether it is known to meet. */
    public boolean meets() {
        return isKnown() && (isStretchedOn() || !after.difference().size().isLongerThan(allowed));
    }

    /**
     * Whether one side is a band of a knit, shorter than the other as drawn already; one that only
     * the alterations left behind is not.
     */
    public boolean isShortBand() {
        return (before.isFirstShortBand() && after.isFirstShortBand())
                || (before.isSecondShortBand() && after.isSecondShortBand());
    }

    /** Whether it meets because one side is a band of a knit that is stretched to the other. */
    public boolean isStretchedOn() {
        return isKnown() && isShortBand() && after.isStretchedOn();
    }

    /** Whether it met until the pattern was altered. */
    public boolean isBroken() {
        return isKnown() && metBefore() && !meets();
    }
}
