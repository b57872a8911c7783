package secondbolt.bleach.recipe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import secondbolt.bleach.plan.Agent;
import secondbolt.bleach.recipe.Bearing.Grade;
import secondbolt.textile.fibre.FibreKind;

class FibreBearingTest {
    /**
     * Source: a bleach supplier's laundry page and a household text (wool, silk, mohair, elastane);
     * laundry pages (silk, acetate, elastane); from memory (polyamide).
     */
    @ParameterizedTest
    @EnumSource(
            value = FibreKind.class,
            names = {
                "WOOL",
                "MOHAIR",
                "CASHMERE",
                "ALPACA",
                "ANGORA",
                "SILK",
                "ELASTANE",
                "ACETATE",
                "POLYAMIDE"
            })
    void chlorineRuins(FibreKind fibre) {
        assertEquals(Grade.RUINED, FibreBearing.of(Agent.CHLORINE, fibre).grade());
    }

    /** Source: Watson, Textiles and Clothing, 1907: linen more than cotton; peroxide for wool. */
    @ParameterizedTest
    @CsvSource({
        "CHLORINE, COTTON, BEARS",
        "CHLORINE, LINEN, WITH_CARE",
        "CHLORINE, HEMP, WITH_CARE",
        "CHLORINE, VISCOSE, WITH_CARE",
        "PEROXIDE, WOOL, BEARS",
        "PEROXIDE, SILK, BEARS",
        "OXYGEN, WOOL, RUINED",
        "OXYGEN, SILK, RUINED",
        "OXYGEN, COTTON, BEARS",
        "REMOVER, COTTON, BEARS",
        "REMOVER, SILK, WITH_CARE",
        "REMOVER, WOOL, WITH_CARE",
        "REMOVER, ACETATE, RUINED",
        "REMOVER, ELASTANE, RUINED"
    })
    void bears(Agent agent, FibreKind fibre, Grade grade) {
        assertEquals(grade, FibreBearing.of(agent, fibre).grade());
    }

    @ParameterizedTest
    @EnumSource(Agent.class)
    void nothingIsSureOfAFibreWithoutAName(Agent agent) {
        assertEquals(Grade.NOT_KNOWN, FibreBearing.of(agent, FibreKind.OTHER).grade());
    }

    @Test
    void eachHasAReasonAndASource() {
        for (Agent agent : Agent.values()) {
            for (FibreKind fibre : FibreKind.values()) {
                Bearing bearing = FibreBearing.of(agent, fibre);
                assertFalse(bearing.why().isBlank());
                assertFalse(bearing.source().isBlank());
                assertEquals(fibre, bearing.fibre());
            }
        }
    }
}
