package secondbolt.task;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class HazardTest {
    @ParameterizedTest
    @EnumSource(Hazard.class)
    void isAFewWholeSentencesWithASource(Hazard hazard) {
        assertTrue(hazard.words().endsWith("."), hazard.words());
        assertFalse(hazard.words().contains("  "), hazard.words());
        assertTrue(hazard.words().length() < 420, hazard.words());
        assertFalse(hazard.source().isBlank());
    }

    /** Source: Centers for Disease Control and Prevention; Children's Hospital of Philadelphia. */
    @Test
    void tellsWhichGasBleachGivesOffWithWhat() {
        String words = Hazard.BLEACH.words();
        assertTrue(words.contains("never mixed with any other product"));
        assertTrue(words.contains("vinegar"));
        assertTrue(words.contains("chlorine gas"));
        assertTrue(words.contains("ammonia chloramine gas"));
        assertTrue(Hazard.ACID.words().contains("Never in one vessel, sink or drain with bleach"));
    }

    /** Source: International Chemical Safety Card 1717; Health and Safety Executive (UK). */
    @Test
    void keepsARemoverFromWhatHeldBleach() {
        assertTrue(Hazard.COLOUR_REMOVER.words().contains("never into a vessel that held bleach"));
        assertTrue(Hazard.COLOUR_REMOVER.words().contains("add it slowly to water"));
    }

    /** Source: Children's of Alabama, scald prevention; the Burn Foundation. */
    @Test
    void tellsHowSoonWaterScalds() {
        String words = Hazard.HOT_BATH.words();
        assertTrue(words.contains("48.9 °C (120 °F) over 5 minutes"));
        assertTrue(words.contains("54.4 °C (130 °F) 30 seconds"));
        assertTrue(words.contains("60 °C (140 °F) under 5 seconds"));
        assertTrue(words.contains("a baby at 60 °C 1 second"));
    }

    /** Source: The Poison Control Center, Children's Hospital of Philadelphia. */
    @Test
    void namesHelpNearHerFirst() {
        assertTrue(
                Hazard.POISON_HELP
                        .words()
                        .contains("your local poison centre, in the USA 1-800-222-1222"));
    }

    /** Derived: a kilogram of cloth and twenty litres of water. */
    @Test
    void weighsAFullBath() {
        assertTrue(Hazard.HEAVY_BATH.words().contains("weigh 21 kg"));
    }
}
