package secondbolt.trim.strip;

import secondbolt.measure.Area;
import secondbolt.measure.Length;
import secondbolt.measure.Share;
import secondbolt.worksheet.Convention;

/** How wide strips are cut and how much cloth they take, by the rules of the trade. */
public final class StripRule {
    /**
     * What a bound seam's strip is wider than the allowance. Source: an encyclopaedia, bound and
     * French seams.
     */
    public static final Length OVER_A_SEAM = Length.ofInches(1, 4);

    /** The allowance of a join between two strips, and the seam of a single fold. */
    public static final Convention JOIN =
            Convention.common(Length.ofInches(1, 4), Length.ofMillimetres(6));

    /** A shorter strip is not worth its join; the length a textbook's example takes. */
    public static final Convention SHORTEST =
            new Convention(
                    Length.ofInches(4, 1),
                    Length.ofMillimetres(100),
                    "the shortest strip in the example of a dress making textbook, p. 220");

    /** What the textbook takes for the root of two. */
    private static final Share ROOT_OF_TWO = Share.ofDecimal("1.4");

    private StripRule() {}

    /**
     * A double fold: four times its finished width.
     *
     * <p>Source: a machine maker's how-to on bias binding: a quarter inch from a strip of one inch.
     */
    public static Length doubleFold(Length finished) {
        return finished.times(4);
    }

    /**
     * A single fold: its width outside and inside, and a seam at either edge. Common practice, no
     * source.
     */
    public static Length singleFold(Length finished, Length seam) {
        return finished.times(2).plus(seam.times(2));
    }

    /** A bound seam: its allowance and a quarter inch. Source: see {@link #OVER_A_SEAM}. */
    public static Length boundSeam(Length allowance) {
        return allowance.plus(OVER_A_SEAM);
    }

    /**
     * How much cloth joined bias strips take.
     *
     * <p>Source: NIMI, Dress Making, p. 220: length × width + (shortest strip ÷ 1.4)²; 1.4 stands
     * for the root of two.
     *
     * @param length of the joined strip
     * @param width of the strip
     * @param shortest of the strips that are joined
     */
    public static Area cloth(Length length, Length width, Length shortest) {
        Length corner = shortest.dividedBy(ROOT_OF_TWO);
        return length.times(width).plus(corner.times(corner));
    }

    /**
     * The side of a square of cloth that yields a bias strip, before it is rounded up.
     *
     * <p>Source: the root of length × width, as a soft-furnishing FAQ and a quilting Q&amp;A give
     * it.
     */
    public static Length square(Length length, Length width) {
        return Length.ofComputedMillimetres(Math.sqrt(length.times(width).squareMillimetres()));
    }
}
