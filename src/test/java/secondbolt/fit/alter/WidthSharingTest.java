package secondbolt.fit.alter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.fit.WrittenPattern;
import secondbolt.worksheet.Finding;

/** A width is shared by what goes round the body; what is sewn to it follows, a pocket does not. */
class WidthSharingTest {
    private static final double EXACT_MM = 0.01;

    private static double gainMm(WrittenPattern pattern, String piece, String edge) {
        return pattern.afterMm(piece, edge) - pattern.beforeMm(piece, edge);
    }

    /** 4 cm over two panels of two sides: 2 a panel; the band loses 4, the pocket nothing. */
    @Test
    void aPocketTakesNoShareAndTheBandTakesAll() {
        String skirt =
                """
                pattern:
                  pieces:
                    pocket: {cut: 2, rectangle: [14, 16]}
                    panel: {cut: 2, rectangle: [52, 60]}
                    band: {cut: 1, rectangle: [104, 8]}
                  seams: [SIDES[2 panel.top, band.bottom]]
                alterations: [{narrow: [left, right], by: 4}]
                """;
        for (String sides : List.of("[panel.left, panel.right], ", "")) {
            WrittenPattern narrow = WrittenPattern.cm(skirt.replace("SIDES", sides));
            assertEquals(-20, gainMm(narrow, "panel", "top"), EXACT_MM);
            assertEquals(-40, gainMm(narrow, "band", "bottom"), EXACT_MM);
            assertEquals(0, gainMm(narrow, "pocket", "top"), EXACT_MM);
            assertTrue(narrow.told(Finding.Level.STOP).isEmpty(), narrow.toString());
        }
    }

    /** The tiers of a skirt, each gathered 1.5 to 1 into the one above: 4, 6 and 9 cm. */
    @Test
    void whatIsGatheredFollowsByAsManyTimes() {
        WrittenPattern tiers =
                WrittenPattern.cm(
                        """
                        pattern:
                          pieces:
                            top tier: {cut: 2, rectangle: [40, 30]}
                            middle tier: {cut: 2, rectangle: [60, 30]}
                            low tier: {cut: 3, rectangle: [60, 30]}
                          seams:
                            - [top tier.left, top tier.right]
                            - [middle tier.left, middle tier.right]
                            - {join: [2 middle tier.top, 2 top tier.bottom], gather: 1.5}
                            - {join: [3 low tier.top, 2 middle tier.bottom], gather: 1.5}
                        alterations: [{widen: [left, right], by: 4}]
                        """);
        assertEquals(20, gainMm(tiers, "top tier", "bottom"), EXACT_MM);
        assertEquals(30, gainMm(tiers, "middle tier", "top"), EXACT_MM);
        assertEquals(30, gainMm(tiers, "low tier", "top"), EXACT_MM);
    }

    /** 4 cm over four cut edges is 1 an edge; a lining of the back alone takes 1, not 2. */
    @Test
    void aHalfLiningMovesAsFarAsItsPartner() {
        String coat =
                """
                pattern:
                  pieces:
                    front: {cut: pair, rectangle: [26, 70]}
                    back: {cut: 1, fold: left, rectangle: [25, 70]}
                    back lining: {cut: {lining: 1}, fold: left, rectangle: [25, 66]}
                    front interfacing: {cut: {interfacing: pair}, rectangle: [26, 70]}
                  seams: [[front.right, back.right]LINING]
                alterations: [{widen: right, by: 4}]
                """;
        List<String> joins =
                List.of(
                        "",
                        ", [back lining.right, back.right]",
                        ", [back lining.top, back.top]",
                        ", [back lining.bottom, back.bottom]");
        for (String join : joins) {
            WrittenPattern lined = WrittenPattern.cm(coat.replace("LINING", join));
            assertEquals(10, gainMm(lined, "front", "top"), EXACT_MM, join);
            assertEquals(10, gainMm(lined, "back", "top"), EXACT_MM, join);
            assertEquals(10, gainMm(lined, "back lining", "top"), EXACT_MM, join);
            assertEquals(10, gainMm(lined, "front interfacing", "top"), EXACT_MM, join);
        }
    }

