package secondbolt.measure.kitchen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import secondbolt.measure.Mass;
import secondbolt.measure.Share;
import secondbolt.measure.Tape;
import secondbolt.measure.Volume;

class KitchenTest {
    /** Derived from the gallon of 231 cubic inches of 16.387064 ml. */
    @Test
    void sixteenTablespoonsOrFortyEightTeaspoonsAreACustomaryCup() {
        Volume cup = Volume.ofMillilitres("236.5882365");
        assertEquals(cup, Kitchen.CUSTOMARY.tablespoon().times(Share.ofRatio(16, 1)));
        assertEquals(cup, Kitchen.CUSTOMARY.teaspoon().times(Share.ofRatio(48, 1)));
        assertEquals(cup, Kitchen.CUSTOMARY.cup());
        assertEquals(
                Volume.ofMillilitres("3785.411784"),
                Kitchen.CUSTOMARY.cup().times(Share.ofRatio(16, 1)));
    }

    /** What is written in cups and spoons is read as the same. */
    @Test
    void areTheCupsThatAMakerWrites() {
        assertEquals(
                Kitchen.CUSTOMARY.cup(),
                Volume.parse("1 cup").fold(v -> v, refusal -> Volume.LITRE));
        assertEquals(
                Kitchen.CUSTOMARY.tablespoon(),
                Volume.parse("1 tbsp").fold(v -> v, refusal -> Volume.LITRE));
    }

    /** Derived: 240 ml is 1.44 % over the customary cup, the metric cup 5.67 %. */
    @Test
    void aCupIsNotACup() {
        Volume cup = Kitchen.CUSTOMARY.cup();
        assertEquals("101.44 %", Volume.ofMillilitres("240").of(cup).percent(2));
        assertEquals("105.67 %", Kitchen.METRIC.cup().of(cup).percent(2));
        assertTrue(Kitchen.CUSTOMARY.said().contains("cup 236.6 ml"));
        assertTrue(Kitchen.METRIC.said().contains("cup 250 ml"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "236.5882365 | 1 cup",
                "118.29411825 | ½ cup",
                "78.8627455 | ⅓ cup",
                "59.147059125 | ¼ cup",
                "29.5735295625 | 2 tbsp",
                "14.78676478125 | 1 tbsp",
                "4.92892159375 | 1 tsp",
                "2.46446079688 | ½ tsp",
                "0.6 | ⅛ tsp",
                "0.1 | less than ⅛ tsp",
                "31.25 | 2 tbsp, ¼ tsp",
                "416.67 | 1¾ cups, 1 tsp",
                "500 | 2 cups, 2 tbsp",
                "13152 | 55½ cups"
            })
    void customaryMeasuresReadAsOnTheCup(String millilitres, String words) {
        assertEquals(words, Kitchen.CUSTOMARY.print(Volume.ofMillilitres(millilitres)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "250 | 1 cup",
                "83.3333 | ⅓ cup",
                "125 | ½ cup",
                "15 | 1 tbsp",
                "45 | 3 tbsp",
                "5 | 1 tsp",
                "7.5 | 1½ tsp",
                "416.67 | 1⅔ cups",
                "1000 | 4 cups"
            })
    void metricMeasuresReadAsOnTheCup(String millilitres, String words) {
        assertEquals(words, Kitchen.METRIC.print(Volume.ofMillilitres(millilitres)));
    }

    @Test
    void onlyUsKitchensHaveFluidOunces() {
        assertEquals(
                Optional.of("8 fl oz"), Kitchen.CUSTOMARY.fluidOunces(Kitchen.CUSTOMARY.cup()));
        assertEquals(
                Optional.of("½ fl oz"),
                Kitchen.CUSTOMARY.fluidOunces(Kitchen.CUSTOMARY.tablespoon()));
        assertEquals(Optional.empty(), Kitchen.METRIC.fluidOunces(Kitchen.METRIC.cup()));
    }

    /** No measure is further off than its finest mark. */
    @Test
    void neverTellsMuchMoreOrLessThanThereIs() {
        for (Kitchen kitchen : Kitchen.values()) {
            for (int ml = 5; ml < 6000; ml += 7) {
                Volume volume = Volume.ofMillilitres(Integer.toString(ml));
                KitchenMeasure told = KitchenMeasure.of(volume, kitchen);
                double sum =
                        told.cups() * kitchen.cup().millilitres() / 12
                                + told.tablespoons() * kitchen.tablespoon().millilitres()
                                + told.teaspoons() * kitchen.teaspoon().millilitres() / 8;
                assertEquals((double) ml, sum, halfAStepMl(ml), kitchen + " " + ml);
            }
        }
    }

    /** A quarter teaspoon, a teaspoon, a tablespoon, a quarter cup; and a third is no decimal. */
    private static double halfAStepMl(int ml) {
        return ml < 60 ? 0.63 : ml < 480 ? 2.6 : ml < 3780 ? 7.6 : 31.3;
    }

    /** Derived: 500 g of salt at 1.2 g/ml are 417 ml, 1.76 customary cups. */
    @Test
    void onlyTableSaltMayBeMeasuredInCups() {
        Volume salt = Powder.TABLE_SALT.about(Mass.ofGrams("500")).orElseThrow();
        assertEquals(416.67, salt.millilitres(), 0.005);
        assertEquals("176.11 %", salt.of(Kitchen.CUSTOMARY.cup()).percent(2));
        assertEquals(Optional.empty(), Powder.SODA_ASH.about(Mass.ofGrams("32.9")));
        assertTrue(Powder.SODA_ASH.advice().startsWith("weigh it"));
        assertEquals(Optional.empty(), Powder.DYE.about(Mass.ofGrams("8.63")));
    }

    @Test
    void inchTapesGoWithUsCups() {
        assertEquals(Kitchen.CUSTOMARY, Kitchen.of(Tape.INCH));
        assertEquals(Kitchen.METRIC, Kitchen.of(Tape.CENTIMETRE));
    }
}
