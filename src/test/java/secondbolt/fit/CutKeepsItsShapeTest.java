package secondbolt.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.worksheet.Finding;

/** What is cut does not grow: a front of 60 stays 60, whatever the pattern is altered to. */
class CutKeepsItsShapeTest {
    private static final String PATTERN =
            """
            cloth: {sheet: {size: [130, 200], prewash: done}}
            pattern:
              seam allowance: {of: 0, included: true}
              pieces:
                front: {cut: pair, rectangle: [25, 60], lines: {body: 30}}
                back: {cut: 1, rectangle: [50, 60], lines: {body: 30}}
              seams:
                - [front.left, back.left]
            alterations:
              - {lengthen: body, by: 8}
            """;

    private static WrittenPattern cut(String first, String second) {
        return WrittenPattern.cm(
                PATTERN
                        + "cut so far:\n"
                        + "  - {piece: front, cloth: sheet, at: [0, 0]"
                        + first
                        + "}\n"
                        + (second.isEmpty()
                                ? ""
                                : "  - {piece: front, cloth: sheet, at: [30, 0], mirrored: yes"
                                        + second
                                        + "}\n"));
    }

    private static List<String> codes(WrittenPattern written) {
        return written.findings().stream()
                .map(Finding::code)
                .filter(code -> !code.equals("alteration-unchecked-edges"))
                .toList();
    }

    /** Both fronts were cut before: 60 on the front against 60 + 8 = 68 on the back. */
    @Test
    void aPieceCutBeforeAnAlterationDoesNotFollowIt() {
        WrittenPattern written = cut(", altered: none", ", altered: none");
        assertEquals(600, written.afterMm("front", "left"), 0.01);
        assertEquals(680, written.afterMm("back", "left"), 0.01);
        assertEquals(1, written.coded("seam-apart-as-cut").size());
        assertEquals(1, written.coded("cut-keeps-its-shape").size(), "told once");
        assertFalse(written.sound().seams().get(0).meets());
    }

    @Test
    void aPieceCutWithItFollowsIt() {
        String had = ", altered: [{lengthen: body, by: 8}]";
        WrittenPattern written = cut(had, had);
        assertEquals(680, written.afterMm("front", "left"), 0.01);
        assertTrue(written.sound().seams().get(0).meets());
        assertEquals(
                2,
                written.sound().altered().get(0).changes().stream()
                        .filter(change -> change.edge().piece().equals("front"))
                        .count());
        assertEquals(List.of(), codes(written));
    }

    /** It was cut when 5 were written, and 8 are now: 65 against 68. */
    @Test
    void anAmountThatWasChangedSinceDoesNotReachIt() {
        String had = ", altered: [{lengthen: body, by: 5}]";
        WrittenPattern written = cut(had, had);
        assertEquals(650, written.afterMm("front", "left"), 0.01);
        String apart = written.coded("seam-apart-as-cut").get(0);
        assertTrue(
                apart.contains("the left edge of the front is 65 cm, too short by 30 mm"), apart);
    }

    /** It is asked; no seam is said to meet until then, and what is advised is taken. */
    @Test
    void whereItIsNotToldItIsAsked() {
        WrittenPattern written = cut("", "");
        assertFalse(written.sound().seams().get(0).meets());
        assertEquals(List.of("seam-not-known", "cut-alterations-not-told"), codes(written));
        String asks = written.coded("cut-alterations-not-told").get(0);
        assertTrue(asks.contains("`altered: none`"), asks);
        assertTrue(asks.contains("`altered: [{lengthen: body, by: 8}]`"), asks);
    }

    /** One of the pair is cut at 60, the other would become 68. */
    @Test
    void aPairThatWouldDifferIsToldAndSoIsItsSeam() {
        WrittenPattern written = cut(", altered: none", "");
        assertEquals(680, written.afterMm("front", "left"), 0.01);
        assertEquals(List.of("seam-apart-as-cut", "cut-copies-differ"), codes(written));
    }

    @Test
    void aSpoiltPieceIsCutAnewAsItIsNow() {
        WrittenPattern written = cut(", altered: none, spoilt: yes", ", spoilt: yes");
        assertEquals(680, written.afterMm("front", "left"), 0.01);
        assertEquals(List.of(), codes(written));
    }

    /** An alteration that does not touch the cut piece asks nothing. */
    @Test
    void whatIsNotAlteredIsNotAskedAbout() {
        WrittenPattern written =
                WrittenPattern.cm(
                        PATTERN.replace(
                                        "front: {cut: pair, rectangle: [25, 60], lines: {body:"
                                                + " 30}}",
                                        "front: {cut: pair, rectangle: [25, 68]}")
                                + "cut so far:\n  - {piece: front, cloth: sheet, at: [0, 0]}\n");
        assertEquals(List.of(), written.coded("cut-alterations-not-told"));
    }
}
