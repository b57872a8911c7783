package secondbolt.trim.strip;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import secondbolt.measure.Length;

/** How wide strips are cut, and how much cloth they take. */
class StripRuleTest {
    private static final double ROUNDED = 0.05;

    private static Length cm(long centimetres) {
        return Length.ofMillimetres(10 * centimetres);
    }

    /** A machine maker's how-to: a quarter inch from one inch; 6 mm and 12 mm derived. */
    @Test
    void cutsADoubleFoldFourTimesItsWidth() {
        assertEquals(Length.ofInches(1, 1), StripRule.doubleFold(Length.ofInches(1, 4)));
        assertEquals(Length.ofMillimetres(24), StripRule.doubleFold(Length.ofMillimetres(6)));
        assertEquals(Length.ofMillimetres(48), StripRule.doubleFold(Length.ofMillimetres(12)));
    }

    /** Derived: 2 × 8 mm and 2 × 6 mm. */
    @Test
    void cutsASingleFoldTwiceItsWidthAndItsSeam() {
        assertEquals(
                Length.ofMillimetres(28),
                StripRule.singleFold(Length.ofMillimetres(8), Length.ofMillimetres(6)));
    }

    /** An encyclopaedia, bound and French seams; ⅝ in to ⅞ in derived. */
    @Test
    void cutsABoundSeamAQuarterInchWider() {
        assertEquals(Length.ofInches(7, 8), StripRule.boundSeam(Length.ofInches(5, 8)));
    }

    /** Derived by the rule: 768 + (10 ÷ 1.4)² = 819.0 cm². */
    @Test
    void takesClothForTheCornersOfTheStrips() {
        assertEquals(
                819.0,
                StripRule.cloth(cm(320), Length.ofMillimetres(24), cm(10)).squareMillimetres()
                        / 100,
                ROUNDED);
    }

    /** NIMI, Dress Making, p. 220: 5 m of 2.5 cm; 1301.02 cm² without its rounding of 10 ÷ 1.4. */
    @Test
    void agreesWithTheTextbook() {
        double area =
                StripRule.cloth(cm(500), Length.ofMillimetres(25), cm(10)).squareMillimetres();
        assertEquals(1301.02, area / 100, ROUNDED);
        assertEquals(15.13, area / 100 / 86, ROUNDED);
        double corners =
                StripRule.cloth(Length.ZERO, Length.ofMillimetres(20), cm(10)).squareMillimetres();
        assertEquals(934.5, (96 * 20 - corners / 100) / 2, ROUNDED);
    }

    /** A soft-furnishing FAQ: 250 in of 2 in, 22.4 in; a quilting Q&A: 100 in of 3½ in, 18.7 in. */
    @Test
    void takesASquareByTheRootOfItsArea() {
        assertEquals(22.36, square(250, Length.ofInches(2, 1)), ROUNDED);
        assertEquals(18.71, square(100, Length.ofInches(7, 2)), ROUNDED);
    }

    private static double square(long inches, Length width) {
        return StripRule.square(Length.ofInches(inches, 1), width).millimetres() / 25.4;
    }
}
