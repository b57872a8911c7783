package secondbolt.draw.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Order as Unicode Standard Annex 9 has it, worked by hand after its section 3.4 examples. */
class VisualTextTest {
    @Test
    void leavesLeftToRightTextAlone() {
        assertEquals("Łódź ½ (10 cm)", VisualText.of("Łódź ½ (10 cm)"));
    }

    @Test
    void turnsHebrewRoundAndKeepsItsFigures() {
        assertEquals("12 גבא", VisualText.of("אבג 12"));
    }

    @Test
    void mirrorsBracketsInsideRightToLeftText() {
        assertEquals("ד (ג) א", VisualText.of("א (ג) ד"));
    }

    @Test
    void keepsLatinInPlaceRoundHebrew() {
        // Rules N1 and I1: a figure after Hebrew belongs to the Hebrew and stands on its left.
        assertEquals("hem 3 בא cm", VisualText.of("hem אב 3 cm"));
    }

    @Test
    void keepsAVowelSignOnItsLetter() {
        assertEquals("ב\u05B8א", VisualText.of("א" + "ב\u05B8"));
    }

    @Test
    void dropsWhatNobodySees() {
        assertEquals("ab c", VisualText.of("a\u200D\u2067b\tc\uFE0F"));
    }
}
