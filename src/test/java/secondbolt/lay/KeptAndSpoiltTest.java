package secondbolt.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.lay.design.BoltLength;
import secondbolt.lay.design.LayResult;
import secondbolt.lay.piece.LaidPiece;
import secondbolt.lay.stock.StockLay;
import secondbolt.measure.Length;

/**
 * Features that become an edge, pieces that were spoilt, naps, interfacing, two designs at once.
 */
class KeptAndSpoiltTest {
    private static final String POCKETS =
            """
            pattern:
              seam allowance: {of: 1, included: false}
              pieces:
                front: {cut: pair, rectangle: [28, 58]}
                pocket: {cut: 2, rectangle: [16, 18], allowance: {top: 0}}
            """;

    private static List<LaidPiece> laid(StockLay stock, String piece) {
        return stock.laid().stream().filter(l -> l.piece().piece().name().equals(piece)).toList();
    }

    @Test
    void anOldHemAtTheBottomBecomesTheTopOfThePockets() {
        LayResult result =
                LayText.result(
                        "cloth: {sheet: {size: [130, 100], prewash: done, features: [{what: old"
                                + " hem, at: [65, 97.5], size: [130, 5], keep: pocket.top}]}}\n"
                                + POCKETS);
        StockLay stock = result.made().stocks().get(0);
        assertTrue(stock.fits());
        for (LaidPiece pocket : laid(stock, "pocket")) {
            assertEquals(180, pocket.placement().orientation().turnDegrees());
            assertEquals(1000, pocket.box().bottomMm(), 0.05, "on the edge of the hem");
        }
        for (LaidPiece front : laid(stock, "front")) {
            assertTrue(front.box().bottomMm() <= 950, "nothing else on it");
        }
        assertEquals(List.of(), LaidOnCloth.faults(stock));
    }

    @Test
    void anEdgeWithAnAllowanceFindsNoRoomAtTheEdgeOfTheCloth() {
        LayResult result =
                LayText.result(
                        "cloth: {sheet: {size: [130, 100], prewash: done, features: [{what: old"
                                + " hem, at: [65, 97.5], size: [130, 5], keep: pocket.top}]}}\n"
                                + POCKETS.replace(", allowance: {top: 0}", ""));
        assertFalse(result.made().fits());
        assertTrue(LayText.told(result, "lay-no-room").remedy().contains("no allowance"));
    }

    @Test
    void aFeatureKeptForNothingIsAMistake() {
        String features = "features: [{what: hem, at: [65, 97.5], size: [130, 5], keep: ";
        assertEquals(
                List.of("3:111 `flap`, which is no piece of the pattern"),
                LayText.mistakes(
                        "cloth: {sheet: {size: [130, 100], prewash: done, "
                                + features
                                + "flap.top}]}}\n"
                                + POCKETS));
    }

    /** A front was spoilt: it is cut again, and the pockets come out of it. */
    @Test
    void smallerPiecesAreCutFromASpoiltOne() {
        String text =
                "cloth: {sheet: {size: [62, 125], prewash: done}}\n"
                        + POCKETS
                        + "cut so far:\n"
                        + "  - {piece: front, cloth: sheet, at: [0, 0]}\n"
                        + "  - {piece: front, cloth: sheet, at: [31, 0], mirrored: yes, spoilt:"
                        + " yes}\n";
        StockLay stock = LayText.result(text).made().stocks().get(0);
        assertTrue(stock.fits());
        assertEquals(1, laid(stock, "front").size());
        for (LaidPiece piece : stock.laid()) {
            boolean inside = piece.box().leftMm() >= 310 && piece.box().bottomMm() <= 600;
            boolean below = piece.box().topMm() >= 600;
            assertTrue(inside || below, piece.piece().words() + " lies over no cut");
        }
    }

