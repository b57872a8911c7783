package secondbolt.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import secondbolt.lay.design.BoltLength;
import secondbolt.lay.design.LayResult;
import secondbolt.lay.kept.LayDesk;
import secondbolt.lay.picture.CuttingPlan;
import secondbolt.lay.piece.LaidPiece;
import secondbolt.lay.piece.LayPiece;
import secondbolt.lay.stock.StockLay;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.shape.Point;

/** What a maker reads of her lay; lengths worked by hand for plain rectangles. */
class LayWorksheetTest {
    private static final String PATTERN =
            """
            pattern:
              seam allowance: {of: 1, included: false}
              pieces:
                front: {cut: pair, rectangle: [28, 58]}
                back: {cut: 1, fold: left, rectangle: [28, 58]}
                facing: {cut: 2, seen: hidden, rectangle: [6, 58]}
            """;

    private static String cloth(int across, int along) {
        return "cloth: {sheet: {size: [" + across + ", " + along + "], prewash: done}}\n";
    }

    @Test
    void aPieceOnTheFoldIsOpenedOutAndAPairIsMirrored() {
        LayResult result = LayText.result(cloth(130, 200) + PATTERN);
        List<LaidPiece> laid = result.made().stocks().get(0).laid();
        assertEquals(5, laid.size());
        LaidPiece back = laid.stream().filter(l -> l.piece().isOpened()).findFirst().orElseThrow();
        assertEquals(2 * 290, back.box().widthMm(), 0.01);
        assertEquals(600, back.box().heightMm(), 0.01);
        assertEquals(1, laid.stream().filter(l -> l.piece().isMirrored()).count());
    }

    /** Shorter and shorter: it fits, it fits tightly, then it says what is left and what helps. */
    @Test
    void aClothTakenDownByTwentyCentimetresAtATime() {
        List<Boolean> fits = new ArrayList<>();
        List<Double> shares = new ArrayList<>();
        for (int along = 200; along >= 80; along -= 20) {
            LayResult result = LayText.result(cloth(130, along) + PATTERN);
            StockLay stock = result.made().stocks().get(0);
            fits.add(stock.fits());
            shares.add(stock.usedShare());
            if (!stock.fits()) {
                assertFalse(stock.leftOver().isEmpty());
                assertTrue(LayText.told(result, "lay-no-room").text().contains("no room"));
                assertFalse(result.remedies().isEmpty());
            }
        }
        assertTrue(fits.get(0));
        assertFalse(fits.get(fits.size() - 1));
        int last = fits.lastIndexOf(true);
        assertEquals(last, fits.indexOf(false) - 1, "fits until it does not: " + fits);
        for (int i = 1; i <= last; i++) {
            assertTrue(shares.get(i) > shares.get(i - 1), "tighter: " + shares);
        }
    }

    /** Where little has room, it is the body pieces that are laid. */
    @Test
    void theLargestPiecesAreLaidFirst() {
        StockLay stock = LayText.result(cloth(130, 62) + PATTERN).made().stocks().get(0);
        assertTrue(stock.laid().stream().anyMatch(l -> l.piece().piece().name().equals("back")));
        assertTrue(stock.laid().stream().anyMatch(l -> l.piece().piece().name().equals("front")));
    }

    /** Facings are left out before fronts. */
    @Test
    void bodyPiecesGoBeforeHiddenOnes() {
        StockLay stock = LayText.result(cloth(130, 122) + PATTERN).made().stocks().get(0);
        for (LayPiece left : stock.leftOver()) {
            assertEquals("facing", left.piece().name());
        }
    }

