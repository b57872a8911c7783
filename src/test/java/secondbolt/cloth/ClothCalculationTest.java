package secondbolt.cloth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import secondbolt.cloth.yields.BoltWidth;
import secondbolt.cloth.yields.ClothCalculation;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.cloth.yields.ClothStock;
import secondbolt.cloth.yields.ClothYield;
import secondbolt.measure.ClothWeight;
import secondbolt.measure.Length;
import secondbolt.measure.Mass;
import secondbolt.measure.Share;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.textile.Cloth;

/** What cloths yield, held against published figures and sums worked by hand. */
class ClothCalculationTest {
    private static final double INCH = 25.4;
    private static final double TOLERANCE_MM = 1e-5;

    private static void assertBox(double left, double top, double wide, double high, Box box) {
        assertEquals(left, box.leftMm() / INCH, TOLERANCE_MM, "left");
        assertEquals(top, box.topMm() / INCH, TOLERANCE_MM, "top");
        assertEquals(wide, box.widthMm() / INCH, TOLERANCE_MM, "width");
        assertEquals(high, box.heightMm() / INCH, TOLERANCE_MM, "height");
    }

    private static Length in(long inches) {
        return Length.ofInches(inches, 1);
    }

    /** Hand-worked: a sheet 64 by 93 in, worn 22 by 60 in its middle. */
    @ParameterizedTest(name = "{0} in clear")
    @CsvSource({"0, 21", "1, 20", "1.5, 19.5"})
    void leavesStripsBesideAWornMiddle(String clear, double strip) {
        ClothResult sheet =
                Written.result(
                        "in",
                        "  sheet:",
                        "    size: [64, 93]",
                        "    prewash: done",
                        "    clear: " + clear,
                        "    flaws: [{what: worn, at: [32, 46.5], size: [22, 60]}]");
        List<Box> boxes = sheet.finished().orElseThrow().rectangles();
        assertBox(0, 0, strip, 93, boxes.get(0));
        assertBox(64 - strip, 0, strip, 93, boxes.get(1));
    }

    /** Source: king sheet 108 by 102 in, 11 016 in² = 8.50 yd² (table of bed linen sizes). */
    @Test
    void givesAWholeSheetAsLengthsOfEachBolt() {
        ClothYield y =
                Written.result("in", "  king:", "    size: [108, 102]", "    prewash: done")
                        .finished()
                        .orElseThrow();
        assertEquals("8.5 yd²", Tape.INCH.print(y.soundArea()));
        assertBox(0, 0, 108, 102, y.rectangles().get(0));
        ClothYield.EquivalentLength by45 = y.lengths().get(5);
        assertEquals(Length.ofInches(45, 1), by45.bolt().width());
        // Cut between the selvages, 43 in of it: 11 016 / 43 = 256.2 in by area, 102 in in one run.
        assertEquals(11016.0 / 43 * INCH, by45.byArea().millimetres(), TOLERANCE_MM);
        assertEquals(102 * INCH, by45.clearRunOrZero().millimetres(), TOLERANCE_MM);
    }

    /** Source: bolt widths, 36 to 91.4 cm, 45 to 114.3, 54 to 137.2, 60 to 152.4 (derived). */
    @Test
    void knowsTheCommonBoltWidths() {
        assertEquals(
                List.of(900.0, 1150.0, 1400.0, 1500.0, 914.4, 1143.0, 1371.6, 1524.0),
                BoltWidth.COMMON.stream().map(b -> b.width().millimetres()).toList());
    }

    @Test
    void hasNoRunWhereTheClothIsNarrowerThanTheBolt() {
        ClothYield y =
                Written.result("cm", "  strip:", "    size: [100, 300]", "    prewash: done")
                        .finished()
                        .orElseThrow();
        assertTrue(y.lengths().get(0).clearRun().isPresent());
        assertEquals(Optional.empty(), y.lengths().get(1).clearRun());
    }

