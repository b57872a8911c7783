package secondbolt.prepare.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import secondbolt.measure.Share;
import secondbolt.textile.fibre.Fibre;
import secondbolt.textile.fibre.FibreKind;
import secondbolt.textile.state.CareLabel;

/** How hot cloth may get. */
class HeatTest {
    private static Heat heat(FibreKind kind) {
        return Heat.of(Optional.of(Fibre.pure(kind)), CareLabel.UNTOLD);
    }

    private static Heat blend(FibreKind one, int percent, FibreKind other, CareLabel label) {
        Map<FibreKind, Share> shares = new LinkedHashMap<>();
        shares.put(one, Share.ofPercent(percent));
        shares.put(other, Share.ofPercent(100 - percent));
        return Heat.of(Optional.of(new Fibre(shares)), label);
    }

    private static CareLabel label(int wash, int dots) {
        return new CareLabel(
                Optional.of(new CareLabel.Wash(wash, false)),
                Optional.of(new CareLabel.Iron(dots)));
    }

    /** Source: ISO 3758:2012: one dot 110 °C without steam, two 150 °C, three 200 °C. */
    @Test
    void ironsByTheDotsOfTheStandard() {
        assertEquals("three dots, 200 °C (392 °F)", heat(FibreKind.LINEN).ironWords());
        assertEquals("two dots, 150 °C (302 °F)", heat(FibreKind.WOOL).ironWords());
        assertEquals("one dot, 110 °C (230 °F), no steam", heat(FibreKind.ACRYLIC).ironWords());
    }

    /**
     * Sources: The Textile Museum, pest brochure, −20 °C = −4 °F and −25 °C = −13 °F; 16 CFR 423,
     * 86 °F = 30 °C.
     */
    @Test
    void tellsDegreesOnBothScales() {
        assertEquals(-4, new Temperature(-20).fahrenheit());
        assertEquals(-13, new Temperature(-25).fahrenheit());
        assertEquals(86, new Temperature(30).fahrenheit());
        assertEquals(145, new Temperature(63).fahrenheit());
    }

    /** Source: an iron maker's manual, mixed fibres at the setting of the lowest. */
    @Test
    void takesTheMostTenderFibreOfABlend() {
        Heat mixed = blend(FibreKind.COTTON, 65, FibreKind.POLYESTER, CareLabel.UNTOLD);
        assertEquals(Optional.of(IronHeat.MEDIUM), mixed.iron());
        assertEquals("polyester", mixed.ironBy());
        Heat blanket = blend(FibreKind.WOOL, 80, FibreKind.POLYAMIDE, CareLabel.UNTOLD);
        assertEquals("polyamide", blanket.ironBy());
        assertEquals("wool", blanket.washBy());
    }

    @Test
    void takesTheLowestOfAnUnknownFibre() {
        Heat unknown = Heat.of(Optional.empty(), CareLabel.UNTOLD);
        assertEquals(Optional.of(IronHeat.LOW), unknown.iron());
        assertEquals(Optional.of(new Temperature(30)), unknown.wash());
    }

    @Test
    void takesTheCareLabelFirst() {
        Heat labelled = blend(FibreKind.COTTON, 65, FibreKind.POLYESTER, label(60, 1));
        assertEquals(Optional.of(IronHeat.LOW), labelled.iron());
        assertEquals(Optional.of(new Temperature(60)), labelled.wash());
        assertFalse(labelled.isLabelHotter());
        CareLabel crossed =
                new CareLabel(Optional.of(CareLabel.Wash.NOT), Optional.of(CareLabel.Iron.NOT));
        Heat none = Heat.of(Optional.of(Fibre.pure(FibreKind.WOOL)), crossed);
        assertEquals("not ironed", none.ironWords());
        assertEquals("not washed", none.washWords());
    }

    /** A trace of elastane hinders no label of three dots; acrylic under three dots melts. */
    @Test
    void doubtsALabelOnlyWhereAGoodPartOfTheClothWouldSuffer() {
        assertFalse(blend(FibreKind.COTTON, 97, FibreKind.ELASTANE, label(60, 3)).isLabelHotter());
        assertTrue(blend(FibreKind.COTTON, 50, FibreKind.ACRYLIC, label(40, 3)).isLabelHotter());
        assertTrue(blend(FibreKind.WOOL, 50, FibreKind.ALPACA, label(60, 2)).isLabelHotter());
        assertFalse(blend(FibreKind.WOOL, 50, FibreKind.ALPACA, label(40, 2)).isLabelHotter());
    }

    /** No fibre goes above the standard, and none is left out. */
    @ParameterizedTest
    @EnumSource(FibreKind.class)
    void staysBelowTheStandardForEveryFibre(FibreKind kind) {
        assertTrue(heat(kind).iron().orElseThrow().atMost().celsius() <= 200);
        assertTrue(heat(kind).wash().orElseThrow().celsius() <= 60);
    }
}
