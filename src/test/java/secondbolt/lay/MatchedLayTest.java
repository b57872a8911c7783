package secondbolt.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.garment.Direction;
import secondbolt.lay.design.BoltLength;
import secondbolt.lay.design.LayResult;
import secondbolt.lay.piece.LaidPiece;
import secondbolt.lay.piece.PinPoint;
import secondbolt.lay.stock.Matching;
import secondbolt.lay.stock.StockLay;
import secondbolt.measure.Length;
import secondbolt.shape.Point;

/**
 * Stripes and checks that run on over the seams. That seams match on the sewing line, whole repeats
 * apart, and that a match takes up to a repeat more for each piece, is common practice, no source.
 */
class MatchedLayTest {
    private static final String FRONT_AND_BACK =
            """
            pattern:
              seam allowance: {of: 1.5, included: false}
              pieces:
                front:
                  cut: pair
                  outline:
                    - {start: [0, 8]}
                    - {edge: neckline, to: [8, 0]}
                    - {edge: shoulder, to: [20, 4]}
                    - {edge: side, to: [26, 60]}
                    - {edge: hem, to: [0, 62]}
                    - {edge: centre front, to: start}
                  notches: [{edge: side, at: 15, from: hem}]
                back:
                  cut: 1
                  fold: centre back
                  outline:
                    - {start: [0, 2]}
                    - {edge: neckline, to: [8, 0]}
                    - {edge: shoulder, to: [20, 4]}
                    - {edge: side, to: [27, 60]}
                    - {edge: hem, to: [0, 60]}
                    - {edge: centre back, to: start}
                  notches: [{edge: side, at: 15, from: hem}]
            """;

    private static String cloth(String repeat) {
        return "cloth: {plaid: {size: [150, 220], prewash: done, repeat: " + repeat + "}}\n";
    }

    private static List<Point> meets(StockLay stock, String piece) {
        return stock.laid().stream()
                .filter(l -> l.piece().piece().name().equals(piece))
                .flatMap(l -> l.pins().stream())
                .filter(pin -> pin.where().startsWith("match"))
                .map(PinPoint::at)
                .toList();
    }

    private static boolean areRepeatsApart(double a, double b, double everyMm) {
        double off = (a - b) / everyMm;
        return Math.abs(off - Math.rint(off)) * everyMm < 0.1;
    }

    @Test
    void sideSeamsMatchBothWaysAtTheirNotches() {
        LayResult result =
                LayText.result(
                        cloth("{along: 12, across: 9}")
                                + FRONT_AND_BACK
                                + "lay: {match: [[front.side, back.side]]}\n");
        StockLay stock = result.made().stocks().get(0);
        assertTrue(stock.fits());
        assertEquals(List.of(), LaidOnCloth.faults(stock));
        List<Point> fronts = meets(stock, "front");
        List<Point> backs = meets(stock, "back");
        assertEquals(2, fronts.size());
        assertEquals(2, backs.size());
        for (Point front : fronts) {
            assertTrue(areRepeatsApart(front.yMm(), backs.get(0).yMm(), 120), "along");
            // A front meets the half of the back that is not drawn, or the other does.
            boolean across =
                    backs.stream().anyMatch(b -> areRepeatsApart(front.xMm(), b.xMm(), 90));
            assertTrue(across, "across " + front + backs);
        }
        stock.laid()
                .forEach(
                        l ->
                                assertEquals(
                                        0,
                                        l.placement().orientation().turnDegrees(),
                                        "all tops up"));
    }

    /** A right front, as drawn, is sewn to the half of the back that is its mirror image. */
    @Test
    void everyFrontMeetsItsOwnSideOfTheBack() {
        LayResult result =
                LayText.result(
                        cloth("{along: 12, across: 9}")
                                + FRONT_AND_BACK
                                + "lay: {match: [[front.side, back.side]]}\n");
        StockLay stock = result.made().stocks().get(0);
        LaidPiece back =
                stock.laid().stream().filter(l -> l.piece().isOpened()).findFirst().orElseThrow();
        double middle = back.box().middle().xMm();
        for (LaidPiece front : stock.laid()) {
            if (front.piece().isOpened()) {
                continue;
            }
            boolean wantsLeft = !front.piece().isMirrored();
            Point own =
                    back.pins().stream()
                            .filter(pin -> pin.where().startsWith("match"))
                            .map(PinPoint::at)
                            .filter(at -> at.xMm() < middle == wantsLeft)
                            .findFirst()
                            .orElseThrow();
            Point at = front.pins().get(2).at();
            assertTrue(areRepeatsApart(at.xMm(), own.xMm(), 90), front.piece().words());
        }
    }

