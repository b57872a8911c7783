package secondbolt.fit;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** A point that leaves its line is named as the picture of the piece numbers it. */
class StrayPointTest {
    /** Start 1, top 2, side 3, hem 4, then the points of the curve: the second of them is 6. */
    @Test
    void hasTheNumberOfThePicture() {
        String told =
                WrittenPattern.cm(
                                """
                                pattern:
                                  pieces:
                                    front:
                                      cut: pair
                                      outline:
                                        - {start: [0, 0]}
                                        - {edge: top, to: [30, 0]}
                                        - {edge: side, to: [30, 60]}
                                        - {edge: hem, to: [0, 60]}
                                        - {edge: curve, to: start, through: [[2, 40], [14, 20]]}
                                """)
                        .coded("piece-stray-point")
                        .get(0);
        assertTrue(told.startsWith("Point 6 of the picture, on its edge curve, leaves"), told);
    }
}
