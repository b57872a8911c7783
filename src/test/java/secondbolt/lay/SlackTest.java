package secondbolt.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import secondbolt.block.Block;
import secondbolt.cloth.yields.BoltWidth;
import secondbolt.lay.design.BoltLength;
import secondbolt.lay.design.DesignLay;
import secondbolt.lay.design.LayResult;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;

/** How much room a lay has to spare, and what lacks where it does not fit, in the maker's words. */
class SlackTest {
    private static LayResult side(String pieces, String lay) {
        return LayText.inInches(
                "cloth: {side: {size: [36, 102], prewash: done}}\n"
                        + "pattern: {seam allowance: {of: 0, included: true}, pieces: {"
                        + pieces
                        + "}}\nlay: {"
                        + lay
                        + "}\n");
    }

    private static String verdict(LayResult result) {
        return new LayPage(result, List.of(), Tape.INCH)
                .blocks().stream()
                        .filter(block -> block instanceof Block.Verdict)
                        .map(block -> ((Block.Verdict) block).text())
                        .findFirst()
                        .orElseThrow();
    }

    /** A panel of 36 by 60 on 36 by 102: nothing across, 42 along. */
    @Test
    void noSlackIsTold() {
        LayResult result = side("panel: {cut: 1, rectangle: [36, 60]}", "gap: 0");
        assertTrue(result.made().fits());
        assertEquals(
                "All pieces have their place on the cloth."
                        + " On side: no slack across, 42 in to spare along.",
                verdict(result));
        assertTrue(LayText.told(result, "lay-no-slack").text().contains("no slack across"), "told");
    }

    /** By tape, on the fold: half of it, 18 in, lies on the folded half of the side. */
    @Test
    void aPieceOnTheFoldAsWideAsTheClothFits() {
        LayResult result =
                side(
                        "panel: {cut: 1, fold: left, rectangle: [18, 60]}",
                        "gap: 0, layers: folded lengthwise");
        assertTrue(result.made().fits());
        assertTrue(verdict(result).contains("no slack across"), verdict(result));
    }

    /** 48 in on a width of 36 lacks 12. */
    @Test
    void whatLacksOfTheWidthIsTold() {
        LayResult result = side("panel: {cut: 1, rectangle: [48, 60]}", "gap: 0");
        assertTrue(verdict(result).contains("panel lacks 12 in of width"), verdict(result));
        assertTrue(
                LayText.told(result, "lay-no-room").text().contains("lacks"),
                LayText.told(result, "lay-no-room").text());
    }

    /** Two of 36 by 60 take 120 of 102: 18 lack. */
    @Test
    void whatLacksOfTheLengthForAllTogetherIsTold() {
        LayResult result = side("panel: {cut: 2, rectangle: [36, 60]}", "gap: 0");
        assertTrue(verdict(result).contains("side lacks 18 in of length"), verdict(result));
    }

    /** Two of 40 by 60 across 108: 28 by 60 in stay over in one piece. */
    @Test
    void whatStaysOverIsOnePiece() {
        LayResult result =
                LayText.inInches(
                        """
                        cloth: {sheet: {size: [108, 60], prewash: done}}
                        pattern:
                          seam allowance: {of: 0, included: true}
                          pieces: {panel: {cut: 2, rectangle: [40, 60]}}
                        lay: {gap: 0}
                        """);
        Box over = result.made().remnants().byCloth().get("sheet");
        assertEquals(28 * 25.4, over.widthMm(), 0.01);
        assertEquals(60 * 25.4, over.heightMm(), 0.01);
    }

    private static final String DESIGNS =
            """
            cloth: {sheet: {size: [60, 70], prewash: done}}
            pattern:
              seam allowance: {of: 1, included: false}
              pieces:
                front:
                  cut: pair
                  outline:
                    - {start: [0, 8]}
                    - {edge: neck, to: [8, 0]}
                    - {edge: shoulder, to: [20, 4]}
                    - {edge: side, to: [26, 60]}
                    - {edge: hem, to: [0, 60]}
                    - {edge: middle, to: start}
                back: {cut: 1, rectangle: [44, 58]}
                sleeve:
                  cut: pair
                  outline:
                    - {start: [0, 12]}
                    - {edge: cap, to: [18, 0]}
                    - {edge: cap back, to: [36, 12]}
                    - {edge: underarm, to: [28, 50]}
                    - {edge: wrist, to: [8, 50]}
                    - {edge: under, to: start}
            designs:
              coat: {uses: [front, back, sleeve]}
              vest: {uses: [front, back]}
              top: {uses: [back]}
            make: coat
            lay: {new cloth: {width: 140, price: 10}}
            """;

    /** Wider bolts and smaller designs take the lay of the narrower or larger one if it is less. */
    @Test
    void neitherAWiderBoltNorASmallerDesignNeedsMore() {
        LayResult result = LayText.result(DESIGNS);
        for (DesignLay design : result.designs()) {
            Length last = Length.ofMillimetres(1_000_000);
            for (BoltLength bolt : design.bolts()) {
                Length length = bolt.length().orElse(last);
                assertTrue(!length.isLongerThan(last), design.name() + bolt);
                last = length;
            }
        }
        List<DesignLay> designs = result.designs();
        for (int i = 0; i + 1 < designs.size(); i++) {
            for (int bolt = 0; bolt < designs.get(i).bolts().size(); bolt++) {
                Optional<Length> larger = designs.get(i).bolts().get(bolt).length();
                Optional<Length> smaller = designs.get(i + 1).bolts().get(bolt).length();
                assertTrue(larger.isEmpty() || !smaller.orElseThrow().isLongerThan(larger.get()));
            }
        }
        assertTrue(!result.made().fits());
        NewClothInstead instead = NewClothInstead.of(result.plan(), Tape.CENTIMETRE);
        assertEquals(Optional.empty(), instead.saved(result.made()), "it does not fit");
        assertTrue(instead.saved(designs.get(2)).isPresent(), "the top fits");
    }

    /** 150 cm less 5 for the selvages, 60 in less 2: for what is bought and what it equals. */
    @Test
    void oneConventionOfWidth() {
        assertEquals(
                Length.ofMillimetres(1450),
                new BoltWidth(Length.ofMillimetres(1500), Tape.CENTIMETRE).cuttable());
        assertEquals(
                Length.ofInches(58, 1),
                new BoltWidth(Length.ofInches(60, 1), Tape.INCH).cuttable());
    }
}
