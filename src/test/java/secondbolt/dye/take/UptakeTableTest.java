package secondbolt.dye.take;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import secondbolt.dye.plan.DyeClass;
import secondbolt.measure.Share;
import secondbolt.textile.fibre.Fibre;
import secondbolt.textile.fibre.FibreKind;

/** Which class takes on which fibre. */
class UptakeTableTest {
    private static Fibre blend(FibreKind a, int percent, FibreKind b) {
        Map<FibreKind, Share> shares = new LinkedHashMap<>();
        shares.put(a, Share.ofPercent(percent));
        shares.put(b, Share.ofPercent(100 - percent));
        return new Fibre(shares);
    }

    /**
     * Sources: fibre lists of dye sellers (reactive); F. Beech, 1901 (direct and acid on cotton),
     * and 1902 (wool); Basic Principles of Textile Coloration (acetate); a glossary of dyeing
     * terms, 2004 (polyester); a hand-dye packet's leaflet (acrylic, polyamide); Watson, 1907
     * (silk).
     */
    @ParameterizedTest
    @CsvSource({
        "REACTIVE, COTTON, TAKES",
        "REACTIVE, LYOCELL, TAKES",
        "REACTIVE, SILK, PARTLY",
        "REACTIVE, WOOL, HARMS",
        "REACTIVE, POLYAMIDE, PARTLY",
        "REACTIVE, POLYESTER, NOT",
        "REACTIVE, ACETATE, HARMS",
        "DIRECT, LINEN, TAKES",
        "DIRECT, VISCOSE, TAKES",
        "DIRECT, SILK, TAKES",
        "DIRECT, POLYESTER, NOT",
        "DIRECT, ACETATE, NOT",
        "ACID, COTTON, NOT",
        "ACID, WOOL, TAKES",
        "ACID, SILK, TAKES",
        "ACID, POLYAMIDE, TAKES",
        "ACID, POLYESTER, NOT",
        "ACID, ACRYLIC, NOT",
        "DISPERSE, POLYESTER, TAKES",
        "DISPERSE, ACETATE, TAKES",
        "DISPERSE, COTTON, NOT",
        "DISPERSE, WOOL, NOT",
        "VAT, COTTON, TAKES",
        "VAT, WOOL, HARMS",
        "VAT, SILK, HARMS",
        "BASIC, ACRYLIC, TAKES",
        "BASIC, COTTON, NOT",
        "BASIC, WOOL, TAKES",
        "BLEND, COTTON, PARTLY",
        "BLEND, WOOL, TAKES",
        "BLEND, POLYESTER, NOT",
        "BLEND, ACRYLIC, NOT"
    })
    void saysWhatTakes(DyeClass kind, FibreKind fibre, Uptake.Grade grade) {
        assertEquals(grade, UptakeTable.of(kind, fibre.family()).grade());
    }

    @Test
    void namesASourceForEachPair() {
        for (DyeClass kind : DyeClass.values()) {
            for (FibreKind.Family family : FibreKind.Family.values()) {
                assertFalse(UptakeTable.of(kind, family).source().isEmpty(), kind + " " + family);
            }
        }
    }

    /** Common practice, no source: 65 %, 35 to 50 %, and less. */
    @ParameterizedTest
    @CsvSource({
        "100, FULL",
        "95, FULL",
        "80, MEDIUM",
        "65, MEDIUM",
        "60, BETWEEN",
        "50, HEATHERED",
        "35, HEATHERED",
        "34, TINT"
    })
    void tellsTheSeenColourOfABlendRoughly(int percent, SeenColour seen) {
        Fibre fibre =
                percent == 100
                        ? Fibre.pure(FibreKind.COTTON)
                        : blend(FibreKind.COTTON, percent, FibreKind.POLYESTER);
        assertEquals(seen, ClothUptake.of(DyeClass.REACTIVE, fibre).seen());
    }

    @Test
    void advisesWhatTakesInstead() {
        assertEquals(Optional.of(DyeClass.ACID), ClothUptake.better(Fibre.pure(FibreKind.WOOL)));
        assertEquals(
                Optional.of(DyeClass.REACTIVE), ClothUptake.better(Fibre.pure(FibreKind.LINEN)));
        assertEquals(
                Optional.of(DyeClass.DISPERSE),
                ClothUptake.better(Fibre.pure(FibreKind.POLYESTER)));
        assertEquals(
                Optional.of(DyeClass.BASIC), ClothUptake.better(Fibre.pure(FibreKind.ACRYLIC)));
        assertEquals(Optional.empty(), ClothUptake.better(Fibre.pure(FibreKind.POLYPROPYLENE)));
        // Alkali would harm the wool, so no reactive dye on such a blend.
        Fibre wooly = blend(FibreKind.WOOL, 20, FibreKind.COTTON);
        assertTrue(ClothUptake.of(DyeClass.REACTIVE, wooly).harms());
        assertEquals(Optional.of(DyeClass.DIRECT), ClothUptake.better(wooly));
    }
}