    @Test
    void aMatchThatAnotherRulesOutIsToldWithItsSeam() {
        LayResult result =
                LayText.result(
                        cloth("{across: 10}")
                                + FRONT_AND_BACK
                                + "lay: {match: [[front.side, back.side], [front.centre front,"
                                + " front.centre front]]}\n");
        List<Matching.UnmetMatch> unmet = result.made().stocks().get(0).unmetMatches();
        assertEquals(1, unmet.size());
        assertEquals(Direction.ACROSS, unmet.get(0).axis());
        assertTrue(
                LayText.told(result, "lay-match-unmet")
                        .text()
                        .startsWith(
                                "No match of the centre front of the front with the centre front of the"
                                        + " front across"));
    }

    /**
     * Two rectangles, 20 in long on the cutting line, one below the other on cloth with a repeat of
     * 4 1/4 in: the second begins a whole number of repeats below the first, 21 1/4 in, so the lay
     * is 41 1/4 in instead of 40. Worked by hand.
     */
    @Test
    void stackedPiecesTakeWholeRepeats() {
        String pattern =
                """
                pattern:
                  seam allowance: {of: 1/2, included: false}
                  pieces:
                    front: {cut: 1, rectangle: [30, 19]}
                    back: {cut: 1, rectangle: [30, 19]}
                lay: {gap: 0, match: [[front.right, back.right]]}
                """;
        LayResult result =
                LayText.inInches(
                        "cloth: {plaid: {size: [34, 60], prewash: done, repeat: {along: 4 1/4}}}\n"
                                + pattern);
        BoltLength narrow = result.made().bolts().get(0);
        assertEquals(Length.ofInches(36, 1), narrow.width());
        assertEquals(41.25 * 25.4, narrow.length().orElseThrow().millimetres(), 1.5);
        assertTrue(result.made().fits());
    }

    /**
     * Two equal panels 20 wide, sewn to each other side by side on a repeat of 7: sewn 20 from the
     * left edge of the one, and the left edge of the other, lie whole sevens apart. Neither is the
     * larger one that the other follows.
     */
    @Test
    void equallyLargePanelsMatchWhereTheyAreSewn() {
        LayResult result =
                LayText.result(
                        """
                        cloth: {stripes: {size: [100, 40], prewash: done, repeat: {across: 7}}}
                        pattern:
                          seam allowance: {of: 1, included: false}
                          pieces:
                            left panel: {cut: 1, rectangle: [20, 30]}
                            right panel: {cut: 1, rectangle: [20, 30]}
                          seams: [[left panel.right, right panel.left]]
                        lay: {effort: quick, match: [[left panel.right, right panel.left]]}
                        """);
        List<LaidPiece> laid = result.made().stocks().get(0).laid();
        double one = laid.get(0).box().leftMm() + 10 + 200;
        double other = laid.get(1).box().leftMm() + 10;
        double off = Math.abs(one - other - 70 * Math.rint((one - other) / 70));
        assertEquals(0, off, 0.01, laid.toString());
    }

    @Test
    void matchedPiecesOfTwoClothsKeepToOneUnlessTheirPatternsAreTiedTogether() {
        String two =
                """
                cloth:
                  a: {size: [90, 66], prewash: done, repeat: {along: 12}}
                  b: {size: [90, 78], prewash: done, repeat: {along: 12}}
                """;
        String tied =
                """
                cloth:
                  a: {size: [90, 66], prewash: done, repeat: {along: 12, begins: [0, 3]}}
                  b: {size: [90, 78], prewash: done, repeat: {along: 12, begins: [0, 7]}}
                """;
        String more = FRONT_AND_BACK + "lay: {match: [[front.side, back.side]]}\n";
        assertFalse(LayText.result(two + more).made().fits());
        StockLay stock = LayText.result(tied + more).made().stocks().get(0);
        assertTrue(stock.fits());
        for (LaidPiece one : stock.laid()) {
            for (LaidPiece other : stock.laid()) {
                double a = phase(stock, one);
                double b = phase(stock, other);
                assertTrue(areRepeatsApart(a, b, 120), one.piece().words());
            }
        }
    }

    /** Where a piece's match lies from the beginning of the pattern on its cloth. */
    private static double phase(StockLay stock, LaidPiece laid) {
        double begins = stock.spreads().get(laid.cloth()).repeat().begins().orElseThrow().yMm();
        return laid.pins().get(2).at().yMm() - begins;
    }

    @Test
    void whatCannotMatchIsAMistake() {
        assertEquals(
                List.of("28:16 `match` without a cloth whose pattern repeats"),
                LayText.mistakes(
                        "cloth: {plain: {size: [150, 220], prewash: done}}\n"
                                + FRONT_AND_BACK
                                + "lay: {match: [[front.side, back.side]]}\n"));
        assertEquals(
                List.of("28:16 `sides`, which is no edge and no mark of front"),
                LayText.mistakes(
                        cloth("{along: 12}")
                                + FRONT_AND_BACK
                                + "lay: {match: [[front.sides, back.side]]}\n"));
        assertEquals(
                List.of("28:15 `match` on folded cloth, where nobody sees the layer below"),
                LayText.mistakes(
                        cloth("{along: 12}")
                                + FRONT_AND_BACK
                                + "lay: {layers: folded lengthwise, match: [[front.side,"
                                + " back.side]]}\n"));
    }
}
