package secondbolt.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.lay.design.LayResult;
import secondbolt.lay.piece.LaidPiece;
import secondbolt.shape.Box;

/**
 * Pieces known by tape as they are laid: opened at their fold, with the allowances of their edges.
 */
class TapedPiecesTest {
    private static final double WITHIN_MM = 0.01;

    private static LayResult laid(String cloth, String allowance, String piece, String more) {
        return LayText.result(
                """
                cloth:
                  linen: {role: main, size: [%s], clear: 0, prewash: done, nap: one-way, edges: {left: raw, right: raw, top: raw, bottom: raw}}
                pattern:
                  seam allowance: %s
                  pieces: {back: {cut: 1, %s}}
                designs: {plain: {uses: [back]}}
                make: plain
                %s
                """
                        .formatted(cloth, allowance, piece, more));
    }

    private static Box box(LayResult result) {
        List<LaidPiece> laid = result.made().stocks().get(0).laid();
        assertEquals(1, laid.size());
        return laid.get(0).box();
    }

    private static final String HALF = "fold: centre back, box: [35, 60], edges: {centre back: 58}";

    /** Twice 35 and a seam of 1.5 at either side: 73 wide, 63 long. */
    @Test
    void opensTheHalfAtItsFold() {
        LayResult result = laid("100, 100", "{of: 1.5, included: false}", HALF, "");
        assertEquals(730, box(result).widthMm(), WITHIN_MM);
        assertEquals(630, box(result).heightMm(), WITHIN_MM);
        assertFalse(laid("60, 60", "{of: 1.5, included: false}", HALF, "").made().fits());
    }

    /** An included allowance is in the box already. */
    @Test
    void addsNoIncludedAllowanceAgain() {
        LayResult result = laid("100, 100", "{of: 1.5, included: true}", HALF, "");
        assertEquals(700, box(result).widthMm(), WITHIN_MM);
        assertEquals(600, box(result).heightMm(), WITHIN_MM);
    }

    /** A hem of 4 turned twice takes 4.6, the side has 2.5, the neck 0.6, the other side 1. */
    @Test
    void heedsHemsAndOwnAllowances() {
        LayResult result =
                laid(
                        "100, 100",
                        "{of: 1, included: false}",
                        "box: [30, 60], edges: {side: 40, hem: 30, neckline: 12}, allowance: {side:"
                                + " 2.5, neckline: 0.6}",
                        "hems: {hem: {on: [back.hem], depth: 4, turned: twice}}");
        assertEquals(300 + 25 + 10, box(result).widthMm(), WITHIN_MM);
        assertEquals(600 + 46 + 6, box(result).heightMm(), WITHIN_MM);
    }

    /** An edge of which nothing is known may lie at either side: its 3 cm are added to both. */
    @Test
    void addsWhatMayLieAnywhereToBoth() {
        LayResult result =
                laid(
                        "100, 100",
                        "{of: 1, included: false}",
                        "box: [30, 60], edges: {Zipfel: 20}, allowance: {Zipfel: 3}",
                        "");
        assertEquals(300 + 40, box(result).widthMm(), WITHIN_MM);
        assertEquals(600 + 40, box(result).heightMm(), WITHIN_MM);
    }

    /** A yoke with its top on the fold opens upward; it is as long as the box is wide. */
    @Test
    void opensAtALevelFold() {
        LayResult result =
                laid(
                        "100, 100",
                        "{of: 1, included: false}",
                        "fold: Bruch, box: [40, 20], edges: {Bruch: 40}",
                        "");
        assertEquals(420, box(result).widthMm(), WITHIN_MM);
        assertEquals(420, box(result).heightMm(), WITHIN_MM);
    }

    /** On folded cloth the half lies on its fold: 35 and one seam wide. */
    @Test
    void liesOnTheFoldOfFoldedCloth() {
        LayResult result =
                laid(
                        "80, 100",
                        "{of: 1.5, included: false}",
                        HALF,
                        "lay: {layers: folded lengthwise}");
        assertTrue(result.made().fits());
        assertEquals(365, box(result).widthMm(), WITHIN_MM);
        assertEquals(List.of(), LaidOnCloth.faults(result.made().stocks().get(0)), "as it is cut");
    }
}