    /** A facing in the same cloth, whose side has the maker's own name, moves with its front. */
    @Test
    void aFacingMovesAsFarAsItsPartner() {
        WrittenPattern faced =
                WrittenPattern.inches(
                        """
                        pattern:
                          pieces:
                            front: {cut: 1, fold: mid, outline: [{start: [0, 0]}, {edge: top, to: [10, 0]}, {edge: side, to: [10, 20]}, {edge: hem, to: [0, 20]}, {edge: mid, to: start}]}
                            back: {cut: 1, fold: mid, outline: [{start: [0, 0]}, {edge: top, to: [10, 0]}, {edge: side, to: [10, 20]}, {edge: hem, to: [0, 20]}, {edge: mid, to: start}]}
                            facing: {cut: 1, fold: mid, outline: [{start: [0, 0]}, {edge: top, to: [10, 0]}, {edge: side, to: [10, 3]}, {edge: low, to: [0, 3]}, {edge: mid, to: start}]}
                          seams: [[front.side, back.side], [front.top, facing.top]]
                        alterations: [{widen: side, by: 2}]
                        """);
        // 2 in over four cut edges is half an inch an edge.
        assertEquals(12.7, gainMm(faced, "front", "hem"), EXACT_MM);
        assertEquals(12.7, gainMm(faced, "facing", "low"), EXACT_MM);
    }

    /** A cuff is sewn to a wrist that does not change. */
    @Test
    void whatIsSewnToAnEdgeThatStaysDoesNotChange() {
        WrittenPattern shirt =
                WrittenPattern.cm(
                        """
                        pattern:
                          pieces:
                            body: {cut: 2, rectangle: [60, 70]}
                            sleeve: {cut: pair, panel: {top: 44, bottom: 30, along: 50}}
                            cuff: {cut: 2, rectangle: [30, 6]}
                          seams:
                            - [body.left, body.right]
                            - [sleeve.left, sleeve.right]
                            - [cuff.top, sleeve.hem]
                        alterations: [{widen: [left, right], by: 8}]
                        """);
        assertEquals(40, gainMm(shirt, "body", "top"), EXACT_MM);
        assertEquals(0, gainMm(shirt, "sleeve", "hem"), EXACT_MM);
        assertEquals(0, gainMm(shirt, "cuff", "top"), EXACT_MM);
    }

    /** The fold is no cut edge: 4 cm over a front and a back on the fold are 1 at each side. */
    @Test
    void aFoldIsNotWidened() {
        WrittenPattern tunic =
                WrittenPattern.cm(
                        """
                        pattern:
                          pieces:
                            front: {cut: 1, fold: left, rectangle: [25, 70]}
                            back: {cut: 1, fold: left, rectangle: [25, 70]}
                          seams: [[front.right, back.right]]
                        alterations: [{widen: [left, right], by: 4}]
                        """);
        assertEquals(10, gainMm(tunic, "front", "top"), EXACT_MM);
    }

