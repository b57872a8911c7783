package secondbolt.trim.fused;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import secondbolt.measure.Share;
import secondbolt.textile.fibre.Fibre;
import secondbolt.textile.fibre.FibreKind;

/** Ceilings of ISO 3758:2012: 110, 150 and 200 °C. */
class IronHeatTest {
    @Test
    void goesByTheMostTenderFibre() {
        assertEquals(Optional.of(IronHeat.THREE_DOTS), IronHeat.of(Fibre.pure(FibreKind.LINEN)));
        Fibre blend =
                new Fibre(
                        Map.of(
                                FibreKind.COTTON, Share.ofPercent(97),
                                FibreKind.ELASTANE, Share.ofPercent(3)));
        assertEquals(Optional.of(IronHeat.ONE_DOT), IronHeat.of(blend));
        assertEquals(110, IronHeat.ONE_DOT.celsius());
    }

    @Test
    void isNotToldOfAFibreThatIsNotKnown() {
        Fibre blend =
                new Fibre(
                        Map.of(
                                FibreKind.COTTON, Share.ofPercent(90),
                                FibreKind.OTHER, Share.ofPercent(10)));
        assertEquals(Optional.empty(), IronHeat.of(blend));
    }
}
