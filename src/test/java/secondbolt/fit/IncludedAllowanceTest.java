package secondbolt.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.fit.result.EdgeRow;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;
import secondbolt.pattern.EdgeSum;
import secondbolt.worksheet.Finding;

/**
 * Outlines that include the seam allowance: what meets is the sewing line inside them. Lengths by
 * the circle's formula and by Pythagoras, derived.
 */
class IncludedAllowanceTest {
    private static final double WITHIN_MM = 0.02;

    private static WrittenPattern rings(String inner, String band) {
        return WrittenPattern.cm(
                """
                pattern:
                  seam allowance: {of: 1.5, included: true}
                  pieces:
                    skirt:
                      cut: 4
                      ring: {inner: %s, outer: 70, turn: 90}
                      allowance: {left: 0, right: 0}
                    band: {cut: 1, rectangle: [%s, 9], allowance: {left: 0, right: 0}}
                  seams: [[4 skirt.waist, band.bottom]]
                """
                        .formatted(inner, band));
    }

    /** Four quarters of radius 10.44 + 1.5 = 11.94 cm make 75.02 cm. */
    @Test
    void aRingsWaistIsMeasuredOnItsSewingLine() {
        WrittenPattern pattern = rings("10.44", "75");
        assertEquals(Math.PI / 2 * 119.4, pattern.afterMm("skirt", "waist"), WITHIN_MM);
        assertTrue(pattern.sound().seams().get(0).meets());
        assertTrue(pattern.told(Finding.Level.STOP).isEmpty());
    }

    /** On the cut edges this pair would seem to meet; sewn it is 9.4 cm apart. */
    @Test
    void aBandAsLongAsTheCutEdgeDoesNotMeet() {
        WrittenPattern pattern = rings("10.44", "65.6");
        assertFalse(pattern.sound().seams().get(0).meets());
    }

    /** A rectangle loses the allowance at each end; a side on the fold loses none. */
    @Test
    void neighboursAllowancesAreTakenOff() {
        WrittenPattern pattern =
                WrittenPattern.cm(
                        """
                        pattern:
                          seam allowance: {of: 1.5, included: true}
                          pieces:
                            panel: {cut: 1, rectangle: [30, 40], allowance: {top: 2, left: 1}}
                            half: {cut: 1, fold: left, rectangle: [30, 40]}
                        """);
        assertEquals(300 - 10 - 15, pattern.afterMm("panel", "top"), WITHIN_MM);
        assertEquals(400 - 20 - 15, pattern.afterMm("panel", "left"), WITHIN_MM);
        assertEquals(300 - 15, pattern.afterMm("half", "top"), WITHIN_MM);
    }

    /** A slanting side ends where the neighbours' sewing lines cross its own. */
    @Test
    void aSlantingSideIsMeasuredBetweenTheSewnCorners() {
        WrittenPattern pattern =
                WrittenPattern.cm(
                        """
                        pattern:
                          seam allowance: {of: 1, included: true}
                          pieces: {gore: {cut: 6, panel: {top: 14, bottom: 74, along: 40}}}
                        """);
        // A side of 30 to 40 to 50: set in by 1 cm at the top and at the hem, 38 cm down remain.
        assertEquals(380 * 50.0 / 40, pattern.afterMm("gore", "left"), WITHIN_MM);
        // The sides' sewing lines lie 1 · 50/40 cm in; at the top's, 1 cm down, 0.75 cm farther
        // out.
        assertEquals(140 - 2 * (12.5 - 7.5), pattern.afterMm("gore", "waist"), WITHIN_MM);
    }

    /** A place on a placket counts from the sewn end, not from the cut one. */
    @Test
    void aRowBeginsAtTheSewnCorner() {
        WrittenPattern pattern =
                WrittenPattern.cm(
                        """
                        pattern:
                          seam allowance: {of: 1.5, included: true}
                          pieces:
                            front: {cut: pair, rectangle: [30, 60], lines: {body: 30}, marks: [{what: bust, at: [10, 20]}]}
                        alterations: [{lengthen: body, by: 2}]
                        """);
        EdgeRow row =
                new EdgeRow(
                        pattern.sound(),
                        new EdgeSum(List.of(new EdgeSum.Term(1, new PieceEdge("front", "left")))));
        assertEquals(620 - 30, row.length().millimetres(), WITHIN_MM);
        assertEquals(100, row.carried(Length.ofMillimetres(100)).millimetres(), WITHIN_MM);
        assertEquals(420, row.carried(Length.ofMillimetres(400)).millimetres(), WITHIN_MM);
        assertEquals(200 - 15, row.level("front", "bust").orElseThrow().millimetres(), WITHIN_MM);
    }

    /** What an alteration changes is told on the sewing line: 50 − 3 and 52 − 3. */
    @Test
    void tellsWhatFollowsOnTheSewingLine() {
        WrittenPattern pattern =
                WrittenPattern.cm(
                        """
                        pattern:
                          seam allowance: {of: 1.5, included: true}
                          pieces: {front: {cut: pair, rectangle: [30, 50], lines: {body: 30}}}
                        alterations: [{lengthen: body, by: 2}]
                        """);
        var change = pattern.sound().altered().get(0).changes().get(0);
        assertEquals(470, change.before().millimetres(), WITHIN_MM);
        assertEquals(490, change.after().millimetres(), WITHIN_MM);
    }
}