    /**
     * Two rectangles of 60 by 90 cm beside each other need 90 cm of a cloth 125 cm wide, and 180 cm
     * where only one has room.
     */
    @Test
    void lengthsFromTheBoltAreThoseWorkedByHand() {
        LayResult result =
                LayText.result(
                        """
                        pattern:
                          seam allowance: {of: 1, included: true}
                          pieces: {panel: {cut: 2, rectangle: [60, 90]}}
                        """);
        Map<Length, Length> lengths = new HashMap<>();
        result.made().bolts().forEach(b -> lengths.put(b.width(), b.length().orElseThrow()));
        assertEquals(900, lengths.get(Length.ofMillimetres(1400)).millimetres(), 3);
        assertEquals(1803, lengths.get(Length.ofMillimetres(900)).millimetres(), 6);
        BoltLength wide = result.made().bolts().get(2);
        assertEquals(1350, wide.cuttable().millimetres());
        assertTrue(
                wide.toBuy().orElseThrow().millimetres()
                        >= wide.length().orElseThrow().millimetres());
    }

    @Test
    void aPieceWiderThanTheBoltIsToldAndNotLaid() {
        LayResult result =
                LayText.result(
                        """
                        pattern:
                          seam allowance: {of: 1, included: true}
                          pieces: {cape: {cut: 1, rectangle: [120, 130], grain: along}}
                        """);
        assertTrue(result.made().bolts().get(0).length().isEmpty());
        assertTrue(result.made().bolts().get(3).length().isPresent());
    }

    /** 130 cm and the usual allowance at both ends, 1.5 cm each, on 80 cm: 53 cm lack. */
    @Test
    void aPieceLargerThanEveryClothStops() {
        LayResult result =
                LayText.result(
                        cloth(60, 80)
                                + "pattern: {pieces: {cape: {cut: 1, rectangle: [40, 130]}}}\n");
        assertEquals(1, result.made().stocks().get(0).tooLarge().size());
        String told = LayText.told(result, "lay-no-room").text();
        assertTrue(told.contains("cape lacks 53 cm of length"), told);
    }

    @Test
    void aFlawOverAllLeavesNothingToLayOn() {
        LayResult result =
                LayText.result(
                        "cloth: {rag: {size: [60, 80], prewash: done, flaws: [{what: mildew, at:"
                                + " [30, 40], size: [60, 80]}]}}\n"
                                + PATTERN);
        assertFalse(result.made().fits());
        assertEquals(
                "There is no sound cloth for front (2), back, facing (2).",
                LayText.told(result, "lay-no-sound-cloth").text());
    }

    /** What is cut stays where it is, and the rest keeps off it. */
    @Test
    void piecesCutSoFarStayAndTheRestIsPlannedRoundThem() {
        LayResult result =
                LayText.result(
                        cloth(130, 200)
                                + PATTERN
                                + "cut so far: [{piece: front, cloth: sheet, at: [40, 50]}]\n");
        StockLay stock = result.made().stocks().get(0);
        assertEquals(4, stock.laid().size());
        for (LaidPiece laid : stock.laid()) {
            boolean over = laid.box().overlaps(new Box(400.1, 500.1, 299.8, 599.8));
            assertFalse(over, laid.piece().words());
        }
    }

    @Test
    void aNapKeepsEveryTopUp() {
        LayResult result =
                LayText.result(
                        "cloth: {blanket: {size: [130, 200], prewash: done, nap: one-way}}\n"
                                + PATTERN);
        for (LaidPiece laid : result.made().stocks().get(0).laid()) {
            assertEquals(0, laid.placement().orientation().turnDegrees());
        }
    }

    @Test
    void pinPointsAreTheCornersOfThePaperPiece() {
        for (LaidPiece laid :
                LayText.result(cloth(130, 200) + PATTERN).made().stocks().get(0).laid()) {
            assertEquals(2, laid.pins().size());
            Point top = laid.pins().get(0).at();
            Point bottom = laid.pins().get(1).at();
            assertTrue(Math.abs(top.yMm() - bottom.yMm()) > 579);
        }
    }

