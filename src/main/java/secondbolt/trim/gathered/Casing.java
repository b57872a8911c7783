package secondbolt.trim.gathered;

import secondbolt.measure.Length;
import secondbolt.trim.plan.Elastic;

/**
 * How wide the casing of an elastic is, by both published rules, and how much cloth it takes.
 *
 * @param elastic how wide the elastic is
 * @param kind what it runs in
 */
public record Casing(Length elastic, Elastic.Casing kind) {
    /** Source: a dressmakers' association's standards, p. 23. */
    public static final Length NARROW_EASE = Length.ofInches(1, 8);

    /** Source: a home-sewing guideline, 12.150, and a state sewing assessment, Utah. */
    public static final Length WIDE_EASE = Length.ofInches(1, 4);

    /** The turn of the raw edge. Source: a home-sewing guideline, 12.150; a sewing textbook. */
    public static final Length TURN = Length.ofInches(1, 4);

    /** What a strip is wider than the elastic. Source: a sewing textbook on casings. */
    public static final Length STRIP_EXTRA = Length.ofInches(1, 1);

    /** What a strip is longer than the casing. Source: a sewing textbook on casings. */
    public static final Length STRIP_LONGER = Length.ofInches(1, 2);

    /** The gap through which it is threaded. Source: a sewing textbook on casings. */
    public static final Length OPENING = Length.ofInches(2, 1);

    /** From fold to second stitching at least, or from stitching to stitching: elastic and ⅛ in. */
    public Length narrow() {
        return elastic.plus(NARROW_EASE);
    }

    /** The same with ¼ in. */
    public Length wide() {
        return elastic.plus(WIDE_EASE);
    }

    /** Cloth beyond the fold for the narrow one: casing and turn (derived). */
    public Length narrowFoldDown() {
        return narrow().plus(TURN);
    }

    /** Cloth beyond the fold for the wide one. */
    public Length wideFoldDown() {
        return wide().plus(TURN);
    }

    /** How wide a strip that is sewn on is cut. */
    public Length stripWidth() {
        return elastic.plus(STRIP_EXTRA);
    }
}
