package secondbolt.draw.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import secondbolt.draw.Drawing;
import secondbolt.draw.Pen;
import secondbolt.draw.Sketch;
import secondbolt.measure.Length;
import secondbolt.shape.Box;
import secondbolt.shape.Point;

/** Tiles cover the drawing and join. */
class TilingTest {
    private static Drawing framed(double width, double height) {
        Box frame = new Box(0, 0, width, height);
        return new Sketch().box(frame, Pen.CUT).drawing("Band", frame);
    }

    /** By hand: 1 + ⌈(600 − 190) ÷ 180⌉ = 4 across, 1 + ⌈(800 − 259.4) ÷ 249.4⌉ = 4 along. */
    @Test
    void cutsARollWhereTheDrawingEnds() {
        Tiling roll = Tiling.of(framed(880, 2000), Paper.ROLL_36, PrintCorrection.NONE);
        assertEquals(1, roll.tiles().size());
        assertEquals(914.4, roll.area().widthMm(), 1e-9);
        assertEquals(2020, roll.area().heightMm(), 1e-9);
        // Derived: a drawing of 2 m by 88 cm lies along the roll, not across it.
        Tiling lying = Tiling.of(framed(2000, 880), Paper.ROLL_36, PrintCorrection.NONE);
        assertEquals(1, lying.tiles().size());
        assertEquals(914.4, lying.area().heightMm(), 1e-9);
        // Derived: what is wider than the roll both ways takes two lengths.
        assertEquals(
                2,
                Tiling.of(framed(1000, 1500), Paper.ROLL_36, PrintCorrection.NONE).tiles().size());
    }

    @Test
    void cutsSixtyByEightyCentimetresIntoSixteenUprightTiles() {
        PageArea upright =
                PageArea.of(Paper.A4_AND_LETTER, PrintCorrection.NONE, PageArea.Way.UPRIGHT);
        Tiling tiling = Tiling.of(framed(600, 800), upright);
        assertEquals(4, tiling.rows());
        assertEquals(4, tiling.columns());
        assertEquals(16, tiling.tiles().size());
    }

    /** By hand, turned: 1 + ⌈340.6 ÷ 249.4⌉ = 3 across, 1 + ⌈610 ÷ 180⌉ = 5 along: 15 beat 16. */
    @Test
    void turnsThePageWhereThatSavesOne() {
        Tiling tiling = Tiling.of(framed(600, 800), Paper.A4_AND_LETTER, PrintCorrection.NONE);
        assertEquals(5, tiling.rows());
        assertEquals(3, tiling.columns());
    }

    /** By hand: A4 upright takes 1 + ⌈(650 − 277) ÷ 267⌉ = 3 tiles, turned 4. */
    @Test
    void laysAStripAlongTheLongSideOfThePaper() {
        Tiling upright = Tiling.of(framed(110, 650), Paper.A4, PrintCorrection.NONE);
        assertEquals(3, upright.rows());
        assertEquals(1, upright.columns());
        Tiling lying = Tiling.of(framed(650, 110), Paper.A4, PrintCorrection.NONE);
        assertEquals(1, lying.rows());
        assertEquals(3, lying.columns());
    }

    @Test
    void keepsOnOneSheetWhatFillsTheLiveAreaExactly() {
        Tiling tiling = Tiling.of(framed(190, 277), Paper.A4, PrintCorrection.NONE);
        assertEquals(1, tiling.tiles().size());
    }

    /** A printer that shrinks to 99.4 leaves 190 × 0.994 = 188.86 true millimetres across. */
    @Test
    void losesLiveAreaToACorrection() {
        PrintCorrection correction =
                new PrintCorrection(Length.ofComputedMillimetres(99.4), Length.ofMillimetres(100));
        Tiling tiling = Tiling.of(framed(190, 277), Paper.A4, correction);
        assertEquals(2, tiling.tiles().size());
        assertEquals(188.86, tiling.area().live().widthMm(), 1e-9);
    }

    @Test
    void leavesOutTilesOnWhichNothingIsDrawn() {
        Sketch sketch = new Sketch();
        sketch.line(new Point(5, 5), new Point(20, 20), Pen.CUT);
        sketch.line(new Point(5, 900), new Point(20, 990), Pen.CUT);
        Drawing drawing = sketch.drawing("Two ends", new Box(0, 0, 100, 1000));
        Tiling tiling = Tiling.of(drawing, Paper.A4, PrintCorrection.NONE);
        assertEquals(4, tiling.rows());
        assertEquals(2, tiling.tiles().size());
        assertFalse(tiling.isPrinted(2, 1));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void coversEveryPointAndSharesTheOverlap(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 50; i++) {
            String name = Paper.names().get(random.nextInt(Paper.names().size()));
            Drawing drawing = framed(random.nextDouble(1, 3000), random.nextDouble(1, 3000));
            PrintCorrection correction =
                    new PrintCorrection(
                            Length.ofComputedMillimetres(random.nextDouble(80, 125)),
                            Length.ofComputedMillimetres(random.nextDouble(80, 125)));
            Tiling tiling = Tiling.of(drawing, Paper.named(name).orElseThrow(), correction);
            assertCovers(tiling, drawing, random);
        }
    }

    private static void assertCovers(Tiling tiling, Drawing drawing, SplittableRandom random) {
        for (int i = 0; i < 40; i++) {
            double x = random.nextDouble(drawing.frame().widthMm());
            double y = random.nextDouble(drawing.frame().heightMm());
            assertTrue(
                    tiling.tiles().stream()
                            .anyMatch(
                                    tile ->
                                            x >= tile.window().leftMm()
                                                    && x <= tile.window().rightMm()
                                                    && y >= tile.window().topMm()
                                                    && y <= tile.window().bottomMm()));
        }
        for (int row = 2; row <= tiling.rows(); row++) {
            double shared = tiling.window(row - 1, 1).bottomMm() - tiling.window(row, 1).topMm();
            assertEquals(Tiling.OVERLAP_MM, shared, 1e-9);
        }
        // The last row and column are needed: without them something would be cut off.
        Box last = tiling.window(tiling.rows(), tiling.columns());
        assertTrue(last.leftMm() < drawing.frame().widthMm());
        assertTrue(last.topMm() < drawing.frame().heightMm());
    }
}
