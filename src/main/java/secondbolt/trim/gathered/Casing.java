package secondbolt.trim.gathered;

import secondbolt.measure.Length;
import secondbolt.trim.plan.Elastic;
import secondbolt.worksheet.Convention;

/**
 * How wide the casing of an elastic is, by both published rules, and how much cloth it takes. The
 * rules are in inches, and worked out in inches on either tape.
 *
 * @param elastic how wide the elastic is
 * @param kind what it runs in
 */
public record Casing(Length elastic, Elastic.Casing kind) {
    /** Source: a dressmakers' association's standards, p. 23. */
    public static final Convention NARROW_EASE =
            new Convention(
                    Length.ofInches(1, 8),
                    Length.ofMillimetres(3),
                    "a dressmakers' association's standards, p. 23");

    /** Source: a home-sewing guideline, 12.150, and a state sewing assessment, Utah. */
    public static final Convention WIDE_EASE =
            new Convention(
                    Length.ofInches(1, 4),
                    Length.ofMillimetres(6),
                    "a home-sewing guideline, 12.150");

    /** The turn of the raw edge. Source: a home-sewing guideline, 12.150; a sewing textbook. */
    public static final Convention TURN =
            new Convention(
                    Length.ofInches(1, 4),
                    Length.ofMillimetres(6),
                    "a home-sewing guideline, 12.150");

    /** What a strip is wider than the elastic. Source: a sewing textbook on casings. */
    public static final Length STRIP_EXTRA = Length.ofInches(1, 1);

    /** What a strip is longer than the casing. Source: a sewing textbook on casings. */
    public static final Length STRIP_LONGER = Length.ofInches(1, 2);

    /** The gap through which it is threaded. Source: a sewing textbook on casings. */
    public static final Convention OPENING =
            new Convention(
                    Length.ofInches(2, 1),
                    Length.ofMillimetres(50),
                    "a sewing textbook on casings");

    /** From fold to second stitching at least, or from stitching to stitching: elastic and ⅛ in. */
    public Length narrow() {
        return elastic.plus(NARROW_EASE.inch());
    }

    /** The same with ¼ in. */
    public Length wide() {
        return elastic.plus(WIDE_EASE.inch());
    }

    /** Cloth beyond the fold for the narrow one: casing and turn (derived). */
    public Length narrowFoldDown() {
        return narrow().plus(TURN.inch());
    }

    /** Cloth beyond the fold for the wide one. */
    public Length wideFoldDown() {
        return wide().plus(TURN.inch());
    }

    /** How wide a strip that is sewn on is cut. */
    public Length stripWidth() {
        return elastic.plus(STRIP_EXTRA);
    }
}