    /** Source: ISO 5077, (B - A) / A; 60 to 56 in is 6.67 %, and 20 to 17 is 15 %. */
    @Test
    void takesNothingForGrantedAlongWhenOnlyAcrossWasTested() {
        ClothResult cloth =
                Written.result(
                        "in",
                        "  cloth:",
                        "    size: [60, 90]",
                        "    prewash: {marked: [60, unknown], now: [56, unknown]}");
        assertEquals("6.67 %", cloth.left().across().orElseThrow().lost().percent(2));
        assertEquals(Optional.empty(), cloth.left().along());
        assertEquals(Optional.empty(), cloth.finished());
        assertEquals(in(90), cloth.measured().orElseThrow().size().along());
        // A finished skirt of 26 in with a hem of 1.5: 27.5 / (56/60) = 29 1/2 in to a sixteenth.
        Length cut = ClothCalculation.cutFor(Length.ofInches(55, 2), Share.left(in(56), in(60)));
        assertEquals("29½ in", Tape.INCH.print(cut.roundedUpTo(Tape.INCH.mark())));
    }

    /** Source: 20 to 17 is -15 %; 350 to 336 mm is -4 %; 350 to 357 is +2 %; by ISO 5077. */
    @ParameterizedTest(name = "{0} to {1}")
    @CsvSource({"200, 170, 15 %", "350, 336, 4 %", "350, 357, -2 %"})
    void saysWhatIsLost(long before, long after, String lost) {
        Share left = Share.left(Length.ofMillimetres(after), Length.ofMillimetres(before));
        assertEquals(lost, left.lost().percent(2));
    }

    /** Derived: to have 2.00 m after 5 %, cut 2.105 m; 3 yd after 10 %, 3.333 yd. */
    @Test
    void saysWhatToCutSoThatALengthIsLeft() {
        Length metres = ClothCalculation.cutFor(Length.ofMillimetres(2000), Share.ofPercent(95));
        assertEquals(2105, metres.millimetres(), 0.5);
        Length yards = ClothCalculation.cutFor(in(108), Share.ofPercent(90));
        assertEquals(3.333 * 36 * INCH, yards.millimetres(), 0.5);
    }

    /** Derived: warp -5 %, weft -3 % is -7.85 % of the area, and so much heavier by area. */
    @Test
    void drawsInEachWayByItself() {
        ClothResult cloth =
                Written.result(
                        "cm",
                        "  cloth:",
                        "    size: [100, 200]",
                        "    weight: 184.3 g/m2",
                        "    prewash: {marked: [100, 100], now: [97, 95]}");
        ClothYield y = cloth.finished().orElseThrow();
        assertEquals(2_000_000 * 0.9215, y.wholeArea().squareMillimetres(), 1e-3);
        assertEquals(
                200, cloth.heaviness().washedWeight().orElseThrow().gramsPerSquareMetre(), 1e-9);
    }

    /** Hand-worked: six curtains of 84 by 50 in, 5.4 kg in all, are 16.3 m² and 332 g/m². */
    @Test
    void addsUpCurtainsOfOneStock() {
        List<String> lines = new ArrayList<>(List.of("  one:", "    size: [50, 84]"));
        lines.add("    mass: 900 g");
        lines.add("    prewash: done");
        for (int i = 2; i <= 6; i++) {
            lines.add("  curtain " + i + ": {like: one}");
        }
        Map<String, Cloth> cloths = Written.cloths("in", lines.toArray(new String[0]));
        ClothStock stock = ClothStock.of(ClothCalculation.work(cloths)).get(0);
        assertEquals(16.3, stock.soundArea().orElseThrow().squareMillimetres() / 1e6, 0.05);
        Mass mass = stock.mass().orElseThrow();
        assertEquals(5400, mass.grams(), 1e-9);
        ClothWeight weight = mass.over(stock.untrimmedArea().orElseThrow());
        assertEquals("332 g/m²", Tape.CENTIMETRE.print(weight));
    }

