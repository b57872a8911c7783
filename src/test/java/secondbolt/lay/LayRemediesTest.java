package secondbolt.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.lay.design.LayResult;

/** What is tried where not all pieces fit: with what is missing, on what is left of the cloth. */
class LayRemediesTest {
    private static String back(String shape) {
        return "cloth: {strip: {size: [45, 260], prewash: done}}\n"
                + "pattern:\n  seam allowance: {of: 1, included: false}\n  pieces:\n    back: "
                + shape
                + "\n";
    }

    private static List<String> helps(LayResult result) {
        return result.remedies().stream()
                .filter(remedy -> remedy.leftOver().isEmpty())
                .map(LayResult.Remedy::words)
                .toList();
    }

    /**
     * A back of 80 has a cutting line 82 wide; half of it with its allowance is 41 + 1 = 42, and
     * two of 72 take 144 of the length.
     */
    @Test
    void aBackTooWideForTheClothIsTriedWithACentreSeam() {
        LayResult result = LayText.result(back("{cut: 1, rectangle: [80, 70]}"));
        assertFalse(result.made().fits());
        assertEquals(
                List.of("back in two parts, with a centre seam along the grain"), helps(result));
    }

    /**
     * A back of 90 has halves of 92 / 2 + 1 = 47, wider than the cloth; three panels are 92 / 3 + 2
     * = 32.7 wide at most, and take 3 times 72 = 216 of the length.
     */
    @Test
    void aBackWhoseHalvesAreStillTooWideIsTriedInPanels() {
        LayResult result = LayText.result(back("{cut: 1, rectangle: [90, 70]}"));
        assertEquals(List.of("back in 3 panels, with seams along the grain"), helps(result));
    }

    /** What is advised is a line of the file, and it mends what it is advised for. */
    @Test
    void aHalfOnTheFoldBecomesAPair() {
        LayResult result = LayText.result(back("{cut: 1, fold: left, rectangle: [40, 70]}"));
        assertEquals(
                List.of(
                        "back in two parts, with a centre seam along the grain (write it with `cut:"
                                + " pair` and without `fold`)"),
                helps(result));
        assertTrue(LayText.result(back("{cut: pair, rectangle: [40, 70]}")).made().fits());
    }

    /**
     * Of a pair one front is cut and the other was spoilt: 30 of 60 by 62 are left beside the
     * spoilt one and below it, so a seam across helps; the front that is cut is not halved.
     */
    @Test
    void aRemedyCountsOnlyWhatIsMissing() {
        LayResult result =
                LayText.result(
                        """
                        cloth: {sheet: {size: [61, 95], prewash: done}}
                        pattern:
                          seam allowance: {of: 1, included: false}
                          pieces:
                            front: {cut: pair, rectangle: [28, 58]}
                        cut so far:
                          - {piece: front, cloth: sheet, at: [0, 0]}
                          - {piece: front, cloth: sheet, at: [31, 0], mirrored: yes, spoilt: yes}
                        """);
        assertFalse(result.made().fits());
        assertTrue(
                helps(result).contains("front 2 in two parts, with a seam across"),
                () -> result.remedies().toString());
        result.remedies()
                .forEach(r -> assertTrue(r.leftOver().size() < 3, () -> "more than one: " + r));
    }
}
