package secondbolt.closure.strip;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import secondbolt.closure.fastening.Overlap;
import secondbolt.measure.Length;

class LapSidesTest {
    @ParameterizedTest
    @CsvSource({
        "RIGHT_OVER_LEFT, FRONT, true, wearer's right front, wearer's left front",
        "LEFT_OVER_RIGHT, FRONT, false, wearer's left front, wearer's right front",
        "RIGHT_OVER_LEFT, BACK, false, wearer's right back, wearer's left back",
        "LEFT_OVER_RIGHT, BACK, true, wearer's left back, wearer's right back",
        "FRONT_OVER_BACK, FRONT, true, front edge, back edge",
        "BACK_OVER_FRONT, BACK, false, back edge, front edge",
        "FRONT_OVER_BACK, SIDE, true, front edge of the side opening, back edge of the side"
                + " opening",
        "BACK_OVER_FRONT, CUFF, false, back edge of the cuff, front edge of the cuff"
    })
    void areNamedFromTheWearerAndSeenFromOutside(
            Overlap.Laps laps, Overlap.Worn worn, boolean overLeft, String over, String under) {
        LapSides sides =
                new LapSides(
                        new Overlap(
                                Length.ofMillimetres(18),
                                laps,
                                worn,
                                Optional.empty(),
                                false,
                                Optional.empty()));
        assertEquals(overLeft, sides.overStandsLeft());
        assertEquals(over, sides.over());
        assertEquals(under, sides.under());
    }
}
