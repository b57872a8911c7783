package secondbolt.bleach.recipe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import secondbolt.measure.Mass;
import secondbolt.measure.Share;
import secondbolt.measure.Tape;
import secondbolt.measure.Volume;
import secondbolt.textile.fibre.Fibre;
import secondbolt.textile.fibre.FibreKind;

/** Source: seller's data sheet, thiourea dioxide, where a test says no other. */
class RemoverBathTest {
    private static final Optional<Volume> NO_VESSEL = Optional.empty();

    private static RemoverBath bath(String grams, FibreKind fibre) {
        return RemoverBath.of(Mass.ofGrams(grams), Fibre.pure(fibre), NO_VESSEL);
    }

    private static Fibre blend(FibreKind one, FibreKind other) {
        Map<FibreKind, Share> shares = new LinkedHashMap<>();
        shares.put(one, Share.ofPercent(50));
        shares.put(other, Share.ofPercent(50));
        return new Fibre(shares);
    }

    @Test
    void halfAKiloOfCottonIsTheSheetsOwnExample() {
        RemoverBath bath = bath("500", FibreKind.COTTON);
        assertEquals(Volume.ofMillilitres("8000"), bath.water());
        assertEquals(Mass.ofGrams("10"), bath.remover());
        assertEquals(Mass.ofGrams("20"), bath.soda());
        assertEquals(Mass.ofGrams("40"), bath.citric());
        assertEquals(Optional.of(100), bath.celsius());
        assertEquals(15, bath.leastMinutes());
        assertEquals(20, bath.mostMinutes());
    }

    /** Derived: 2 %, 4 % and 16 to 1 of 822 g are 16.4 g, 32.9 g and 13.2 l. */
    @Test
    void aDuvetCoverOf822Grams() {
        RemoverBath bath = bath("822", FibreKind.COTTON);
        assertEquals("13.15 l", Tape.CENTIMETRE.print(bath.water()));
        assertEquals("16.4 g", Tape.CENTIMETRE.printFine(bath.remover()));
        assertEquals("32.9 g", Tape.CENTIMETRE.printFine(bath.soda()));
        assertEquals("3.47 gal (US)", Tape.INCH.print(bath.water()));
        assertEquals("0.58 oz", Tape.INCH.printFine(bath.remover()));
    }

    @Test
    void woolGetsHalfTheSodaAndHalfTheTime() {
        RemoverBath bath = bath("500", FibreKind.WOOL);
        assertEquals(Mass.ofGrams("10"), bath.soda());
        assertEquals(Optional.of(90), bath.celsius());
        assertEquals(5, bath.leastMinutes());
        assertEquals(10, bath.mostMinutes());
    }

    @Test
    void aBlendGoesByItsMostTenderFibre() {
        Fibre silkAndCotton = blend(FibreKind.COTTON, FibreKind.SILK);
        Mass cloth = Mass.ofGrams("300");
        assertEquals(Optional.of(85), RemoverBath.of(cloth, silkAndCotton, NO_VESSEL).celsius());
        Fibre woolAndCotton = blend(FibreKind.COTTON, FibreKind.ALPACA);
        assertEquals(Mass.ofGrams("6"), RemoverBath.of(cloth, woolAndCotton, NO_VESSEL).soda());
    }

    /** The sheet is silent about polyester, so no heat is told of it. */
    @Test
    void tellsNoHeatOfAFibreThatTheSheetDoesNotName() {
        Fibre easy = blend(FibreKind.COTTON, FibreKind.POLYESTER);
        assertFalse(RemoverBath.of(Mass.ofGrams("822"), easy, NO_VESSEL).celsius().isPresent());
    }

    /** Derived: 13.152 l in a vessel of 10 l are two loads of 411 g, 6.576 l each. */
    @Test
    void partsEquallyForTheVessel() {
        Volume ten = Volume.ofMillilitres("10000");
        RemoverBath bath =
                RemoverBath.of(Mass.ofGrams("822"), Fibre.pure(FibreKind.COTTON), Optional.of(ten));
        assertEquals(2, bath.loads());
        assertEquals(Volume.ofMillilitres("6576"), bath.waterOfALoad());
        assertEquals(Mass.ofGrams("8.22"), bath.aLoad(bath.remover()));
        assertEquals(Mass.ofGrams("625"), RemoverBath.most(ten));
        Volume just = Volume.ofMillilitres("13152");
        assertEquals(
                1,
                RemoverBath.of(Mass.ofGrams("822"), Fibre.pure(FibreKind.COTTON), Optional.of(just))
                        .loads());
    }
}
