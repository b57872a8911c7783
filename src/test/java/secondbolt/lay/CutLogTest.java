package secondbolt.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.lay.design.LayResult;
import secondbolt.lay.piece.LayPiece;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;

/** What is cut so far is checked: hands and counts first, then where each piece was cut. */
class CutLogTest {
    /** A front with a slanted shoulder has a hand; a pocket has none. */
    private static final String PATTERN =
            """
            pattern:
              seam allowance: {of: 0, included: true}
              pieces:
                front:
                  cut: pair
                  outline:
                    - {start: [0, 0]}
                    - {edge: top, to: [20, 4]}
                    - {edge: side, to: [30, 60]}
                    - {edge: hem, to: [0, 60]}
                    - {edge: centre front, to: start}
                yoke: {cut: 1, rectangle: [20, 10]}
                pocket: {cut: pair, rectangle: [10, 10]}
            """;

    private static final String CLOTH = "cloth: {sheet: {size: [130, 200], prewash: done}}\n";

    private static LayResult cut(String cloth, String... lines) {
        StringBuilder text = new StringBuilder(cloth + PATTERN + "cut so far:\n");
        for (String line : lines) {
            text.append("  - {cloth: sheet, ").append(line).append("}\n");
        }
        return LayText.result(text.toString());
    }

    private static List<String> codes(LayResult result) {
        return result.log().stream().map(Finding::code).toList();
    }

    private static List<String> stillToCut(LayResult result) {
        return result.made().stocks().get(0).laid().stream()
                .map(laid -> laid.piece())
                .map(LayPiece::words)
                .sorted()
                .toList();
    }

    /**
     * Two of the pair with the pattern face up: one too many of that hand, the other is missing.
     */
    @Test
    void twoOfOneHandSaySoFirstWithTheWaysOut() {
        LayResult result =
                cut(
                        CLOTH,
                        "piece: front, at: [0, 0]",
                        "piece: front, at: [25, 0]",
                        "piece: yoke, at: [60, 0]",
                        "piece: yoke, at: [90, 0]");
        assertEquals(
                List.of("cut-of-one-hand", "cut-too-many", "cut-pieces-overlap"), codes(result));
        Finding first = result.log().get(0);
        assertEquals(Level.STOP, first.level());
        assertEquals(
                "front is cut twice of one hand (pattern face up); the pattern has 1 of that hand"
                        + " and 1 of the other.",
                first.text());
        assertEquals(first, LayFindings.of(result, Tape.CENTIMETRE).get(0));
        assertTrue(stillToCut(result).contains("front 2"));
    }

    /** Each way out is a line that the tool takes, and it mends what it is advised for. */
    @Test
    void everyWayOutMendsIt() {
        LayResult over =
                cut(
                        CLOTH,
                        "piece: front, at: [0, 0]",
                        "piece: front, at: [40, 0], turned over: yes");
        assertEquals(List.of(), codes(over));
        assertEquals(List.of("pocket 1", "pocket 2", "yoke"), stillToCut(over));
        LayResult spoilt =
                cut(CLOTH, "piece: front, at: [0, 0]", "piece: front, at: [40, 0], spoilt: yes");
        assertEquals(List.of(), codes(spoilt));
        assertEquals(List.of("front 2", "pocket 1", "pocket 2", "yoke"), stillToCut(spoilt));
        LayResult mirrored =
                cut(CLOTH, "piece: front, at: [0, 0]", "piece: front, at: [40, 0], mirrored: yes");
        assertEquals(List.of(), codes(mirrored));
    }

    /** A rectangle serves as either hand: it is not cut a third time, and no cutting is stopped. */
    @Test
    void whatIsItsOwnMirrorImageServesAsEitherHand() {
        LayResult result = cut(CLOTH, "piece: pocket, at: [0, 0]", "piece: pocket, at: [20, 0]");
        assertEquals(List.of("cut-of-one-hand"), codes(result));
        assertEquals(Level.CAUTION, result.log().get(0).level());
        assertEquals(List.of("front 1", "front 2", "yoke"), stillToCut(result));
    }

