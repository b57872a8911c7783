package secondbolt.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Areas of outlines and regions, held against geometry by hand. */
class RegionTest {
    private static final Outline BOW_TIE =
            new Outline(
                    List.of(
                            new Point(0, 0),
                            new Point(10, 10),
                            new Point(10, 0),
                            new Point(0, 10)));

    @Test
    void saysWhereAnOutlineCrossesItself() {
        assertEquals(Optional.of(new Point(5, 5)), BOW_TIE.crossing());
        assertThrows(IllegalArgumentException.class, () -> Region.of(BOW_TIE));
    }

    /** A slit whose one side comes back a millionth of a millimetre beyond the other. */
    @Test
    void mendsACrossingOfTheLastBits() {
        Outline slit =
                new Outline(
                        List.of(
                                new Point(0, 0),
                                new Point(10, 0),
                                new Point(10, 10),
                                new Point(5, 10),
                                new Point(5, 5),
                                new Point(5.000_001, 10),
                                new Point(0, 10)));
        assertTrue(slit.crossing().isPresent());
        assertEquals(100, Region.of(slit).areaMm2(), 1e-4);
        assertEquals(new Box(0, 0, 10, 10), Region.of(slit).box());
    }

    @Test
    void findsNoCrossingInAnLShape() {
        Outline ell =
                new Outline(
                        List.of(
                                new Point(0, 0),
                                new Point(20, 0),
                                new Point(20, 10),
                                new Point(10, 10),
                                new Point(10, 20),
                                new Point(0, 20)));
        assertEquals(Optional.empty(), ell.crossing());
        assertEquals(300, ell.areaMm2(), 1e-9);
        assertEquals(300, Region.of(ell).areaMm2(), 1e-9);
    }

    /** Area of a circle, π r². */
    @ParameterizedTest(name = "radius {0} mm")
    @ValueSource(doubles = {0.5, 15, 150, 1000})
    void drawsAPolygonCloselyRoundACircle(double radiusMm) {
        Outline round = Outline.round(Point.ORIGIN, radiusMm);
        double circle = Math.PI * radiusMm * radiusMm;
        assertTrue(round.areaMm2() > circle);
        assertTrue(round.areaMm2() < circle * 1.0001);
        assertEquals(radiusMm, round.box().rightMm(), 1e-9);
        for (Point corner : round.corners()) {
            assertTrue(corner.distanceMm(Point.ORIGIN) < radiusMm + 0.02);
        }
    }

    @Test
    void growsABoxToABox() {
        Region grown = Outline.of(new Box(10, 20, 30, 40)).grown(5);
        assertEquals(40 * 50, grown.areaMm2(), 1e-9);
        assertEquals(new Box(5, 15, 40, 50), grown.box());
    }

    @Test
    void growsACircleToALargerCircle() {
        Region grown = Outline.round(new Point(50, 50), 15).grown(10);
        double circle = Math.PI * 25 * 25;
        assertTrue(grown.areaMm2() > circle && grown.areaMm2() < circle * 1.0001);
        assertEquals(25, grown.box().widthMm() / 2, 1e-6);
    }

    /**
     * By hand: a right angle of legs 30 and 40 grown by 5 keeps that corner, and rounds the two.
     */
    @Test
    void growsATriangleAndRoundsItsSharpCorners() {
        Outline triangle =
                new Outline(List.of(new Point(0, 0), new Point(40, 0), new Point(0, 30)));
        // The strips are 5 by 120 in all, the square at the right angle 25; the two sharp corners
        // turn by 270 degrees together, three quarters of a circle of radius 5.
        double byHand = 600 + 600 + 25 + 0.75 * Math.PI * 25;
        assertEquals(byHand, triangle.grown(5).areaMm2(), 0.01);
    }

    /** A tear of 100 by 4 mm, cut to a point: 10 mm clear end 10 mm beyond the point, not 50. */
    @Test
    void keepsNoMoreClearBeyondTheEndOfATear() {
        Outline tear = new Outline(List.of(new Point(0, 0), new Point(100, 2), new Point(0, 4)));
        Region clear = tear.grown(10);
        assertEquals(110, clear.box().rightMm(), 0.01);
        assertTrue(clear.box().rightMm() >= 110, "never less than told");
    }

    @Test
    void growsAnOutlineWithAHollow() {
        Outline ell =
                new Outline(
                        List.of(
                                new Point(0, 0),
                                new Point(0, 20),
                                new Point(10, 20),
                                new Point(10, 10),
                                new Point(20, 10),
                                new Point(20, 0)));
        assertEquals(22 * 22 - 10 * 10, ell.grown(1).areaMm2(), 1e-9);
    }

    @Test
    void keepsTheAreaWhenMovedAndScaled() {
        Region ring = Region.of(new Box(0, 0, 10, 10)).minus(Region.of(new Box(2, 2, 3, 3)));
        assertEquals(91, ring.areaMm2(), 1e-9);
        assertEquals(91, ring.moved(7, -3).areaMm2(), 1e-9);
        assertEquals(91 * 0.98 * 0.95, ring.scaled(0.98, 0.95).areaMm2(), 1e-9);
        assertEquals(2, ring.outlines().size());
    }

    @Test
    void countsWhatLiesUnderTwoFlawsOnce() {
        Region cloth = Region.of(new Box(0, 0, 100, 100));
        Region flaws = Region.of(new Box(0, 0, 20, 20)).with(Region.of(new Box(10, 10, 20, 20)));
        assertEquals(700, flaws.areaMm2(), 1e-9);
        assertEquals(10_000 - 700, cloth.minus(flaws).areaMm2(), 1e-9);
        assertEquals(700, cloth.intersection(flaws).areaMm2(), 1e-9);
    }

    @Test
    void hatchesOnlyInside() {
        Region ring = Region.of(new Box(0, 1, 30, 30)).minus(Region.of(new Box(10, 11, 10, 10)));
        // At 8 and 24 in one part, at 16 in two.
        assertEquals(1 + 2 + 1, ring.hatch(8, 0).size());
        assertTrue(Region.EMPTY.hatch(4, 45).isEmpty());
    }

    @Test
    void putsALetterInsideARing() {
        Region ring = Region.of(new Box(0, 0, 30, 30)).minus(Region.of(new Box(5, 5, 20, 20)));
        Point inside = ring.inside();
        assertTrue(ring.contains(new Box(inside.xMm() - 1, inside.yMm() - 1, 2, 2), 0));
    }
}
