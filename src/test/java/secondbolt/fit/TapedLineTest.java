package secondbolt.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.fit.alter.TapedLine;
import secondbolt.fit.result.FitResult;
import secondbolt.fit.result.TapedGaps;
import secondbolt.fit.seam.SeamCheck;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.Meanings;
import secondbolt.pattern.piece.Piece;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Open;

/**
 * A shirt of which the maker has only the tape's figures: a cut on the lengthen line spreads what
 * crosses it and nothing else (Central Washington University costume text, chapter 17).
 */
class TapedLineTest {
    private static final double EXACT_MM = 1e-6;

    private static String shirt(String frontLine, String sleeveLine, String alteration) {
        return """
        pattern:
          pieces:
            front: {cut: pair, lines: {body: FRONT}, box: [31, 74], edges: {side: 47.1, centre front: 65, hem: 30, armhole: 26, shoulder: 12.5}}
            back: {cut: 1, fold: centre back, lines: {body: {at: 44, crosses: [side, centre back]}}, box: [29, 76], edges: {side: 47.1, centre back: 74, armhole: 20}}
            sleeve: {cut: pair, lines: {sleeve: SLEEVE}, box: [42, 58], edges: {cap: 47, underarm: 44, wrist: 26}}
          seams:
            - {join: [front.side, back.side]}
            - {join: [sleeve.cap, front.armhole + back.armhole], ease: 1}
        alterations: [{ALTERATION}]
        """
                .replace("FRONT", frontLine)
                .replace("SLEEVE", sleeveLine)
                .replace("ALTERATION", alteration);
    }

    @Test
    void aHemAnArmholeAndACapNeverGrowUnasked() {
        WrittenPattern body = WrittenPattern.cm(shirt("40", "30", "lengthen: body, by: 3"));
        assertEquals(300, body.afterMm("front", "hem"), EXACT_MM);
        assertEquals(260, body.afterMm("front", "armhole"), EXACT_MM);
        assertEquals(125, body.afterMm("front", "shoulder"), EXACT_MM);
        assertEquals(
                List.of(),
                WrittenPattern.cm(shirt("40", "30", "lengthen: sleeve, by: 2")).told(Level.STOP));
    }

    @Test
    void aSideTooLongToLieAboveOrBelowTheLineCrossesIt() {
        WrittenPattern body = WrittenPattern.cm(shirt("40", "30", "lengthen: body, by: 2.5"));
        assertEquals(496, body.afterMm("front", "side"), EXACT_MM);
        assertEquals(675, body.afterMm("front", "centre front"), EXACT_MM);
        // 47.1 of side may lie wholly in the 49 below this line.
        WrittenPattern high = WrittenPattern.cm(shirt("25", "30", "lengthen: body, by: 2.5"));
        assertEquals(471, high.afterMm("front", "side"), EXACT_MM);
        assertTrue(high.sound().find("front").orElseThrow().shape().isOpen("side"));
    }

    @Test
    void aJoinOfAnEdgeThatMayCrossIsNotKnownUntilSheSays() {
        WrittenPattern open = WrittenPattern.cm(shirt("40", "30", "lengthen: body, by: 3"));
        SeamCheck cap = open.sound().seams().get(1);
        assertFalse(cap.isKnown() || cap.meets() || cap.isBroken());
        List<String> told = open.told(Level.WARNING);
        assertEquals(told, open.coded("seam-not-known"));
        assertEquals(1, told.size());
        assertTrue(
                told.get(0).contains("is not known: the armhole of the front is known by tape"),
                told.get(0));
        assertTrue(
                told.get(0).contains("`lines: {body: {at: 40, crosses: [side, centre front]}}`"),
                told.get(0));
        assertEquals(List.of(), open.told(Level.STOP));

        WrittenPattern said =
                WrittenPattern.cm(
                        shirt(
                                "{at: 40, crosses: [side, centre front]}",
                                "30",
                                "lengthen: body, by: 3"));
        assertTrue(said.sound().seams().stream().allMatch(SeamCheck::meets));
        assertEquals(List.of(), said.told(Level.WARNING));
    }

    @Test
    void whatSheSaysDecidesAgainstNameAndLength() {
        WrittenPattern said =
                WrittenPattern.cm(
                        shirt("{at: 40, crosses: [armhole]}", "30", "lengthen: body, by: 3"));
        assertEquals(471, said.afterMm("front", "side"), EXACT_MM);
        assertEquals(290, said.afterMm("front", "armhole"), EXACT_MM);
        assertTrue(said.sound().seams().get(0).isBroken());
    }

