package secondbolt.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class TapeTest {
    @ParameterizedTest(name = "{0}, seed 20260501")
    @EnumSource(Tape.class)
    void readsBackWhatItPrints(Tape tape) {
        SplittableRandom random = new SplittableRandom(20260501);
        for (int i = 0; i < 20_000; i++) {
            Length length = Length.ofComputedMillimetres(random.nextDouble(-500, 4000));
            Length onTheTape = length.roundedTo(tape.mark());
            assertEquals(onTheTape, read(tape.print(length)), tape.print(length));
            assertEquals(onTheTape, read(tape.printSmall(length)), tape.printSmall(length));
        }
    }

    @ParameterizedTest(name = "{0}, seed 7")
    @EnumSource(Tape.class)
    void neverRoundsClothToBuyDownNorClothInHandUp(Tape tape) {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 5000; i++) {
            Length length = Length.ofComputedMillimetres(random.nextDouble(0, 9000));
            Length buy = read(tape.printToBuy(length));
            Length have = read(tape.printInHand(length));
            assertFalse(buy.isShorterThan(length));
            assertFalse(have.isLongerThan(length));
            assertFalse(buy.minus(length).isLongerThan(tape.shopStep()));
            assertFalse(length.minus(have).isLongerThan(tape.shopStep()));
        }
    }

    private static Length read(String printed) {
        return Length.parse(printed, Tape.CENTIMETRE).orThrow();
    }

    @ParameterizedTest
    @CsvSource({
        // hand-worked: 1500 / 114.3 is 13.1 eighths of a yard, so 14
        "1500 mm, 1.5 m, 1¾ yd",
        "2057.4 mm, 2.1 m, 2¼ yd",
        "1 mm, 0.05 m, ⅛ yd",
        "914.4 mm, 0.95 m, 1 yd"
    })
    void roundsYardageUpToFiveCentimetresAndEighths(String length, String metric, String yards) {
        assertEquals(metric, Tape.CENTIMETRE.printToBuy(read(length)));
        assertEquals(yards, Tape.INCH.printToBuy(read(length)));
    }

    @Test
    void printsClothWeightsAsTheTablesHaveThem() {
        // 180 g/m² is 5.3 oz/yd²: a mill's table of cloth weights; 14 oz/yd² is 474.7 g/m²,
        // derived.
        assertEquals("5.3 oz/yd²", Tape.INCH.print(ClothWeight.parse("180 g/m2").orThrow()));
        assertEquals("475 g/m²", Tape.CENTIMETRE.print(ClothWeight.parse("14 oz/yd2").orThrow()));
    }

    @ParameterizedTest
    @CsvSource({
        // exact by the international yard and pound agreement, 1959, to the digits given
        "5 oz/yd2, 169.53",
        "14 oz/yd2, 474.68",
        "1 oz/yd2, 33.905747",
        "200 g/m2, 200"
    })
    void readsClothWeights(String text, double gramsPerSquareMetre) {
        double read = ClothWeight.parse(text).orThrow().gramsPerSquareMetre();
        assertEquals(gramsPerSquareMetre, read, 0.005);
    }

    @Test
    void weighsASheet() {
        // 230 × 275 cm at 130 g/m² is 6.325 m² and 822 g: derived.
        Area sheet = read("230 cm").times(read("275 cm"));
        assertEquals("6.33 m²", Tape.CENTIMETRE.print(sheet));
        assertEquals(
                "822 g",
                Tape.CENTIMETRE.print(ClothWeight.parse("130 g/m2").orThrow().times(sheet)));
    }

    @Test
    void weighsSixCurtains() {
        // Six of 84 × 50 in, 5.4 kg in all: 16.3 m² and 332 g/m², hand-worked.
        Area six = read("84 in").times(6).times(read("50 in"));
        assertEquals("16.26 m²", Tape.CENTIMETRE.print(six));
        assertEquals("332 g/m²", Tape.CENTIMETRE.print(Mass.parse("5.4 kg").orThrow().over(six)));
    }

    @ParameterizedTest
    @CsvSource({
        // US measures, NIST Handbook 44, Appendix C (from memory): 1 gal = 3785.411784 ml
        "1 gal, 3785.411784",
        "1 cup, 236.5882365",
        "1 fl oz, 29.5735295625",
        "2 tbsp, 29.5735295625",
        "1 tsp, 4.92892159375",
        "12 l, 12000",
        "1 1/2 gal, 5678.117676"
    })
    void readsVolumes(String text, double millilitres) {
        assertEquals(millilitres, Volume.parse(text).orThrow().millilitres(), 1e-9);
    }

    @Test
    void saysThatCupsAndGallonsAreUnitedStatesMeasures() {
        assertEquals("3 cup (US)", Tape.INCH.print(Volume.parse("24 fl oz").orThrow()));
        assertEquals("2 gal (US)", Tape.INCH.print(Volume.parse("2 gal").orThrow()));
        assertEquals("12 l", Tape.CENTIMETRE.print(Volume.parse("12 l").orThrow()));
    }

    @Test
    void tellsShrinkageAsAShareOfTheLengthBefore() {
        // ISO 5077: (after - before) / before; 350 mm to 336 mm is 4 %, 60 in to 56 in is 6.67 %.
        assertEquals("4 %", Share.left(read("336 mm"), read("350 mm")).lost().percent(2));
        assertEquals("6.67 %", Share.left(read("56 in"), read("60 in")).lost().percent(2));
        // To have 2 m after 5 %, cut 2.105 m: derived.
        Length cut = read("2 m").dividedBy(Share.ofPercent(95));
        assertEquals(2105.26, cut.millimetres(), 0.01);
    }
}