    @Test
    void aHandThatThePatternHasNoneOfIsTold() {
        assertEquals(
                List.of("cut-of-one-hand"),
                codes(cut(CLOTH, "piece: yoke, at: [0, 0], mirrored: yes")));
    }

    /** The front is 30 by 60: at 101 across it ends at 131, 1 cm beyond 130; at 100 it fits. */
    @Test
    void aPieceBeyondTheEdgeIsTold() {
        assertEquals(List.of("cut-beyond-edge"), codes(cut(CLOTH, "piece: front, at: [101, 0]")));
        assertEquals(List.of(), codes(cut(CLOTH, "piece: front, at: [100, 140]")));
    }

    /** Side by side at 20 they touch and do not overlap; at 19.5 they overlap by 5 mm. */
    @Test
    void piecesCutOverEachOtherAreTold() {
        assertEquals(
                List.of(),
                codes(cut(CLOTH, "piece: yoke, at: [0, 0]", "piece: pocket, at: [20, 0]")));
        assertEquals(
                List.of("cut-pieces-overlap"),
                codes(cut(CLOTH, "piece: yoke, at: [0, 0]", "piece: pocket, at: [19.5, 0]")));
    }

    @Test
    void aPieceAcrossTheLineOfASpoiltOneIsToldAndOneInsideIsNot() {
        String spoilt = "piece: yoke, at: [0, 0], spoilt: yes";
        assertEquals(List.of(), codes(cut(CLOTH, spoilt, "piece: pocket, at: [5, 0]")));
        assertEquals(
                List.of("cut-pieces-overlap"),
                codes(cut(CLOTH, spoilt, "piece: pocket, at: [15, 0]")));
    }

    @Test
    void aFlawANapAndAGrainAreTold() {
        String cloth =
                "cloth: {sheet: {size: [130, 200], prewash: done, nap: one-way, flaws: [{what:"
                        + " moth hole, at: [10, 5], round: 1}]}}\n";
        LayResult result =
                cut(
                        cloth,
                        "piece: yoke, at: [0, 0]",
                        "piece: front, at: [40, 0], turn: 180",
                        "piece: pocket, at: [90, 0], turn: 90");
        assertEquals(List.of("cut-on-flaw", "cut-against-nap", "cut-off-grain"), codes(result));
        assertTrue(result.log().get(0).text().contains("moth hole"));
    }

    /** Of a cloth whose shrinkage is not known it still counts as cut. */
    @Test
    void whatIsCutOfAClothOfUnknownSizeIsNotCutAgain() {
        LayResult result =
                LayText.result(
                        "cloth: {sheet: {size: [130, 200], prewash: done}, other: {size:"
                                + " unknown}}\n"
                                + PATTERN
                                + "cut so far:\n  - {piece: yoke, cloth: other, at: [0, 0]}\n");
        assertEquals(List.of("cut-place-not-known"), codes(result));
        assertEquals(List.of("front 1", "front 2", "pocket 1", "pocket 2"), stillToCut(result));
    }

    /** Cut at 60 the front leaves 80 below it of 140; if it is not told, 60 or 68, 72 are left. */
    @Test
    void aCutPieceTakesThePlaceOfTheShapeItWasCutIn() {
        String text =
                """
                cloth: {sheet: {size: [30, 140], prewash: done}}
                pattern:
                  seam allowance: {of: 0, included: true}
                  pieces:
                    front: {cut: 1, rectangle: [30, 60], lines: {body: 30}}
                alterations: [{lengthen: body, by: 8}]
                lay: {gap: 0}
                cut so far: [{piece: front, cloth: sheet, at: [0, 0]ALTERED}]
                """;
        assertEquals(80 * 300.0 * 10, leftMm2(text.replace("ALTERED", ", altered: none")), 1);
        assertEquals(72 * 300.0 * 10, leftMm2(text.replace("ALTERED", "")), 1);
    }

    private static double leftMm2(String text) {
        return LayText.result(text).made().stocks().get(0).spreads().get(0).sound().areaMm2();
    }
}