    /**
     * 4 cm over the four cut sides of a front and a back on the fold is 1 a side, however many
     * edges a side is drawn as: the hem of each half gains 1, all round 4.
     */
    @Test
    void aSideDrawnAsTwoEdgesTakesItsShareOnce() {
        String skirt =
                """
                pattern:
                  pieces:
                    front:
                      cut: 1
                      fold: Mitte
                      outline: [{start: [0, 0]}, {edge: Taille, to: [20, 0]}, {edge: Naht, to: [UPPER, 20]}, {edge: Naht unten, to: [LOWER, 60]}, {edge: Saum, to: [0, 60]}, {edge: Mitte, to: start}]
                    back:
                      cut: 1
                      fold: Mitte
                      outline: [{start: [0, 0]}, {edge: Mitte, to: [0, 60]}, {edge: Saum, to: [LOWER, 60]}, {edge: Naht unten, to: [UPPER, 20]}, {edge: Naht, to: [20, 0]}, {edge: Taille, to: start}]
                  seams: [[front.Naht, back.Naht], [front.Naht unten, back.Naht unten]]
                alterations: [{widen: [Naht, Naht unten], by: 4}]
                """;
        for (String flare : List.of("20 20", "21 24", "22 40")) {
            String[] x = flare.split(" ", -1);
            WrittenPattern wide =
                    WrittenPattern.cm(skirt.replace("UPPER", x[0]).replace("LOWER", x[1]));
            assertEquals(10, gainMm(wide, "front", "Saum"), 0.5, flare);
            assertEquals(10, gainMm(wide, "back", "Saum"), 0.5, flare);
            assertEquals(10, gainMm(wide, "front", "Taille"), 0.5, flare);
            assertEquals(0, gainMm(wide, "front", "Naht"), 0.5, flare);
        }
    }

    /** The same with a pocket opening between, which goes with them. */
    @Test
    void aSideWithAPocketOpeningInItIsOneSide() {
        WrittenPattern wide =
                WrittenPattern.inches(
                        """
                        pattern:
                          pieces:
                            panel:
                              cut: 2
                              outline: [{start: [0, 0]}, {edge: waist, to: [20, 0]}, {edge: side above, to: [20, 3]}, {edge: opening, to: [20, 9]}, {edge: side below, to: [20, 30]}, {edge: hem, to: [0, 30]}, {edge: other side, to: start}]
                        alterations: [{widen: [side above, side below, other side], by: 2}]
                        """);
        assertEquals(25.4, gainMm(wide, "panel", "hem"), EXACT_MM);
        assertEquals(25.4, gainMm(wide, "panel", "waist"), EXACT_MM);
    }

    /** Two sides that meet in a point are two: 2 cm a godet, 1 an edge; known by tape likewise. */
    @Test
    void theSidesOfAGodetAreTwo() {
        WrittenPattern godet =
                WrittenPattern.cm(
                        """
                        pattern:
                          pieces:
                            godet:
                              cut: 2
                              outline: [{start: [10, 0]}, {edge: a, to: [20, 30]}, {edge: hem, to: [0, 30]}, {edge: b, to: start}]
                        alterations: [{widen: [a, b], by: 4}]
                        """);
        assertEquals(20, gainMm(godet, "godet", "hem"), 1.5);
        String box =
                """
                pattern:
                  pieces:
                    panel: {cut: 2, box: [40, 60], edges: {EDGES}}
                alterations: [{widen: [Naht, Naht unten], by: 4}]
                """;
        assertEquals(420, acrossMm(box.replace("EDGES", "Naht: 20, Naht unten: 40")), EXACT_MM);
        assertEquals(420, acrossMm(box.replace("EDGES", "Naht: 60, Naht unten: 60")), EXACT_MM);
    }

    /**
     * A sleeve's two sides are two, though its cap leads from one to the other without a corner.
     */
    @Test
    void theSidesOfASleeveAreTwo() {
        WrittenPattern sleeve =
                WrittenPattern.cm(
                        """
                        pattern:
                          pieces:
                            sleeve:
                              cut: pair
                              outline: [{start: [0, 12]}, {edge: cap, to: [40, 12], through: [[20, 0]]}, {edge: a, to: [36, 50]}, {edge: wrist, to: [4, 50]}, {edge: b, to: start}]
                        alterations: [{widen: [a, b], by: 4}]
                        """);
        assertEquals(20, gainMm(sleeve, "sleeve", "wrist"), EXACT_MM);
    }

    private static double acrossMm(String boxed) {
        return WrittenPattern.cm(boxed)
                .sound()
                .find("panel")
                .orElseThrow()
                .shape()
                .asTaped()
                .orElseThrow()
                .across()
                .millimetres();
    }
}