    @Test
    void keptLaysAreTheSameAsSearchedOnes() {
        LayDesk kept = LayDesk.inMemory();
        String text = cloth(130, 140) + PATTERN;
        List<String> first = placed(text, kept);
        assertEquals(first, placed(text, kept));
        assertEquals(first, placed(text, LayDesk.inMemory()));
    }

    private static List<String> placed(String text, LayDesk desk) {
        return LayText.result(text, desk, Tape.CENTIMETRE).made().stocks().get(0).laid().stream()
                .map(l -> l.piece().words() + " " + l.placement())
                .toList();
    }

    /** What was worked out before is used again where nothing it was worked out of is another. */
    @Test
    void theSameTextAndClothComeToAnEqualResult() {
        String text = cloth(130, 140) + PATTERN;
        LayResult one = LayText.result(text, LayDesk.inMemory(), Tape.CENTIMETRE);
        LayResult same = LayText.result(text, LayDesk.inMemory(), Tape.CENTIMETRE);
        assertNotSame(one, same);
        assertEquals(one, same);
        assertEquals(one.hashCode(), same.hashCode());
        LayResult other =
                LayText.result(cloth(130, 141) + PATTERN, LayDesk.inMemory(), Tape.CENTIMETRE);
        assertNotEquals(one, other);
    }

    @Test
    void namesThatAreNotThereAreMistakesAtTheirPlaces() {
        List<String> told =
                LayText.mistakes(
                        cloth(130, 200)
                                + PATTERN
                                + "designs: {a: {uses: [frnt]}}\nmake: shirt\ncut so far:\n"
                                + "  - {piece: front, cloth: shet, at: [1, 1]}\n");
        assertEquals(
                List.of(
                        "10:22 `frnt`, which is no piece of the pattern",
                        "11:7 `shirt`, which is no design",
                        "13:27 `shet`, which is no cloth, while nothing speaks of `sheet` in"
                                + " line 3"),
                told);
    }

    /** A facing of 80 cm has no room on a cloth of 60 cm; in two parts it has. */
    @Test
    void aHiddenPieceInTwoPartsIsTried() {
        LayResult result =
                LayText.result(
                        cloth(60, 60)
                                + "pattern:\n"
                                + "  seam allowance: {of: 1, included: true}\n"
                                + "  pieces: {facing: {cut: 1, seen: hidden, rectangle: [20,"
                                + " 80]}}\n");
        assertFalse(result.made().fits());
        LayResult.Remedy parts = result.remedies().get(result.remedies().size() - 1);
        assertTrue(parts.words().contains("in two parts"));
        assertTrue(parts.leftOver().isEmpty());
        String told = LayText.told(result, "lay-no-room").remedy();
        assertTrue(told.contains("in two parts, with a seam across"), told);
    }

    /**
     * A garment that takes about so much at one width takes at others what the fabric width
     * conversion chart of the New Jersey extension service says (teacher's page with the chart, and
     * a sewing guide that repeats it): 3⅜ yd of 36 in, 2¾ of 45, 2¼ of 54, 2 of 60. The chart is a
     * guide, not a lay: within three eighths of a yard, and the quarter yard that the teacher's
     * page adds for a large difference in widths.
     */
    @Test
    void lengthsAtOtherWidthsAgreeWithTheConversionChart() {
        LayResult result =
                LayText.result(
                        """
                        pattern:
                          seam allowance: {of: 1.5, included: false}
                          pieces:
                            front: {cut: pair, panel: {top: 24, bottom: 36, along: 88}}
                            back: {cut: pair, panel: {top: 24, bottom: 36, along: 88}}
                            side: {cut: pair, panel: {top: 18, bottom: 30, along: 60}}
                            sleeve: {cut: pair, panel: {top: 38, bottom: 24, along: 56}}
                            yoke: {cut: 2, rectangle: [44, 20]}
                            cuff: {cut: 4, rectangle: [12, 26]}
                            collar: {cut: 2, rectangle: [46, 9]}
                            pocket: {cut: 4, rectangle: [16, 18]}
                        """);
        List<Double> chart = List.of(3.375, 2.75, 2.25, 2.0);
        List<Double> yards = new ArrayList<>();
        for (BoltLength bolt : result.made().bolts()) {
            yards.add(bolt.length().orElseThrow().millimetres() / 914.4);
        }
        double scale = chart.get(1) / yards.get(1);
        for (int i = 0; i < chart.size(); i++) {
            double charted = chart.get(i) / scale;
            assertEquals(charted, yards.get(i), 0.375 + 0.25, "widths " + i + ": " + yards);
        }
    }

