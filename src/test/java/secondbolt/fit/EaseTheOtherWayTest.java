package secondbolt.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Ease is of the side that is written first: what is said of a join written the other way. */
class EaseTheOtherWayTest {
    /** Two legs, the back longer at the inside by so much; in inches. */
    private static WrittenPattern legs(String back, String join) {
        return WrittenPattern.inches(
                """
                pattern:
                  pieces:
                    front: {cut: pair, rectangle: [12, 18]}
                    back: {cut: pair, rectangle: [14, %s]}
                  seams: [%s]
                """
                        .formatted(back, join));
    }

    @Test
    void putsTheLongerSideFirst() {
        String right = "write the join as `{join: [back.left, front.left], ease: ⅛}`";
        for (String join :
                new String[] {
                    "[front.left, back.left]", "{join: [front.left, back.left], ease: 1/8}"
                }) {
            String told = legs("18 1/8", join).coded("seam-off-a-little").get(0);
            assertTrue(told.contains(right), told);
        }
        assertEquals(
                0,
                legs("18 1/8", "{join: [back.left, front.left], ease: ⅛}")
                        .coded("seam-off-a-little")
                        .size());
    }

    @Test
    void saysTheEaseWhereTheFirstIsTheLonger() {
        String told = legs("18 1/8", "[back.left, front.left]").coded("seam-off-a-little").get(0);
        assertTrue(told.contains("ease the longer one in and write `ease: ⅛` on this join."), told);
    }

    /** 19 − 18 = 1 and not the half that is written. */
    @Test
    void correctsAnEaseThatIsAnother() {
        String told =
                legs("19", "{join: [back.left, front.left], ease: 1/2}")
                        .coded("seam-apart-as-drawn")
                        .get(0);
        assertTrue(told.contains("if they are right, write `ease: 1` on this join."), told);
    }
}