    /** Derived: a sheet of 230 by 275 cm at 130 g/m² is 6.325 m² and weighs 822 g. */
    @Test
    void weighsAClothByItsArea() {
        ClothResult sheet =
                Written.result("cm", "  sheet:", "    size: [230, 275]", "    weight: 130 g/m2");
        assertEquals("822 g", Tape.CENTIMETRE.print(sheet.heaviness().mass().orElseThrow()));
        assertEquals(6.325e6, sheet.measured().orElseThrow().wholeArea().squareMillimetres(), 1e-3);
    }

    /** Worked by hand: (132 - 4) x 0.984 across, (214 - 21) x 0.96 along. */
    @Test
    void trimsBeforeTheWash() {
        ClothYield y =
                Written.result(
                                "cm",
                                "  curtain:",
                                "    size: [132, 214]",
                                "    trim: {left: 3, right: 1, top: 9, bottom: 12}",
                                "    prewash: {marked: [50, 50], now: [49.2, 48.0]}",
                                "    flaws: [{what: spot, at: [103, 109], size: [10, 10]}]",
                                "    clear: 1")
                        .finished()
                        .orElseThrow();
        assertEquals(1259.52, y.size().across().millimetres(), 1e-9);
        assertEquals(1852.8, y.size().along().millimetres(), 1e-9);
        assertEquals((98.4 + 20) * (96 + 20), y.flawedArea().squareMillimetres(), 1e-2);
        Box flaw = y.keptClear().box();
        assertEquals((1030 - 50 - 30) * 0.984 - 10, flaw.leftMm(), TOLERANCE_MM);
        assertEquals((1090 - 50 - 90) * 0.96 - 10, flaw.topMm(), TOLERANCE_MM);
    }

    @Test
    void takesASlantedBottomByItsShorterSide() {
        ClothYield y =
                Written.result(
                                "cm",
                                "  cloth:",
                                "    size: [100, 200]",
                                "    sides measured: {left: 200, right: 198}",
                                "    prewash: done")
                        .finished()
                        .orElseThrow();
        assertEquals(1980, y.size().along().millimetres(), 1e-9);
        assertEquals(1000 * 1990, y.wholeArea().squareMillimetres(), 1e-3);
        Box largest = y.rectangles().get(0);
        assertTrue(y.sound().contains(largest, TOLERANCE_MM));
        assertTrue(largest.areaMm2() >= 1000 * 1980 - 1e-3, largest.toString());
    }

    /** Area of a circle, π r²; the polygon round it is at most a ten-thousandth larger. */
    @Test
    void growsARoundFlawByWhatIsKeptClear() {
        ClothYield y =
                Written.result(
                                "cm",
                                "  cloth:",
                                "    size: [100, 100]",
                                "    prewash: done",
                                "    clear: 1",
                                "    flaws: [{what: hole, at: [50, 50], round: 3}]")
                        .finished()
                        .orElseThrow();
        double circle = Math.PI * 25 * 25;
        double flawed = y.flawedArea().squareMillimetres();
        assertTrue(flawed >= circle && flawed <= circle * 1.0001, "flawed " + flawed);
    }

    @Test
    void letsHiddenPiecesLieOnFlawsMarkedForThem() {
        ClothYield y =
                Written.result(
                                "cm",
                                "  cloth:",
                                "    size: [100, 100]",
                                "    flaws:",
                                "      - {what: thin, at: [10, 10], size: [20, 20], hidden use:"
                                        + " yes}",
                                "      - {what: hole, at: [90, 90], size: [20, 20]}")
                        .finished()
                        .orElseThrow();
        assertEquals(920_000, y.soundArea().squareMillimetres(), 1e-3);
        assertEquals(960_000, y.soundForHiddenArea().squareMillimetres(), 1e-3);
    }

    @Test
    void leavesAllOpenWhileTheSizeIsUnknown() {
        ClothResult cloth = Written.result("cm", "  cloth:", "    size: unknown");
        assertEquals(Optional.empty(), cloth.measured());
        assertEquals(Optional.empty(), cloth.finished());
        assertEquals(Optional.empty(), cloth.heaviness().mass());
    }
}