    @Test
    void nothingIsAskedOfALineThatIsNotMoved() {
        FitResult sleeve = WrittenPattern.cm(shirt("40", "30", "lengthen: sleeve, by: 2")).sound();
        TapedGaps gaps = TapedGaps.of(sleeve, Tape.CENTIMETRE);
        assertEquals(
                List.of("whether the line sleeve of sleeve crosses cap, wrist"),
                gaps.open().stream().map(Open::what).toList());
        assertTrue(
                gaps.open()
                        .get(0)
                        .blocks()
                        .contains("the cap of the sleeve to the armhole of the front"));
        assertEquals(
                List.of("sleeve: which taped edges its line sleeve crosses"),
                gaps.assumed().stream().map(Assumed::what).toList());
        assertEquals("underarm", gaps.assumed().get(0).value());
    }

    @Test
    void aLineLowerDownMovesWithTheOneAbove() {
        WrittenPattern two =
                WrittenPattern.cm(
                        """
                        pattern:
                          pieces:
                            dress: {cut: 2, lines: {body: 40, skirt: 80}, box: [50, 110], edges: {left: 90, right: 90}}
                        alterations: [{lengthen: body, by: 3}, {shorten: skirt, by: 2}]
                        """);
        Piece dress = two.sound().find("dress").orElseThrow();
        // The line itself comes to lie in the middle of the gap, or on the fold: half of it.
        assertEquals(415, dress.lines().get("body").millimetres(), EXACT_MM);
        assertEquals(820, dress.lines().get("skirt").millimetres(), EXACT_MM);
        assertEquals(Length.ofMillimetres(1110), dress.shape().asTaped().orElseThrow().along());
    }

    @Test
    void anOpeningOnSuchAnEdgeIsNotJudged() {
        WrittenPattern neck =
                WrittenPattern.cm(
                        """
                        wearer: {age: adult, measurements: {head: 57}}
                        pattern:
                          pieces:
                            front: {cut: 2, lines: {body: 40}, box: [50, 70], edges: {neckline: 20}}
                          openings: [{what: neck, edges: 2 front.neckline, over: head}]
                        alterations: [{lengthen: body, by: 3}]
                        """);
        assertEquals(List.of(), neck.told(Level.STOP));
        assertEquals(1, neck.told(Level.WARNING).size());
        assertEquals(1, neck.coded("opening-not-known").size());
    }

    @Test
    void aNameMakesAnEdgeLengthwiseOnlyIfNoWordSpeaksAgainstIt() {
        WrittenPattern any = WrittenPattern.cm(shirt("40", "30", "lengthen: body, by: 3"));
        Piece front = any.sound().find("front").orElseThrow();
        for (String name :
                List.of("side", "left side seam", "centre front", "inside leg", "underarm seam")) {
            assertTrue(TapedLine.isLengthwise(front, name, Meanings.NONE), name);
        }
        for (String name :
                List.of("hem", "waist", "left armhole", "side hem", "neckline", "front", "cap")) {
            assertFalse(TapedLine.isLengthwise(front, name, Meanings.NONE), name);
        }
    }

    @Test
    void crossesNamesTapedEdgesOfABoxOnly() {
        WrittenPattern drawn =
                WrittenPattern.cm(
                        "pattern: {pieces: {band: {cut: 1, lines: {body: {at: 4, crosses: [left]}},"
                                + " rectangle: [20, 8]}}}\n");
        assertTrue(drawn.mistakes().get(0).contains("of a piece that is drawn"));
        WrittenPattern other =
                WrittenPattern.cm(
                        shirt("{at: 40, crosses: [sides]}", "30", "lengthen: body, by: 3"));
        assertTrue(
                other.mistakes().get(0).contains("`sides`, which is no taped edge"),
                other.mistakes().toString());
    }

    /** Whether its hem or its waist ends at the side that is widened, a box does not show. */
    @Test
    void aWidenedBoxIsNeverSaidToMeet() {
        WrittenPattern skirt =
                WrittenPattern.cm(
                        """
                        pattern:
                          pieces:
                            front: {cut: 2, box: [30, 60], edges: {side: 60, waist: 24}}
                            band: {cut: 1, rectangle: [48, 4]}
                          seams: [[2 front.waist, band.top]]
                        alterations: [{widen: side, by: 4}]
                        """);
        assertFalse(skirt.sound().seams().get(0).meets());
        String told = skirt.coded("seam-not-known").get(0);
        assertTrue(told.contains("is not known") && told.contains("Draw front"), told);
        assertTrue(skirt.told(Finding.Level.STOP).isEmpty());
    }
}
