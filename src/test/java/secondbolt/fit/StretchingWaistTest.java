package secondbolt.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import secondbolt.worksheet.Finding.Level;

/**
 * The advice on a circular waist. Source: The New Dressmaker, 1921, "Hanging a circular skirt":
 * being cut on the bias it always stretches; it hangs two or three days before its hem. Stay
 * stitching as soon as the curved edge is cut: Indian Agricultural Statistics Research Institute,
 * e-course, 2011. Measuring again before the band is cut: common practice, no source.
 */
class StretchingWaistTest {
    private static List<String> notes(String lines) {
        return WrittenPattern.cm("pattern:\n  pieces:\n" + lines).told(Level.NOTE);
    }

    @Test
    void aHalfCircleSkirtIsStayStitchedHangsAndDecidesItsBand() {
        List<String> notes =
                notes(
                        """
                            skirt: {cut: 1, ring: {inner: 24, outer: 90, turn: 180}}
                            band: {cut: 1, rectangle: [75.4, 8]}
                          seams: [[skirt.waist, band.bottom]]
                        """);
        assertEquals(1, notes.size());
        String note = notes.get(0);
        assertTrue(note.startsWith("The waist of skirt turns by 180°, so part of it lies"), note);
        assertTrue(note.contains("a quarter of it first in scrap or an old sheet"), note);
        assertTrue(note.contains("Stay-stitch the edge just inside its seam allowance"), note);
        assertTrue(note.contains("before you cut band to length"), note);
        assertTrue(note.contains("Let it hang before its hem is levelled"), note);
    }

    /** One source in the words, the others numbered at the end of the page. */
    @Test
    void namesOneSourceAndListsTheOthers() {
        String note =
                notes("    skirt: {cut: 1, ring: {inner: 24, outer: 90, turn: 180}}\n").get(0);
        assertTrue(note.contains("(The New Dressmaker, 1921)"), note);
        assertFalse(note.contains("Statistics Research"), note);
        assertFalse(note.contains("common practice"), note);
    }

    @ParameterizedTest
    @ValueSource(ints = {45, 90, 270, 350})
    void anyRingFromAnEighthOfACircleOnIsAdvisedOn(int turn) {
        String note =
                notes("    skirt: {cut: 1, ring: {inner: 24, outer: 90, turn: " + turn + "}}\n")
                        .get(0);
        assertTrue(note.contains("turns by " + turn + "°"), note);
        assertFalse(note.contains("to length"), note);
    }

    @Test
    void bothHalvesOfAPieceOnTheFoldAreCounted() {
        String note =
                notes("    skirt: {cut: 1, fold: left, ring: {inner: 24, outer: 90, turn: 40}}\n")
                        .get(0);
        assertTrue(note.contains("turns by 80°"), note);
    }

    @Test
    void aGoreIsNotAlarmedAbout() {
        assertEquals(
                List.of(), notes("    gore: {cut: 6, panel: {top: 12, bottom: 30, along: 60}}\n"));
    }

    @Test
    void aStraightWaistOnTheBiasStretchesToo() {
        String note =
                notes("    skirt: {cut: 2, grain: bias, panel: {top: 36, bottom: 60, along: 70}}\n")
                        .get(0);
        assertTrue(note.startsWith("The waist of skirt is cut on the bias"), note);
    }

    @Test
    void aBandThatGathersAreSewnToKeepsItsLength() {
        String note =
                notes(
                                """
                                    skirt: {cut: 1, ring: {inner: 40, outer: 90, turn: 180}}
                                    band: {cut: 1, rectangle: [83.8, 8]}
                                  seams: [{join: [skirt.waist, band.bottom], gather: 1.5}]
                                """)
                        .get(0);
        assertFalse(note.contains("to length"), note);
    }
}