    /** No lay is shorter than the area of the pieces over the width. */
    @Test
    void noLengthBeatsTheArea() {
        LayResult result = LayText.result(PATTERN);
        double areaMm2 = 2 * 300 * 600 + 580 * 600 + 2 * 80 * 600;
        for (BoltLength bolt : result.made().bolts()) {
            double least = areaMm2 / bolt.cuttable().millimetres();
            assertTrue(bolt.length().orElseThrow().millimetres() >= least);
        }
    }

    /** Nothing is assumed in silence: a plan that heeds no checks says so, on the sheet too. */
    @Test
    void aRepeatThatIsNotHeededIsWarnedOf() {
        LayResult result =
                LayText.result(
                        "cloth: {plaid: {size: [130, 200], prewash: done, repeat: {along: 11}}}\n"
                                + PATTERN);
        List<CuttingPlan> plans = CuttingPlan.of(result.made(), Tape.CENTIMETRE);
        String told = LayText.told(result, "lay-repeat-not-matched").text();
        assertTrue(told.contains("does not match stripes or checks"), told);
        assertTrue(
                new LaySheets(result, plans, Tape.CENTIMETRE)
                        .sheets()
                        .get(0)
                        .blocks()
                        .toString()
                        .contains(told),
                "on the cutting plan");
    }

    /** A search that was stopped has not found that there is no room. */
    @Test
    void aStoppedSearchIsNotTakenForWantOfRoom() {
        LayDesk stopped = new LayDesk(LayDesk.inMemory().store(), 2, (share, bestMm) -> false);
        String many = PATTERN.replace("cut: 2, seen: hidden", "cut: 40, seen: hidden");
        LayResult result = LayText.result(cloth(130, 206) + many, stopped, Tape.CENTIMETRE);
        assertFalse(result.made().fits());
        String told = LayText.told(result, "lay-search-stopped-early").text();
        assertTrue(told.startsWith("The search was stopped before"), told);
    }

    /** What is cut from the outside cloth is not cut of the lining. */
    @Test
    void aPieceCutFromOneClothIsStillWantedOfAnother() {
        String lined =
                """
                cloth:
                  sheet: {role: main, size: [130, 200], prewash: done}
                  silk: {role: lining, size: [130, 200], prewash: done}
                pattern: {pieces: {front: {cut: {main: 1, lining: 1}, rectangle: [28, 58]}}}
                cut so far: [{piece: front, cloth: sheet, at: [40, 50]}]
                """;
        List<StockLay> stocks = LayText.result(lined).made().stocks();
        assertEquals(0, stocks.get(0).laid().size());
        assertEquals(1, stocks.get(1).laid().size());
    }

    /** A design that does not use a piece is still laid round the hole it left. */
    @Test
    void aHoleStaysInTheClothWhateverIsMade() {
        LayResult result =
                LayText.result(
                        cloth(130, 75)
                                + PATTERN
                                + "designs: {bag: {uses: [back]}}\n"
                                + "cut so far: [{piece: front, cloth: sheet, at: [50, 5]}]\n");
        assertEquals(1, result.made().stocks().get(0).spreads().get(0).cuts().holes().size());
        assertFalse(result.made().fits(), "a back of 58 cm has no room beside the hole");
    }
}
