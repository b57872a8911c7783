package secondbolt.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Pieces known by tape only, lengthened: what crosses the line grows, and nothing else does. */
class TapedAlterationTest {
    private static final double EXACT_MM = 0.001;

    private static WrittenPattern front(String more) {
        return WrittenPattern.cm(
                """
                pattern:
                  pieces:
                    front:
                      cut: pair
                      lines: {body: 40, hip: 60}
                      box: [31, 74]
                      edges: {side: 47.1, centre front: 65, shoulder: 12.5, armhole: 26, hem: 30}
                %s
                alterations: [{lengthen: body, by: 2.5}]
                """
                        .formatted(more));
    }

    @Test
    void edgesNamedAsRunningAlongGrow() {
        WrittenPattern front = front("");
        assertEquals(496, front.afterMm("front", "side"), EXACT_MM);
        assertEquals(675, front.afterMm("front", "centre front"), EXACT_MM);
    }

    /** A hem is long, an armhole too; neither crosses a line below the underarm. */
    @Test
    void hemArmholeAndShoulderStay() {
        WrittenPattern front = front("");
        assertEquals(300, front.afterMm("front", "hem"), EXACT_MM);
        assertEquals(260, front.afterMm("front", "armhole"), EXACT_MM);
        assertEquals(125, front.afterMm("front", "shoulder"), EXACT_MM);
    }

    @Test
    void whatIsTakenForGrantedIsToldAndAsked() {
        TapedCrossings untold = new TapedCrossings(front("").sound());
        assertEquals("side, centre front", untold.assumed().get(0).value());
        assertTrue(untold.open().get(0).blocks().startsWith("whether shoulder, armhole, hem"));
        TapedCrossings told =
                new TapedCrossings(front("      crosses: {body: [side, centre front]}").sound());
        assertTrue(told.assumed().isEmpty());
        assertTrue(told.open().isEmpty());
    }

    @Test
    void herWordDecides() {
        WrittenPattern front = front("      crosses: {body: [armhole, centre front]}");
        assertEquals(285, front.afterMm("front", "armhole"), EXACT_MM);
        assertEquals(471, front.afterMm("front", "side"), EXACT_MM);
    }

    @Test
    void linesBelowMoveAlong() {
        Piece front = front("").sound().find("front").orElseThrow();
        assertEquals(400, front.lines().get("body").millimetres(), EXACT_MM);
        assertEquals(625, front.lines().get("hip").millimetres(), EXACT_MM);
    }

    @Test
    void aLineOrAnEdgeThatIsNotThereIsAMistake() {
        assertTrue(front("      crosses: {knee: [side]}").mistakes().get(0).contains("`knee`"));
        assertTrue(front("      crosses: {body: [sdie]}").mistakes().get(0).contains("`sdie`"));
    }
}
