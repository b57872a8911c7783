package secondbolt.lay.nofit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.lay.placement.Container;
import secondbolt.lay.placement.Orientation;
import secondbolt.shape.Box;
import secondbolt.shape.Outline;
import secondbolt.shape.Region;

/** A piece that fits exactly between two others lies there, and nowhere beside it. */
class ExactSlotTest {
    /** A cloth of 870 by 880, cut above 262 and below 552: what is left is as high as the piece. */
    private static NoFitRegion slot(double highMm) {
        Region sound =
                Region.of(new Box(0, 262, 870, 290)).with(Region.of(new Box(0, 0, 100, 880)));
        Container container = new Container(List.of(sound));
        OrientedShape piece =
                OrientedShape.of(
                        Outline.of(new Box(0, 0, 200, highMm)), Orientation.turned(0), 0, 0.8);
        return PlaneContainer.sideBySide(List.of(container), 0.8)
                .get(0)
                .noFit(piece, 0)
                .orElseThrow();
    }

    @Test
    void aPieceAsHighAsItsSlotReachesIntoWhatIsAboveAndBelow() {
        NoFitRegion noFit = slot(290);
        assertEquals(0, noFit.depthMm(372, 262), 1e-6);
        assertEquals(11.4, noFit.depthMm(372, 250.6), 0.01);
        assertEquals(8, noFit.depthMm(372, 270), 0.01);
    }

    @Test
    void aHairTooHighItFitsNowhere() {
        NoFitRegion noFit = slot(290.00002);
        for (double y = 200; y < 300; y += 0.7) {
            assertTrue(noFit.depthMm(372, y) > 0, "at " + y);
        }
    }
}
