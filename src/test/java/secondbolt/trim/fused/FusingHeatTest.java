package secondbolt.trim.fused;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import secondbolt.measure.Share;
import secondbolt.prepare.heat.Heat;
import secondbolt.prepare.heat.IronHeat;
import secondbolt.textile.fibre.Fibre;
import secondbolt.textile.fibre.FibreKind;
import secondbolt.textile.state.CareLabel;

/**
 * How hot interfacing is pressed on. Ceilings of the dots: ISO 3758:2012; a blend goes by its most
 * tender fibre: an iron maker's manual.
 */
class FusingHeatTest {
    private static final Fibre BLEND =
            new Fibre(
                    Map.of(
                            FibreKind.COTTON, Share.ofPercent(60),
                            FibreKind.POLYAMIDE, Share.ofPercent(40)));

    private static Optional<Heat> heat(Optional<Fibre> fibre, CareLabel label) {
        return new InterfacingResult.OnCloth("cover", fibre, false, label, Optional.empty(), false)
                .heat();
    }

    private static CareLabel ironed(int dots) {
        return new CareLabel(Optional.empty(), Optional.of(new CareLabel.Iron(dots)));
    }

    @Test
    void goesByTheMostTenderFibre() {
        Heat heat = heat(Optional.of(BLEND), CareLabel.UNTOLD).orElseThrow();
        assertEquals(Optional.of(IronHeat.LOW), heat.iron());
        assertEquals("one dot, 110 °C (230 °F), no steam", heat.ironWords());
    }

    @Test
    void goesByTheCareLabelFirst() {
        Optional<Fibre> linen = Optional.of(Fibre.pure(FibreKind.LINEN));
        assertEquals(Optional.of(IronHeat.MEDIUM), heat(linen, ironed(2)).flatMap(Heat::iron));
        assertEquals(Optional.empty(), heat(linen, ironed(0)).flatMap(Heat::iron));
    }

    @Test
    void isNotToldWhileAFibreIsNotKnown() {
        assertEquals(Optional.empty(), heat(Optional.empty(), CareLabel.UNTOLD));
        Optional<Fibre> some = Optional.of(Fibre.pure(FibreKind.OTHER));
        assertEquals(Optional.empty(), heat(some, CareLabel.UNTOLD));
    }
}