    @Test
    void onANapPiecesOfOneGrainLieOneWay() {
        String pattern =
                """
                pattern:
                  seam allowance: {of: 1, included: false}
                  pieces:
                    front: {cut: pair, rectangle: [28, 58]}
                    band: {cut: 4, grain: across, rectangle: [6, 40]}
                    binding: {cut: 4, grain: bias, rectangle: [5, 30]}
                    bag: {cut: 2, grain: any, seen: hidden, rectangle: [14, 20]}
                    tab: {cut: 4, grain: any, rectangle: [5, 9]}
                """;
        LayResult result =
                LayText.result(
                        "cloth: {velvet: {size: [130, 140], prewash: done, nap: one-way}}\n"
                                + pattern);
        StockLay stock = result.made().stocks().get(0);
        assertTrue(stock.fits());
        laid(stock, "front")
                .forEach(l -> assertEquals(0, l.placement().orientation().turnDegrees()));
        laid(stock, "band")
                .forEach(l -> assertEquals(90, l.placement().orientation().turnDegrees()));
        laid(stock, "binding")
                .forEach(l -> assertEquals(45, l.placement().orientation().turnDegrees()));
        laid(stock, "tab").forEach(l -> assertEquals(0, l.placement().orientation().turnDegrees()));
        assertTrue(LayText.told(result, "lay-nap-turned").text().contains("runs one way"));
    }

    /** Of two cloths of a stock only the one that runs one way binds its pieces. */
    @Test
    void aPlainClothIsNotBoundByTheNapOfAnother() {
        LayResult result =
                LayText.result(
                        """
                        cloth:
                          velvet: {size: [130, 62], prewash: done, nap: one-way}
                          plain: {size: [130, 62], prewash: done}
                        """
                                + POCKETS.replace("cut: pair", "cut: 8"));
        StockLay stock = result.made().stocks().get(0);
        for (LaidPiece piece : stock.laid()) {
            if (stock.spreads().get(piece.cloth()).isOneWay()) {
                assertEquals(0, piece.placement().orientation().turnDegrees());
            }
        }
    }

    /**
     * Two facings of 70 by 10 cm on interfacing 90 cm wide, side by side across, take 20 cm.
     * Derived from the rule that interfacing is laid by the same cutting rules as cloth
     * (Interfacings, EM014, Washington State University Extension).
     */
    @Test
    void interfacingIsLaidOnItsOwnWidth() {
        LayResult result =
                LayText.result(
                        """
                        pattern:
                          seam allowance: {of: 0, included: true}
                          pieces: {facing: {cut: {interfacing: 2}, rectangle: [10, 70]}}
                        interfacing: {width: 90, nonwoven: yes}
                        lay: {gap: 0}
                        """);
        BoltLength length = result.made().bolts().get(0);
        assertEquals(Length.ofMillimetres(900), length.width());
        assertEquals(200, length.length().orElseThrow().millimetres(), 2);
    }

    @Test
    void twoDesignsThatFitTogetherAreTold() {
        String designs = "designs: {shirt: {uses: [front]}, bag: {uses: [pocket]}}\nmake: shirt\n";
        LayResult wide =
                LayText.result(
                        "cloth: {sheet: {size: [130, 100], prewash: done}}\n" + POCKETS + designs);
        assertEquals(1, wide.together().size());
        assertTrue(wide.together().get(0).fits());
        LayResult narrow =
                LayText.result(
                        "cloth: {sheet: {size: [62, 61], prewash: done}}\n" + POCKETS + designs);
        assertFalse(narrow.together().get(0).fits());
    }

    @Test
    void aPieceWhoseCuttingLineCrossesItselfStopsTheLay() {
        LayResult result =
                LayText.result(
                        """
                        cloth: {sheet: {size: [130, 100], prewash: done}}
                        pattern:
                          seam allowance: {of: 1, included: false}
                          pieces:
                            front: {cut: pair, rectangle: [28, 58]}
                            tab:
                              cut: 1
                              outline:
                                - {start: [0, 0]}
                                - {edge: a, to: [20, 0]}
                                - {edge: b, to: [20, 20]}
                                - {edge: c, to: [10.5, 20]}
                                - {edge: d, to: [10.5, 2]}
                                - {edge: e, to: [9.5, 2]}
                                - {edge: f, to: [9.5, 20]}
                                - {edge: g, to: [0, 20]}
                                - {edge: h, to: start}
                        """);
        assertFalse(result.made().fits());
        assertEquals(
                "Not laid, because the cutting line crosses itself: tab.",
                LayText.told(result, "lay-piece-crosses-itself").text());
    }
}
