package secondbolt.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import secondbolt.lay.design.BoltLength;
import secondbolt.lay.design.LayResult;
import secondbolt.lay.piece.LaidPiece;
import secondbolt.lay.piece.LayPiece;
import secondbolt.lay.stock.StockLay;

/** Cloth folded lengthwise: pairs at once, halves on the fold, flaws of both layers heeded. */
class FoldedLayTest {
    private static final String PATTERN =
            """
            pattern:
              seam allowance: {of: 1, included: false}
              pieces:
                front:
                  cut: pair
                  outline:
                    - {start: [0, 8]}
                    - {edge: neckline, to: [8, 0]}
                    - {edge: shoulder, to: [18, 4]}
                    - {edge: side, to: [24, 50]}
                    - {edge: hem, to: [0, 50]}
                    - {edge: centre front, to: start}
                back: {cut: 1, fold: left, rectangle: [22, 48]}
                yoke: {cut: 1, fold: right, rectangle: [20, 12]}
                band: {cut: 2, rectangle: [6, 40]}
                loop:
                  cut: 1
                  outline:
                    - {start: [0, 0]}
                    - {edge: top, to: [10, 0]}
                    - {edge: side, to: [4, 20]}
                    - {edge: back, to: start}
            lay: {layers: folded lengthwise}
            """;

    private static String cloth(String flaws) {
        return "cloth: {sheet: {size: [140, 160], prewash: done, flaws: [" + flaws + "]}}\n";
    }

    private static LaidPiece laid(StockLay stock, String piece) {
        return stock.laid().stream()
                .filter(l -> l.piece().piece().name().equals(piece))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void pairsAreCutAtOnceHalvesOnTheFoldAndSinglesOfTheUpperLayer() {
        StockLay stock = LayText.result(cloth("") + PATTERN).made().stocks().get(0);
        assertTrue(stock.fits());
        assertEquals(5, stock.laid().size());
        assertEquals(LayPiece.CutLayers.BOTH, laid(stock, "front").piece().layers());
        assertEquals(LayPiece.CutLayers.BOTH, laid(stock, "band").piece().layers());
        assertEquals(LayPiece.CutLayers.UPPER, laid(stock, "loop").piece().layers());
        assertEquals(0, laid(stock, "back").box().leftMm(), 0.01, "on the fold");
        assertEquals(0, laid(stock, "yoke").box().leftMm(), 0.01, "drawn with its fold at right");
        assertEquals(List.of(), LaidOnCloth.faults(stock));
    }

    @Test
    void aFlawOfTheLowerLayerIsAFlawOfBoth() {
        String flaw = "{what: hole, at: [35, 80], size: [60, 150]}";
        LayResult folded = LayText.result(cloth(flaw) + PATTERN);
        assertFalse(folded.made().fits());
        assertTrue(
                folded.remedies().stream()
                        .anyMatch(r -> r.words().equals("the cloth in a single layer")));
    }

    @Test
    void whateverTheFlawsEveryCopyLiesOnSoundCloth() {
        for (int seed = 0; seed < 12; seed++) {
            Random random = new Random(seed);
            String flaws = "";
            for (int i = 0; i < 4; i++) {
                flaws +=
                        (i > 0 ? ", " : "")
                                + "{what: hole, at: ["
                                + (10 + random.nextInt(120))
                                + ", "
                                + (10 + random.nextInt(140))
                                + "], round: "
                                + (2 + random.nextInt(12))
                                + "}";
            }
            StockLay stock = LayText.result(cloth(flaws) + PATTERN).made().stocks().get(0);
            assertEquals(List.of(), LaidOnCloth.faults(stock), "set " + seed);
        }
    }

    /** Folded cloth 115 cm wide takes the same length as the envelope's lay: worked by hand. */
    @Test
    void aBoltIsFoldedLikeTheCloth() {
        String pattern =
                """
                pattern:
                  seam allowance: {of: 0, included: true}
                  pieces:
                    panel: {cut: pair, rectangle: [50, 60]}
                lay: {layers: folded lengthwise, gap: 0}
                """;
        List<BoltLength> bolts = LayText.result(cloth("") + pattern).made().bolts();
        // 90 cm bolt: half of 85 cm is less than a panel; 115: half of 110 takes one.
        assertTrue(bolts.get(0).length().isEmpty());
        assertEquals(600, bolts.get(1).length().orElseThrow().millimetres(), 2);
    }
}
